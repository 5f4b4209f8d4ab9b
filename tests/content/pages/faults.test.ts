import { describe, expect, test } from 'vitest'
import { fault as faultSchema } from '../../../components/content/schemas.ts'
import { entriesOf, type Fault, type Symptom } from './content.ts'

const symptoms = entriesOf<Symptom>('symptoms')
const faults = entriesOf<Fault>('faults')
const faultIds = new Set(faults.map((fault) => fault.id))
const procedureIds = entriesOf('procedures').map((procedure) => procedure.id)

/** Likeliest first: a cause may not stand before one that is met more often by two grades. */
const grade: Record<string, number> = { common: 0, occasional: 1, rare: 2 }

describe.each(symptoms)('symptom $id', ({ data }) => {
  test('each cause is a fault, named once', () => {
    const causes = data.causes.map((cause) => cause.fault)
    expect(causes.filter((cause) => !faultIds.has(cause))).toEqual([])
    expect(new Set(causes).size).toBe(causes.length)
  })

  test('the first cause is a common one', () => {
    const first = faults.find((fault) => fault.id === data.causes[0]?.fault)
    expect(grade[first?.data.frequency ?? '']).toBe(0)
  })

  test('each procedure of a first check exists, and at least one check leads to one', () => {
    const named = data.firstChecks.flatMap((check) => check.procedure ?? [])
    expect(named.filter((id) => !procedureIds.includes(id))).toEqual([])
    expect(named.length).toBeGreaterThan(0)
  })

  test('people can find it by shop words', () => {
    expect(data.alsoCalled.length).toBeGreaterThanOrEqual(5)
  })
})

test('bubbles when priming lead first to the suction strainer', () => {
  const symptom = symptoms.find(({ id }) => id === 'bubbles-when-priming')
  const firstNamed = symptom?.data.firstChecks.find((check) => check.procedure !== undefined)
  expect(firstNamed?.procedure).toBe('suction-strainer')
  expect(firstNamed?.check).toMatch(/O-ring/)
  expect(firstNamed?.check).toMatch(/union/)
})

test('no two symptoms claim the same shop word', () => {
  const words = symptoms.flatMap(({ data }) => data.alsoCalled.map((word) => word.toLowerCase()))
  expect(words.filter((word, place) => words.indexOf(word) !== place)).toEqual([])
})

describe.each(faults)('fault $id', ({ data }) => {
  test('bends figures that the parts of its circuits have', () => {
    const { error } = faultSchema.safeParse(data)
    expect((error?.issues ?? []).map(({ path, message }) => `${path.join('.')}: ${message}`)).toEqual([])
  })

  test('is put right by a procedure that exists', () => {
    expect(procedureIds).toContain(data.procedure)
  })
})
