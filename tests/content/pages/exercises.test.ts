import { describe, expect, test } from 'vitest'
import { checks, exercises } from '../../unit/checks/content.ts'
import { entriesOf, yamlFile } from './content.ts'

const faults = entriesOf<{ bends: Readonly<Record<string, unknown>>; title: string; alsoCalled: string[] }>(
  'faults',
)
const circuits = [...new Set(checks.flatMap((check) => check.circuits))]
const happensIn = (circuit: string) => faults.filter(({ data }) => data.bends[circuit] !== undefined)

/** Words by which a complaint would give its cause away. */
const tellTale = (text: string, name: string) => text.toLowerCase().includes(name.toLowerCase())

test('there are at least eighteen exercises, on every circuit and of every grade', () => {
  expect(exercises.length).toBeGreaterThanOrEqual(18)
  expect(new Set(exercises.map(({ circuit }) => circuit))).toEqual(new Set(circuits))
  expect(new Set(exercises.map(({ grade }) => grade))).toEqual(new Set([1, 2, 3, 4, 5]))
})

describe.each(exercises)('exercise $number', (exercise) => {
  const { number, grade, circuit, faults: hidden, complaint, hint, title, told } = exercise

  test('bears its grade as the first digit of its number', () => {
    expect(number).toMatch(/^[1-5]\d\d$/)
    expect(Number(number[0])).toBe(grade)
  })

  test('hides two faults where it is of grade 5, and one otherwise', () => {
    expect(hidden).toHaveLength(grade === 5 ? 2 : 1)
  })

  test('hides faults that can happen in its circuit', () => {
    const possible = new Set(happensIn(circuit).map(({ id }) => id))
    expect(hidden.map(({ fault }) => fault).filter((id) => !possible.has(id))).toEqual([])
  })

  test('does not name its cause', () => {
    const names = faults
      .filter(({ id }) => hidden.some(({ fault }) => fault === id))
      .flatMap(({ data }) => [data.title, ...data.alsoCalled])
    expect(names.filter((name) => tellTale(`${title} ${complaint} ${hint}`, name))).toEqual([])
  })

  test('tells at its start only what can be seen on its circuit', () => {
    for (const { state, check: id } of told) {
      const check = checks.find((candidate) => candidate.id === id)
      expect(check?.circuits).toContain(circuit)
      expect(check?.states).toContain(state)
    }
  })
})

describe.each(circuits)('the checks on %s', (circuit) => {
  const here = checks.filter((check) => check.circuits.includes(circuit))
  const elements =
    yamlFile<{ id: string; model: { kind: string } }[]>(`circuits/${circuit}.yaml`)['elements'] ?? []
  const idsOf = (kinds: RegExp) => elements.filter(({ model }) => kinds.test(model.kind)).map(({ id }) => id)

  test('look at glasses that the circuit has, and at each of them', () => {
    const looked = here.flatMap(({ glasses }) => glasses)
    expect(looked.sort()).toEqual(idsOf(/^glass$/).sort())
  })

  test('read gauges that the circuit has, and each of them', () => {
    const engine = /^(power|rack|return-flow|exhaust-\*)$/
    const read = here.flatMap(({ readings }) => readings).filter((id) => !engine.test(id))
    expect(read.sort()).toEqual(idsOf(/gauge$|^thermometer$|^viscometer$/).sort())
  })

  test('feel parts that the circuit has', () => {
    const felt = here.flatMap(({ feels }) => feels)
    expect(felt.filter((id) => !elements.some((element) => element.id === id))).toEqual([])
  })

  test('find every fault that can happen in it', () => {
    const found = new Set(here.flatMap(({ finds }) => finds.flatMap((find) => find.faults)))
    expect(
      happensIn(circuit)
        .filter(({ id }) => !found.has(id))
        .map(({ id }) => id),
    ).toEqual([])
  })

  test('that only inspect find a fault that can happen in it', () => {
    const possible = new Set(happensIn(circuit).map(({ id }) => id))
    const useless = here.filter(
      ({ finds }) => finds.length > 0 && !finds.some((find) => find.faults.some((id) => possible.has(id))),
    )
    expect(useless.map(({ id }) => id)).toEqual([])
  })
})
