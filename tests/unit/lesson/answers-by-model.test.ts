import { describe, expect, it, test } from 'vitest'
import { changesAgainst } from '../../../calculators/circuit/changes.ts'
import { solverOf } from '../../../components/circuit/bench/solver.ts'
import type { Setting } from '../../../components/circuit/bench/types.ts'
import { pq12, set } from '../bench/bench.ts'
import { setPoint } from '../../content/prose/plant-and-fuels.ts'
import { allQuestions } from './questions.ts'

// Each answer of a lesson that is said to come from the circuit model, against the model.

const solve = solverOf(pq12)
type State = Setting['state']

function circuitAt(state: State, faults: Setting['faults'] = {}, more: Partial<Setting> = {}) {
  const solved = solve(set({ state, faults, ...more }))
  if (!solved.ok) throw new Error(solved.reason)
  const found = (id: string) => {
    const reading = solved.readings.find((one) => one.id === id)
    if (!reading) throw new Error(`no reading ${id}`)
    return reading
  }
  return {
    solved,
    value: (id: string) => found(id).value,
    accuracy: (id: string) => found(id).accuracy,
    glass: (id: string) => solved.glasses.find(({ part }) => part === id),
  }
}

const healthy = (state: State) => circuitAt(state)
const bubbles = (state: State, faults: Setting['faults']) =>
  circuitAt(state, faults).glass('return-glass')?.look === 'full with bubbles'
const bothWell = (state: State, faults: Setting['faults']) =>
  circuitAt(state, faults).glass('return-glass')?.words === 'full and clear' &&
  circuitAt(state, faults).glass('bypass-glass')?.look === 'empty'
/** Ids of what differs from health by more than instrument and eye can miss. */
const changed = (state: State, faults: Setting['faults']) =>
  changesAgainst(healthy(state).solved, circuitAt(state, faults).solved).map(({ id }) => id)
/** Whether a reading is within its accuracy of health. */
const asInHealth = (state: State, faults: Setting['faults'], id: string) => {
  const now = circuitAt(state, faults)
  return Math.abs(now.value(id) - healthy(state).value(id)) <= now.accuracy(id)
}

