import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { mulberry32, standardNormal } from '../../../calculators/calculator/random.ts'
import { run } from '../../../calculators/calculator/run.ts'
import type { QuantityResult } from '../../../calculators/calculator/run.ts'
import type { Calculator, InputValue } from '../../../calculators/calculator/types.ts'
import { UNCERTAINTY_UNKNOWN } from '../../../calculators/calculator/uncertainty.ts'
import { functionOf, tube } from './tube.ts'

function outcome(
  calculator: Calculator,
  values: Record<string, InputValue> = {},
  accuracies: Record<string, number> = {},
  id = 'y',
): QuantityResult {
  const result = run(calculator, values, accuracies)
  if ('refusal' in result) throw new Error(result.refusal.reason)
  return result.outputs[id] as QuantityResult
}

describe('refused neighbours', () => {
  it('one of them: the other alone counts', () => {
    const half = functionOf((x) => (x > 10 ? 'refused' : 3 * x), { default: 10, accuracy: 1 })
    expect(outcome(half)).toMatchObject({ value: 30, uncertainty: 3, uncertaintyMethod: 'first order' })
  })

  it('a neighbour outside the physical range counts as refused', () => {
    const edge = functionOf((x) => 3 * x, { default: 0, accuracy: 1, minimum: 0 })
    expect(outcome(edge)).toMatchObject({ uncertainty: 3 })
  })

  it('both: says that none can be given', () => {
    const spike = functionOf((x) => (x === 10 ? 1 : 'refused'), { default: 10, accuracy: 1 })
    expect(outcome(spike)).toEqual({ value: 1, uncertaintyNote: UNCERTAINTY_UNKNOWN })
  })

  it('too many draws: says that none can be given', () => {
    const narrow = functionOf((x) => (Math.abs(x) > 1 ? 'refused' : x ** 2), { default: 0, accuracy: 1 })
    expect(outcome(narrow)).toMatchObject({ uncertainty: expect.any(Number) })
    const narrower = functionOf((x) => (x > 0.5 && x < 1 ? 'refused' : x ** 2), { default: 0, accuracy: 1 })
    expect(outcome(narrower)).toEqual({ value: 0, uncertaintyNote: UNCERTAINTY_UNKNOWN })
  })
})

describe('first order', () => {
  it('of a straight line is slope times half-width', () => {
    expect(outcome(functionOf((x) => 7 - 2 * x, { default: 3, accuracy: 0.5 })).uncertainty).toBeCloseTo(
      1,
      12,
    )
  })

  it('adds the inputs by root sum of squares', () => {
    const sum = outcome(tube, { readings: [{ time: 1 }, { time: 2 }, { time: 3 }] }, {}, 'sum')
    expect(sum.uncertainty).toBeCloseTo(Math.sqrt(3) * 0.5, 12)
    const overridden = outcome(tube, { readings: [{ time: 1 }, { time: 2 }] }, { 'readings.time': 3 }, 'sum')
    expect(overridden.uncertainty).toBeCloseTo(Math.sqrt(2) * 3, 12)
  })

  it('takes a relative accuracy as a share of the value', () => {
    const speed = outcome(tube, { form: 'measured', area: 0.5, flow: 1 }, {}, 'speed')
    expect(speed.uncertainty).toBeCloseTo(2 * 0.02, 4)
  })

  it('is left out where no input that counts has an accuracy', () => {
    expect(outcome(tube, { form: 'round' }, { diameter: 0 }, 'speed')).not.toHaveProperty('uncertainty')
    expect(outcome(tube, {}, { diameter: 0, flow: 0.0001 }, 'speed').uncertainty).toBeCloseTo(0.012732, 5)
  })

  it('gives nothing for an outcome in words', () => {
    const result = run(tube, {})
    expect('outputs' in result && result.outputs['verdict']).toEqual({ value: 'slow' })
  })
})

describe('Monte Carlo, where the method is strongly curved', () => {
  it('of a square at its lowest point: half of the middle 95 % of the chi-square distribution', () => {
    // Half-width 1.96 is one standard deviation; x² then has chi-square of one degree: 0.000982 to 5.0239.
    const square = outcome(functionOf((x) => x ** 2, { default: 0, accuracy: 1.96 }))
    expect(square.uncertaintyMethod).toBe('Monte Carlo')
    expect(Math.abs((square.uncertainty ?? 0) / ((5.0239 - 0.000982) / 2) - 1)).toBeLessThan(0.1)
  })

  it('of an exponential: half of the middle 95 % of the lognormal distribution', () => {
    const growth = outcome(functionOf((x) => Math.exp(x), { default: 0, accuracy: 1.96 }))
    expect(growth.uncertaintyMethod).toBe('Monte Carlo')
    const expected = (Math.exp(1.96) - Math.exp(-1.96)) / 2
    expect(Math.abs((growth.uncertainty ?? 0) / expected - 1)).toBeLessThan(0.1)
  })

  it('gives the same for the same inputs', () => {
    const growth = functionOf((x) => Math.exp(x), { default: 0, accuracy: 1.96 })
    expect(outcome(growth)).toEqual(outcome(growth))
  })

  it('agrees with first order where both hold', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 0.09, noNaN: true }), (accuracy) => {
        const nearly = outcome(functionOf((x) => Math.exp(x), { default: 0, accuracy }))
        expect(nearly.uncertaintyMethod).toBe('first order')
        expect(Math.abs((nearly.uncertainty ?? 0) / accuracy - 1)).toBeLessThan(0.01)
      }),
    )
  })
})

describe('the numbers drawn', () => {
  it('of mulberry32 are those of its published form', () => {
    // First outputs of the reference C function for seed 0, over 2³².
    const uniform = mulberry32(0)
    expect([uniform(), uniform()].map((value) => Math.round(value * 2 ** 32))).toEqual([1144304738, 1416247])
  })

  it('are uniform and normal enough', () => {
    const draws = Array.from({ length: 20_000 }, standardNormal(mulberry32(1)))
    const mean = draws.reduce((sum, value) => sum + value, 0) / draws.length
    const variance = draws.reduce((sum, value) => sum + (value - mean) ** 2, 0) / draws.length
    expect(Math.abs(mean)).toBeLessThan(0.03)
    expect(Math.abs(variance - 1)).toBeLessThan(0.03)
    expect(draws.every(Number.isFinite)).toBe(true)
  })
})
