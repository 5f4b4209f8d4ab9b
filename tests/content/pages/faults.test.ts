import { describe, expect, test } from 'vitest'
import { fault as faultSchema } from '../../../components/content/schemas.ts'
import { entriesOf, type Fault, type Symptom } from './content.ts'

const symptoms = entriesOf<Symptom>('symptoms')
const faults = entriesOf<Fault>('faults')
const faultIds = new Set(faults.map((fault) => fault.id))
const procedureIds = entriesOf('procedures').map((procedure) => procedure.id)

const frequencyOf = (id: string) => faults.find((fault) => fault.id === id)?.data.frequency ?? ''

describe.each(symptoms)('symptom $id', ({ data }) => {
  test('each cause is a fault, named once', () => {
    const causes = data.causes.map((cause) => cause.fault)
    expect(causes.filter((cause) => !faultIds.has(cause))).toEqual([])
    expect(new Set(causes).size).toBe(causes.length)
  })

  // How strongly a cause shows counts too, so that an occasional one may lead. A rare one may not.
  test('no cause stands before one that is met more often by two grades', () => {
    const frequencies = data.causes.map((cause) => frequencyOf(cause.fault))
    expect(frequencies[0]).not.toBe('rare')
    const rare = frequencies.indexOf('rare')
    expect(rare < 0 ? [] : frequencies.slice(rare)).not.toContain('common')
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

test('each fault is reached from some symptom', () => {
  const named = new Set(symptoms.flatMap(({ data }) => data.causes.map((cause) => cause.fault)))
  expect(faults.filter(({ id }) => !named.has(id)).map(({ id }) => id)).toEqual([])
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