const proofs: Readonly<Record<string, () => void>> = {
  'the-way-round/who-holds-the-header': () => {
    const worn = { 'pump-worn': 0.3 }
    expect(circuitAt('idle', worn).value('return-flow') / healthy('idle').value('return-flow')).toBeCloseTo(
      0.95,
      1,
    )
    expect(asInHealth('idle', worn, 'header-gauge')).toBe(true)
    expect(asInHealth('idle', { 'return-valve-weak': 0.3 }, 'header-gauge')).toBe(false)
  },
  'the-way-round/idle-to-full': () => {
    const fall = healthy('idle').value('return-flow') - healthy('full').value('return-flow')
    const burnt = setPoint('fuel-burnt-at-full-load') - setPoint('fuel-burnt-at-idle')
    expect(fall / burnt).toBeCloseTo(1, 1)
    expect(setPoint('fuel-burnt-at-full-load') / setPoint('pump-delivery')).toBeCloseTo(0.25, 1)
  },
  'the-way-round/what-two-glasses-prove': () => {
    const loaded = { 'secondary-filters-plugged': 0.3 }
    expect(bothWell('full', loaded)).toBe(true)
    expect(circuitAt('full', loaded).value('secondary-drop-gauge')).toBeGreaterThan(
      2 * setPoint('secondary-drop-clean'),
    )
    expect(bothWell('full', { 'return-valve-weak': 0.6 })).toBe(true)
    expect(bothWell('full', { 'cylinder-inlet-plugged': 0.8 })).toBe(true)
  },
  'suction-and-priming/loose-union': () => {
    const leak = { 'suction-union-draws-air': 0.4 }
    for (const state of ['priming', 'idle', 'full'] as const) {
      expect(bubbles(state, leak)).toBe(true)
      expect(circuitAt(state, leak).value('suction-vacuum-gauge')).toBeLessThan(
        healthy(state).value('suction-vacuum-gauge'),
      )
      expect(circuitAt(state, leak).glass('bypass-glass')?.look).toBe('empty')
    }
  },
  'suction-and-priming/clear-glass-dirty-strainer': () => {
    const half = { 'suction-strainer-plugged': 0.5 }
    expect(bubbles('priming', half)).toBe(false)
    expect(circuitAt('priming', half).value('suction-vacuum-gauge')).toBeGreaterThan(
      2 * healthy('priming').value('suction-vacuum-gauge'),
    )
    expect(bubbles('priming', { 'suction-strainer-plugged': 1 })).toBe(true)
  },
  'suction-and-priming/same-in-both-states': () => {
    const leak = { 'suction-union-draws-air': 0.4 }
    const gas = (state: State) => circuitAt(state, leak).glass('return-glass')?.gas ?? Number.NaN
    expect(gas('idle') / gas('priming')).toBeCloseTo(1, 1)
    expect(bubbles('priming', { 'injector-passes-gas': 1 })).toBe(false)
  },
  'suction-and-priming/vent-and-load': () => {
    const vacuum = (state: State) =>
      circuitAt(state, { 'tank-vent-blocked': 0.8 }).value('suction-vacuum-gauge') -
      healthy(state).value('suction-vacuum-gauge')
    expect(vacuum('full')).toBeGreaterThan(vacuum('part'))
    expect(vacuum('part')).toBeGreaterThan(vacuum('idle'))
    expect(Math.abs(vacuum('priming'))).toBeLessThan(healthy('priming').accuracy('suction-vacuum-gauge'))
  },
  'pump-and-pressure/worn-pump-first-sign': () => {
    expect(changed('full', { 'pump-worn': 0.3 })).toEqual(['return-flow'])
    expect(circuitAt('full', { 'pump-worn': 0.3 }).value('suction-vacuum-gauge')).toBeLessThan(
      healthy('full').value('suction-vacuum-gauge'),
    )
    expect(circuitAt('full', { 'pump-worn': 1 }).glass('return-glass')?.words).toBe('full and clear')
  },
  'pump-and-pressure/low-header-full-return': () => {
    const weak = { 'return-valve-weak': 0.4 }
    const header = circuitAt('part', weak).value('header-gauge') / healthy('part').value('header-gauge')
    expect(header).toBeCloseTo(0.8, 1)
    expect(changed('part', weak)).toEqual(['header-gauge'])
    // Each other choice moves something else first.
    expect(changed('part', { 'pump-worn': 0.8 })).toContain('return-flow')
    expect(changed('part', { 'suction-strainer-plugged': 0.8 })).toContain('suction-vacuum-gauge')
    expect(changed('part', { 'secondary-filters-plugged': 0.8 })).toContain('secondary-drop-gauge')
  },
  'pump-and-pressure/high-header': () => {
    const header = (faults: Setting['faults']) =>
      circuitAt('idle', faults).value('header-gauge') - healthy('idle').value('header-gauge')
    const accuracy = healthy('idle').accuracy('header-gauge')
    expect(header({ 'return-valve-set-high': 0.7 })).toBeGreaterThan(accuracy)
    expect(header({ 'return-line-squeezed': 0.8 })).toBeGreaterThan(accuracy)
    expect(header({ 'secondary-filters-plugged': 0.9 })).toBeLessThan(-accuracy)
    const washed = healthy('idle').value('header-gauge')
    expect(
      Math.abs(washed - circuitAt('idle', { 'suction-strainer-plugged': 0.7 }).value('header-gauge')),
    ).toBeLessThan(accuracy)
  },
  'filters-and-the-bypass-glass/falls-from-above-warm': () => {
    const plugged = circuitAt('idle', { 'secondary-filters-plugged': 0.6 })
    expect(plugged.glass('bypass-glass')?.from).toBe('valve')
    expect(plugged.value('secondary-drop-gauge')).toBeGreaterThan(setPoint('secondary-drop-change'))
    expect(plugged.value('header-temperature')).toBeCloseTo(setPoint('heater-set-point'), -1)
    const weak = circuitAt('idle', { 'bypass-valve-weak': 1 })
    expect(weak.glass('bypass-glass')?.from).toBe('valve')
    expect(weak.value('secondary-drop-gauge')).toBeLessThan(
      1.1 * healthy('idle').value('secondary-drop-gauge'),
    )
    expect(circuitAt('idle', { 'return-line-squeezed': 0.8 }).glass('bypass-glass')?.from).toBe('drain')
  },
  'filters-and-the-bypass-glass/rises-from-the-drain': () => {
    expect(circuitAt('idle', { 'return-line-squeezed': 0.8 }).glass('bypass-glass')?.from).toBe('drain')
    for (const before of [
      'return-valve-stuck-shut',
      'injector-return-filters-plugged',
      'secondary-filters-plugged',
    ])
      expect(circuitAt('idle', { [before]: 1 }).glass('bypass-glass')?.from, before).toBe('valve')
  },
  'filters-and-the-bypass-glass/one-element-without-flow': () => {
    const drop = circuitAt('idle', { 'one-element-shut': 1 }).value('secondary-drop-gauge')
    expect(drop / healthy('idle').value('secondary-drop-gauge')).toBeCloseTo(2, 0)
    expect(drop / setPoint('secondary-drop-change')).toBeCloseTo(0.5, 1)
  },
  'injectors-return-and-heat/begins-with-the-engine': () => {
    const gas = (state: State) =>
      circuitAt(state, { 'injector-passes-gas': 0.8 }).glass('return-glass')?.gas ?? 0
    expect(gas('priming')).toBe(0)
    expect(gas('full')).toBeGreaterThan(gas('idle'))
    expect(asInHealth('full', { 'injector-passes-gas': 0.8 }, 'suction-vacuum-gauge')).toBe(true)
    expect(asInHealth('full', { 'tank-vent-blocked': 0.8 }, 'suction-vacuum-gauge')).toBe(false)
    expect(bubbles('priming', { 'strainer-cover-draws-air': 0.5 })).toBe(true)
  },
  'injectors-return-and-heat/clear-at-idle': () => {
    const small = { 'injector-passes-gas': 0.4 }
    expect(bubbles('idle', small)).toBe(false)
    expect(bubbles('full', small)).toBe(true)
  },
  'fuel-cold-and-water/bypass-wet-in-frost': () => {
    const cold = circuitAt('priming', { 'heater-not-heating': 1 }, { tankTemperature: 275.15 })
    expect(cold.glass('bypass-glass')?.from).toBe('valve')
    expect(cold.value('header-temperature')).toBeLessThan(setPoint('heater-set-point') - 15)
    const plugged = circuitAt('priming', { 'secondary-filters-plugged': 0.6 })
    expect(plugged.glass('bypass-glass')?.from).toBe('valve')
    expect(plugged.value('header-temperature')).toBeGreaterThan(setPoint('heater-set-point') - 1)
  },
  'gauges-witnesses-and-doubt/low-needle-alone': () => {
    const gauge = { 'header-gauge-wrong': 0.8 }
    const valve = { 'return-valve-weak': 0.5 }
    for (const faults of [gauge, valve]) {
      const share = circuitAt('part', faults).value('header-gauge') / healthy('part').value('header-gauge')
      expect(share).toBeCloseTo(0.75, 1)
      expect(changed('part', faults)).toEqual(['header-gauge'])
    }
    expect(changed('part', { 'pump-worn': 0.8 })).toContain('return-flow')
  },
  'gauges-witnesses-and-doubt/what-no-glass-shows': () => {
    for (const state of ['priming', 'idle', 'full'] as const)
      for (const fault of ['return-valve-weak', 'pump-worn', 'cylinder-inlet-plugged'])
        expect(bothWell(state, { [fault]: 0.8 }), `${fault}, ${state}`).toBe(true)
    expect(bothWell('idle', { 'suction-union-draws-air': 0.8 })).toBe(false)
    expect(bothWell('idle', { 'return-line-squeezed': 0.8 })).toBe(false)
  },
  'gauges-witnesses-and-doubt/colder-but-permitted': () => {
    const plugged = circuitAt('full', { 'cylinder-inlet-plugged': 1 })
    const departure = healthy('full').value('exhaust-7') - plugged.value('exhaust-7')
    expect(departure).toBeGreaterThan(14)
    expect(departure).toBeLessThanOrEqual(15.5)
    expect(departure).toBeLessThan(setPoint('exhaust-departure'))
    expect(
      Math.hypot(setPoint('exhaust-probe-accuracy'), setPoint('exhaust-probe-accuracy')) / 15,
    ).toBeCloseTo(0.5, 1)
  },
  'the-whole-job/two-glasses-at-once': () => {
    for (const { id } of pq12.faults)
      for (const severity of [0.5, 1])
        for (const state of ['priming', 'full'] as const) {
          const solved = solve(set({ state, faults: { [id]: severity } }))
          if (!solved.ok) continue
          const look = (part: string) => solved.glasses.find((glass) => glass.part === part)
          const both =
            look('return-glass')?.look === 'full with bubbles' && look('bypass-glass')?.look !== 'empty'
          expect(both, `${id} at ${severity}, ${state}`).toBe(false)
        }
  },
}

describe('what the lessons say by the circuit model', () => {
  it.each(Object.keys(proofs))('%s', (key) => {
    expect.hasAssertions()
    proofs[key]?.()
  })

  test('every question that names the model as its basis is proved here, and no other', () => {
    const named = allQuestions.filter(({ question }) => question.basis === 'model').map(({ key }) => key)
    expect(Object.keys(proofs).sort()).toEqual(named.sort())
  })
})
