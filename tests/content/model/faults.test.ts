import { describe, expect, test } from 'vitest'
import { operatingStates } from '../../../calculators/circuit/types.ts'
import { circuitIds, faults, glass } from '../../unit/circuit-model/shipped.ts'
import { inHealth, shown, signs } from './bench.ts'

const places = faults.flatMap((fault) =>
  Object.keys(fault.bends).map((circuit) => ({ fault: fault.id, circuit })),
)

/** Faults that no gauge and no glass tells of while they are alone; by which they are found stands in their data. */
const SILENT = new Set(['bypass-valve-set-high', 'injector-return-filter-plugged'])

test.each(circuitIds)('%s can have thirty faults', (circuit) => {
  expect(places.filter((place) => place.circuit === circuit).length).toBeGreaterThanOrEqual(30)
})

describe.each(places)('$fault in $circuit', ({ fault, circuit }) => {
  test('comes to rest in every state, mild and severe', () => {
    for (const severity of [0.2, 0.6, 1])
      for (const state of operatingStates) expect(shown(circuit, state, { [fault]: severity }).ok).toBe(true)
  })

  test('hardly begun, is health', () => {
    for (const state of operatingStates) {
      const health = inHealth(circuit, state)
      const begun = shown(circuit, state, { [fault]: 1e-6 })
      expect(begun.glasses.map(({ words }) => words)).toEqual(health.glasses.map(({ words }) => words))
      begun.readings.forEach(({ id, value, accuracy }, place) => {
        expect(id).toBe(health.readings[place]?.id)
        expect(Math.abs(value - (health.readings[place]?.value ?? 0))).toBeLessThan(0.05 * accuracy + 1e-9)
      })
    }
  })

  test('shows something at its worst, or is known to show nothing by itself', () => {
    expect(signs(circuit, { [fault]: 1 }).length > 0).toBe(!SILENT.has(fault))
  })
})

test('a bypass valve that is set too high hides plugged filters from the bypass glass', () => {
  const plugged = { 'secondary-filters-plugged': 0.6 }
  const hidden = { ...plugged, 'bypass-valve-set-high': 0.6 }
  expect(glass(shown('pq-12', 'priming', plugged), 'bypass-glass').from).toBe('valve')
  expect(glass(shown('pq-12', 'priming', hidden), 'bypass-glass').look).toBe('empty')
})
