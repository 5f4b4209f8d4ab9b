/** What the trade reads from the two glasses (common practice, no published source), held against the model. */
import { describe, expect, test } from 'vitest'
import { operatingStates, type OperatingState } from '../../../calculators/circuit/types.ts'
import { circuitIds, faults, glass } from '../../unit/circuit-model/shipped.ts'
import { inHealth, shown, type Given } from './bench.ts'

const running = operatingStates.filter((state) => state !== 'priming')
const bubbles = (circuit: string, state: OperatingState, given: Given): boolean =>
  glass(shown(circuit, state, given), 'return-glass').words.includes('bubbles')
const bypass = (state: OperatingState, given: Given) =>
  glass(shown('pq-12', state, given), 'bypass-glass').from

const SEVERITIES = [0.6, 1]
const gradesOf = (fault: string): Given[] => SEVERITIES.map((severity) => ({ [fault]: severity }))
const faultsOf = (circuit: string): string[] =>
  faults.filter(({ bends }) => Object.hasOwn(bends, circuit)).map(({ id }) => id)

/** Each is on the suction side, between the tank and the pump's chamber. */
const SUCTION = new Set([
  'air-left-in-the-circuit',
  'foot-valve-binds',
  'foot-valve-leaks-back',
  'fuel-waxed',
  'pump-shaft-seal-draws-air',
  'strainer-cover-draws-air',
  'suction-line-restricted',
  'suction-pipe-cracked-in-tank',
  'suction-pipe-uncovered',
  'suction-strainer-plugged',
  'suction-union-draws-air',
])

describe.each(circuitIds)('%s in health', (circuit) => {
  test.each(operatingStates)('the return glass is full and clear: %s', (state) => {
    expect(glass(inHealth(circuit, state), 'return-glass').words).toBe('full and clear')
  })
})

test.each(operatingStates)('the bypass glass is empty in health: %s', (state) => {
  expect(glass(inHealth('pq-12', state), 'bypass-glass').words).toBe('empty')
})

describe.each(['pq-12', 'ps-6'])('bubbles on priming in %s', (circuit) => {
  test.each([
    'strainer-cover-draws-air',
    'suction-union-draws-air',
    'suction-pipe-cracked-in-tank',
    'pump-shaft-seal-draws-air',
    'air-left-in-the-circuit',
  ])('come with %s', (fault) => {
    for (const given of gradesOf(fault)) expect(bubbles(circuit, 'priming', given)).toBe(true)
  })

  // The rule has one limit: the glass itself, where the line behind it falls to the tank and draws.
  test.each(faultsOf(circuit).filter((fault) => !SUCTION.has(fault) && fault !== 'glass-gasket-draws-air'))(
    'do not come with %s',
    (fault) => {
      for (const given of gradesOf(fault)) expect(bubbles(circuit, 'priming', given)).toBe(false)
    },
  )
})

describe('bubbles only with the engine running', () => {
  test('come with an injector that passes gas, more with more load', () => {
    for (const given of gradesOf('injector-passes-gas')) {
      expect(bubbles('pq-12', 'priming', given)).toBe(false)
      for (const state of running) expect(bubbles('pq-12', state, given)).toBe(true)
      const [idle, full] = (['idle', 'full'] as const).map(
        (state) => glass(shown('pq-12', state, given), 'return-glass').gas,
      )
      expect(full).toBeGreaterThan(idle ?? 1)
    }
  })

  const onlyRunning = (fault: string): Given[] =>
    gradesOf(fault).filter(
      (given) =>
        running.some((state) => bubbles('pq-12', state, given)) && !bubbles('pq-12', 'priming', given),
    )

  // The rule's limits: a vacuum that only burnt fuel makes, and vapour of a fuel that is no gas oil.
  const LIMITS = ['tank-vent-blocked', 'fuel-diluted']
  test.each(LIMITS)('may also come with %s', (fault) => {
    expect(onlyRunning(fault)).not.toEqual([])
  })

  const KNOWN = new Set(['injector-passes-gas', ...LIMITS])
  test.each(faultsOf('pq-12').filter((fault) => !KNOWN.has(fault)))('do not come with %s', (fault) => {
    expect(onlyRunning(fault)).toEqual([])
  })
})

describe('fuel in the bypass glass, and none of the bubbles in the return glass', () => {
  test.each([
    'secondary-filters-plugged',
    'bypass-valve-held-open',
    'bypass-valve-weak',
    'bypass-valve-wrong',
  ])('falls from the valve with %s', (fault) => {
    for (const given of gradesOf(fault)) {
      expect(bypass('priming', given)).toBe('valve')
      for (const state of operatingStates) expect(bubbles('pq-12', state, given)).toBe(false)
    }
  })

  test.each(['return-line-squeezed', 'return-line-blocked'])('rises from its drain with %s', (fault) => {
    for (const given of gradesOf(fault))
      for (const state of operatingStates) {
        expect(bypass(state, given)).toBe('drain')
        expect(bubbles('pq-12', state, given)).toBe(false)
      }
  })

  /** Besides, whatever lifts the pressure before the secondary filters; its gauges tell it apart. */
  const PRESSURE = [
    'wrong-secondary-elements',
    'heater-not-heating',
    'wrong-grade-delivered',
    'fuel-waxed',
    'injector-return-filters-plugged',
    'return-valve-set-high',
    'return-valve-stuck-shut',
  ]
  const KNOWN = new Set([
    ...PRESSURE,
    'secondary-filters-plugged',
    'bypass-valve-held-open',
    'bypass-valve-weak',
    'bypass-valve-wrong',
    'bypass-drain-plugged',
    'return-line-squeezed',
    'return-line-blocked',
  ])
  test.each(faultsOf('pq-12').filter((fault) => !KNOWN.has(fault)))('does not come with %s', (fault) => {
    for (const given of gradesOf(fault))
      for (const state of operatingStates) expect(bypass(state, given)).toBe('none')
  })
})
