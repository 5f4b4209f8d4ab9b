import { expect, test } from 'vitest'
import { entriesOf, yamlFile, type Fault, type Procedure, type Symptom } from './content.ts'

interface Caution {
  readonly signal: string
  readonly consequence: string
}

const cautions = yamlFile<Caution>('cautions/cautions.yaml')

// ANSI Z535 and ISO 3864 let a signal word claim only as much as the consequence bears out.
const graveHarm = /kill|die|death|life|eye can be lost|limb|crush|cut off|drawn in|break bones/
const withSignal = (...signals: string[]) =>
  Object.entries(cautions).filter(([, caution]) => signals.includes(caution.signal))

test.each(withSignal('DANGER'))('%s: DANGER says what will happen, and it is grave', (_, { consequence }) => {
  expect(consequence).toMatch(/\bwill\b/)
  expect(consequence).toMatch(graveHarm)
})

test.each(withSignal('WARNING'))('%s: WARNING says what can happen', (_, { consequence }) => {
  expect(consequence).toMatch(/\bcan\b/)
})

test.each(withSignal('CAUTION', 'NOTICE'))(
  '%s: CAUTION and NOTICE hide no grave harm',
  (_, { consequence }) => {
    expect(consequence).not.toMatch(graveHarm)
  },
)

test('each caution is used somewhere', () => {
  const used = new Set(
    [
      ...entriesOf<Procedure>('procedures'),
      ...entriesOf<Symptom>('symptoms'),
      ...entriesOf<Fault & { cautions: string[] }>('faults'),
    ].flatMap(({ data }) => data.cautions),
  )
  expect(Object.keys(cautions).filter((id) => !used.has(id))).toEqual([])
})

test.each([...entriesOf<Procedure>('procedures'), ...entriesOf<Symptom>('symptoms')])(
  '$id defers to the engine maker, local codes and licensed practice',
  ({ data }) => {
    expect(data.cautions).toContain('manual-and-licence')
  },
)
