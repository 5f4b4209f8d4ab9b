import { describe, expect, it } from 'vitest'
import { changesAgainst } from '../../../calculators/circuit/changes.ts'
import type { CircuitState, GlassView, Reading } from '../../../calculators/circuit/types.ts'
import { solverOf } from '../../../components/circuit/bench/solver.ts'
import { pq12, set } from './bench.ts'

const reading = (id: string, value: number, accuracy = 10): Reading => ({
  id,
  label: id,
  kind: 'gaugePressure',
  value,
  accuracy,
})
const glass = (words: string): GlassView => ({
  part: 'return-glass',
  look: 'full and clear',
  words,
  fill: 1,
  gas: 0,
  from: 'through',
  dirt: 0,
  milky: false,
})
const stateOf = (readings: readonly Reading[], glasses: readonly GlassView[] = []): CircuitState =>
  ({ ok: true, readings, glasses }) as unknown as CircuitState

describe('what changed against health', () => {
  it('leaves out what moved by less than the accuracy, and takes in what moved by just that', () => {
    const health = stateOf([reading('a', 100), reading('b', 100)])
    const now = stateOf([reading('a', 109.999), reading('b', 110)])
    expect(changesAgainst(health, now).map(({ id }) => id)).toEqual(['b'])
  })

  it('ranks by the change over the accuracy and not by its size', () => {
    const health = stateOf([reading('coarse', 1000, 100), reading('fine', 10, 0.1)])
    const now = stateOf([reading('coarse', 1300, 100), reading('fine', 11, 0.1)])
    expect(changesAgainst(health, now).map(({ id }) => id)).toEqual(['fine', 'coarse'])
  })

  it('counts readings that are numbered once, by the most changed', () => {
    const health = stateOf([1, 2, 3].map((cylinder) => reading(`exhaust-${cylinder}`, 400, 5)))
    const now = stateOf([410, 440, 401].map((value, index) => reading(`exhaust-${index + 1}`, value, 5)))
    expect(changesAgainst(health, now)).toEqual([expect.objectContaining({ id: 'exhaust-2', alike: 1 })])
  })

  it('tells a glass by its words', () => {
    expect(changesAgainst(stateOf([], [glass('empty')]), stateOf([], [glass('empty')]))).toEqual([])
    expect(changesAgainst(stateOf([], [glass('empty')]), stateOf([], [glass('full')]))).toEqual([
      expect.objectContaining({ of: 'glass', id: 'return-glass', before: 'empty', now: 'full' }),
    ])
  })

  it('tells nothing of a reading that only one of the two states has, or that is no number', () => {
    const now = stateOf([reading('exhaust-1', 400), reading('a', Number.NaN)])
    expect(changesAgainst(stateOf([reading('a', 1)]), now)).toEqual([])
  })

  it('works where an instrument has no accuracy', () => {
    expect(changesAgainst(stateOf([reading('a', 0, 0)]), stateOf([reading('a', 0, 0)]))).toEqual([])
    expect(changesAgainst(stateOf([reading('a', 5, 0)]), stateOf([reading('a', 6, 0)]))).toHaveLength(1)
  })
})

describe('on the solved PQ-12', () => {
  const solve = solverOf(pq12)
  const changed = (setting: Parameters<typeof set>[0]) => {
    const [health, now] = [solve(set({ ...setting, faults: {} })), solve(set(setting))]
    if (!health.ok || !now.ok) throw new Error('no state')
    return changesAgainst(health, now)
  }

  it('nothing has changed in health', () => {
    for (const state of ['priming', 'idle', 'part', 'full'] as const) expect(changed({ state })).toEqual([])
  })

  it('plugged secondaries show first at their own gauge (common practice)', () => {
    expect(changed({ state: 'idle', faults: { 'secondary-filters-plugged': 0.3 } })[0]?.id).toBe(
      'secondary-drop-gauge',
    )
  })

  it('one injector that passes gas shows in the return glass and at no gauge (common practice)', () => {
    const changes = changed({ state: 'full', faults: { 'injector-passes-gas': 0.6 } })
    expect(changes.map(({ id }) => id)).toEqual(['return-glass'])
  })
})
