import { readFileSync } from 'node:fs'
import { runInNewContext } from 'node:vm'
import { describe, expect, it } from 'vitest'
import { preferences, storageKey, type PreferenceName } from '../../../components/settings/preferences.ts'

const script = readFileSync('public/preferences.js', 'utf8')

/** Attributes that the script sets on the page when the browser's storage answers like this. */
function attributesWith(getItem: (key: string) => string | null): Record<string, string> {
  const set: Record<string, string> = {}
  const documentElement = { setAttribute: (name: string, value: string) => (set[name] = value) }
  runInNewContext(script, { localStorage: { getItem }, document: { documentElement } })
  return set
}

describe('the script that runs before the first paint', () => {
  const choices = Object.entries(preferences).flatMap(([name, { values }]) =>
    values.map(({ value }) => [name as PreferenceName, value] as const),
  )

  it.each(choices)('takes over %s %s', (name, value) => {
    expect(attributesWith((key) => (key === storageKey(name) ? value : null))).toEqual({
      [`data-${name}`]: value,
    })
  })

  it('sets nothing where nothing is kept, or something that is no choice', () => {
    expect(attributesWith(() => null)).toEqual({})
    expect(attributesWith(() => '"><script>')).toEqual({})
  })

  it('sets nothing and does not fail where storage is blocked', () => {
    const blocked = () => {
      throw new Error('denied')
    }
    expect(attributesWith(blocked)).toEqual({})
  })
})
