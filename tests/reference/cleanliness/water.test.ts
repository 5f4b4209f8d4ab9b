import { describe, expect, test } from 'vitest'
import { waterMassFraction, waterMoleFraction } from '../../../calculators/cleanliness/water.ts'
import { hydrogenToCarbon } from '../../../calculators/heat/petroleum-heat.ts'

describe('solubility of water by Hibbard and Schalla', () => {
  test('at the critical temperature of the equation, 352 °C, water and hydrocarbon mix in all shares', () => {
    expect(waterMoleFraction(0.15, 625)).toBeCloseTo(1, 12)
    expect(1 / 0.0016 - 273.15).toBeCloseTo(352, 0)
    expect(waterMassFraction(1, 215)).toBe(1)
  })

  test('less hydrogen for the carbon, more water: what the summary says', () => {
    expect(waterMoleFraction(0.08, 293)).toBeGreaterThan(waterMoleFraction(0.17, 293))
  })

  test('jet fuel: 65 ppm by volume at 80 °F and 25 ppm at 14 °F (jet-fuel-water), within the accuracy claimed', () => {
    const byMass = (kelvin: number) =>
      waterMassFraction(waterMoleFraction(hydrogenToCarbon(800), kelvin), 165)
    const byVolume = (kelvin: number) => byMass(kelvin) * 0.8 * 1e6
    expect(byVolume(299.82) / 65).toBeLessThan(1.4)
    expect(byVolume(299.82) / 65).toBeGreaterThan(1.2)
    expect(byVolume(263.15) / 25).toBeLessThan(0.65)
    expect(byVolume(263.15) / 25).toBeGreaterThan(0.5)
  })
})
