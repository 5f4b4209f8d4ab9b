import { expect, test } from 'vitest'
import { yamlFile } from './content.ts'

interface Term {
  readonly term: string
  readonly forms: readonly string[]
  readonly definition: string
  readonly seeAlso?: readonly string[]
}

const terms = yamlFile<Term>('glossary/terms.yaml')
const entries = Object.entries(terms)

/** Words that stand everywhere: marked, they would open a definition in the middle of an ordinary sentence. */
const everyday = new Set([
  'flow',
  'drop',
  'pressure',
  'filter',
  'valve',
  'glass',
  'pump',
  'seat',
  'line',
  'head',
  'header',
])

test('there are at least forty terms', () => {
  expect(entries.length).toBeGreaterThanOrEqual(40)
})

test('no form belongs to two terms, and none is an everyday word', () => {
  const forms = entries.flatMap(([, term]) => term.forms.map((form) => form.toLowerCase()))
  expect(forms.filter((form, place) => forms.indexOf(form) !== place)).toEqual([])
  expect(forms.filter((form) => everyday.has(form))).toEqual([])
})

test('a term stands among its own forms', () => {
  const absent = entries.filter(
    ([, term]) => !term.forms.some((form) => form.toLowerCase() === term.term.toLowerCase()),
  )
  expect(absent.map(([id]) => id)).toEqual([])
})

test('a definition is one or two sentences', () => {
  const long = entries.filter(([, term]) => (term.definition.match(/[.?!](\s|$)/g) ?? []).length > 2)
  expect(long.map(([id]) => id)).toEqual([])
})

test('see also leads to another term of the glossary', () => {
  const lost = entries.flatMap(([id, term]) =>
    (term.seeAlso ?? [])
      .filter((other) => other === id || !(other in terms))
      .map((other) => `${id}: ${other}`),
  )
  expect(lost).toEqual([])
})
