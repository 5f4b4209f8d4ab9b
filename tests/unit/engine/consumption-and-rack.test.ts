import { describe, expect, test } from 'vitest'
import {
  consumptionRatio,
  indicatedPowerRatio,
  onReferenceFuel,
  REFERENCE_AMBIENT,
} from '../../../calculators/engine/consumption-correction.ts'
import { fixedRackRatio } from '../../../calculators/engine/fixed-rack.ts'

describe('ambient conditions', () => {
  test.each(['charge-cooled', 'turbocharged', 'natural'] as const)(
    'reference conditions change nothing: %s',
    (kind) => {
      expect(indicatedPowerRatio(REFERENCE_AMBIENT, kind)).toBe(1)
      expect(consumptionRatio(1, 0.8)).toBe(1)
    },
  )

  test('hot or thin air costs fuel, the more the more of the work is friction', () => {
    const hot = indicatedPowerRatio({ ...REFERENCE_AMBIENT, airTemperature: 318 }, 'charge-cooled')
    const high = indicatedPowerRatio({ ...REFERENCE_AMBIENT, pressure: 8e4 }, 'charge-cooled')
    for (const ratio of [hot, high]) {
      expect(ratio).toBeLessThan(1)
      expect(consumptionRatio(ratio, 0.8)).toBeGreaterThan(1)
      expect(consumptionRatio(ratio, 0.7)).toBeGreaterThan(consumptionRatio(ratio, 0.9))
      expect(consumptionRatio(ratio, 1)).toBe(1)
    }
  })

  test('by hand: 90 kPa, natural, η 0.8: k 0.9, α 0.9 − 0.7 × 0.1 × 0.25 = 0.8825, β 1.01983', () => {
    const ratio = indicatedPowerRatio({ ...REFERENCE_AMBIENT, pressure: 9e4 }, 'natural')
    expect(ratio).toBeCloseTo(0.9, 12)
    expect(consumptionRatio(ratio, 0.8)).toBeCloseTo(0.9 / 0.8825, 12)
  })
})

describe('the fuel', () => {
  test('the same fuel leaves consumption and power alone', () => {
    expect(onReferenceFuel(6e-8, 42.7e6, 42.7e6)).toBe(6e-8)
    const fuel = { density: 840, netEnergy: 42.7e6 }
    expect(fixedRackRatio(fuel, fuel)).toBe(1)
  })

  test('there and back is where it began', () => {
    const light = { density: 800, netEnergy: 43.2e6 }
    const heavy = { density: 880, netEnergy: 42.3e6 }
    expect(fixedRackRatio(light, heavy) * fixedRackRatio(heavy, light)).toBeCloseTo(1, 14)
    expect(fixedRackRatio(light, heavy)).toBeLessThan(1)
  })
})
