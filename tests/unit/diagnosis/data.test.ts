import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { observable, told, weights } from '../../../components/content/schema-diagnosis.ts'
import { operatingStates } from '../../../calculators/circuit/types.ts'
import { itemOf } from '../../../calculators/diagnosis/items.ts'
import { glassValue } from '../../../calculators/diagnosis/glass-value.ts'
import type { GlassView } from '../../../calculators/circuit/types.ts'
import { knowledge } from './pq12.ts'

const yaml = (name: string) =>
  parse(readFileSync(`content/diagnosis/${name}.yaml`, 'utf8')) as Record<string, never>

describe('the data of the diagnosis', () => {
  it('fits its schemas', () => {
    for (const [id, data] of Object.entries(yaml('observations')))
      expect(observable.safeParse(data).error, id).toBeUndefined()
    for (const [id, data] of Object.entries(yaml('told')))
      expect(told.safeParse(data).error, id).toBeUndefined()
    for (const data of Object.values(yaml('weights'))) expect(weights.safeParse(data).error).toBeUndefined()
  })

  it('has likelihoods for the very values of everything that is told', () => {
    const ids = Object.entries(knowledge.observables).flatMap(([id, one]) =>
      one.from === 'told' ? [id] : [],
    )
    expect(ids.sort()).toEqual(Object.keys(knowledge.told).sort())
    for (const id of ids) {
      const one = knowledge.observables[id]
      const values = one?.from === 'told' ? Object.keys(one.values).sort() : []
      expect(Object.keys(knowledge.told[id]?.otherwise ?? {}).sort(), id).toEqual(values)
    }
  })

  it('calls the states of the plant as everybody does', () => {
    const states = parse(readFileSync('content/checks/states.yaml', 'utf8')) as Record<
      string,
      { title: string }
    >
    for (const state of operatingStates)
      expect(itemOf(knowledge, { id: 'header-gauge', state, value: 2e5 })?.label).toMatch(
        new RegExp(`, ${states[state]?.title.toLowerCase()}$`),
      )
  })

  it('knows every value that the model can show of a glass', () => {
    const { signatures, observables } = knowledge
    for (const fault of Object.values(signatures.faults))
      for (const shown of Object.values(fault).flat())
        shown.glasses.forEach((value, place) => {
          const glass = observables[signatures.glasses[place] ?? '']
          expect(glass?.from === 'glass' && Object.hasOwn(glass.values, value), value).toBe(true)
        })
  })

  it('refuses shares that do not sum to one, and a fault that stands twice', () => {
    const given = { faults: ['nozzle-drips'], shares: { a: 0.5, b: 0.5 }, why: 'So.' }
    expect(told.safeParse({ otherwise: { a: 0.5, b: 0.5 }, given: [given] }).success).toBe(true)
    expect(told.safeParse({ otherwise: { a: 0.5, b: 0.6 }, given: [given] }).success).toBe(false)
    expect(told.safeParse({ otherwise: { a: 0.5, b: 0.5 }, given: [given, given] }).success).toBe(false)
    expect(told.safeParse({ otherwise: { a: 0.5, c: 0.5 }, given: [given] }).success).toBe(false)
  })
})

describe('what a person says of a glass', () => {
  const glass: GlassView = {
    part: 'return-glass',
    look: 'full and clear',
    words: '',
    fill: 1,
    gas: 0,
    from: 'through',
    dirt: 0,
    milky: false,
  }
  it.each([
    [{}, 'full-and-clear'],
    [{ look: 'full with bubbles' }, 'bubbles'],
    [{ look: 'empty', from: 'none', milky: true }, 'empty'],
    [{ milky: true }, 'milky'],
    [{ from: 'drain' }, 'rising-from-drain'],
    [{ from: 'valve', look: 'part full' }, 'running-from-valve'],
    [{ dirt: 0.9, look: 'full with bubbles' }, 'not-to-be-seen'],
  ] as const)('%o → %s', (other, value) => {
    expect(glassValue({ ...glass, ...other })).toBe(value)
  })
})
