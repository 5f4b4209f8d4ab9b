import { describe, expect, test } from 'vitest'
import { apiGravity } from '../../../calculators/fuel/api-gravity.ts'
import { volumeFactor1980 } from '../../../calculators/fuel/density-1980.ts'
import { pressureFactor2004, volumeFactor2004 } from '../../../calculators/fuel/density-2004.ts'
import { baseDensity } from '../../../calculators/fuel/density-correction.ts'
import {
  expansionCoefficient,
  GROUPS_1980,
  GROUPS_2004,
  type ExpansionConstants,
  type ProductGroup,
} from '../../../calculators/fuel/density-groups.ts'
import jetTable from './jet-a-800.json' with { type: 'json' }

/** Density at 60 °F by the definition of API gravity, with water of the 2004 edition. */
const densityFromApiGravity = (gravity: number) => (141.5 * 999.016) / (gravity + 131.5)

const kelvin = (celsius: number) => celsius + 273.15
const kelvinF = (fahrenheit: number) => (fahrenheit + 459.67) / 1.8
function row(table: readonly ExpansionConstants[], group: ProductGroup): ExpansionConstants {
  const found = table.find((one) => one.group === group)
  if (!found) throw new Error(group)
  return found
}

describe('arithmetic, made with mpmath from the published constants (a check of the sum, not of the method)', () => {
  test.each([
    ['fuelOils', 850, 100, 461.53218, 0.98143555],
    ['fuelOils', 876, 30, 443.69331, 1.0132594],
    ['fuelOils', 950, 200, 399.40942, 0.94323991],
    ['jetFuels', 810, 75, 503.43088, 0.99242976],
    ['lubricating', 890, 140, 391.88764, 0.96836511],
    ['crude', 800, 100, 532.96203, 0.97854569],
  ] as const)('2004, %s of %f kg/m³ at %f °F', (group, density, fahrenheit, alpha, factor) => {
    const constants = row(GROUPS_2004, group)
    expect(expansionCoefficient(density, constants) * 1e6).toBeCloseTo(alpha, 5)
    expect(volumeFactor2004(density, kelvinF(fahrenheit), constants)).toBeCloseTo(factor, 8)
  })

  test.each([
    [845, 20, 0.995809],
    [845, 30, 0.987396],
    [850, 40, 0.979107],
    [880, 50, 0.971995],
    [930, 60, 0.966439],
  ])('Table 54B equation, %f kg/m³ at %f °C', (density, celsius, factor) => {
    expect(volumeFactor1980(density, kelvin(celsius), row(GROUPS_1980, 'fuelOils'))).toBeCloseTo(factor, 6)
  })

  test('pressure: 65 psig on 850 kg/m³ at 100 °F', () => {
    const factor = pressureFactor2004(850, kelvinF(100), 65 * 6894.757, row(GROUPS_2004, 'fuelOils'))
    expect(factor).toBeCloseTo(1.000371, 6)
  })

  test.each([
    [10, 999.016],
    [30, 875.299],
    [35, 849.014],
    [36, 843.945],
    [40, 824.261],
  ])('%f °API', (gravity, density) => {
    expect(densityFromApiGravity(gravity)).toBeCloseTo(density, 3)
    expect(apiGravity(density)).toBeCloseTo(gravity, 3)
  })
})

describe('printed tables', () => {
  // Every factor seen of a public table for Jet A of 800 kg/m³ at 15 °C (Table 54B, four decimals).
  test.each(jetTable.factors)('Table 54B, 800 kg/m³ at %f °C', (celsius, factor) => {
    const found = volumeFactor1980(800, kelvin(celsius ?? NaN), row(GROUPS_1980, 'jetFuels'))
    expect(Math.abs(found - (factor ?? NaN))).toBeLessThan(0.00005 + 1e-6)
  })

  // Seen in an extract of a military manual: 40.5 °API read at 83.0 °F is 38.7 at 60 °F by Table 5B, which includes the
  // correction of a glass hydrometer, 1 − 0.00001278Δt − 6.2e-9Δt². Calculators leave that correction to the person.
  test('Table 5B: 40.5 °API observed at 83 °F', () => {
    const glass = 1 - 0.00001278 * 23 - 6.2e-9 * 23 * 23
    const result = baseDensity(densityFromApiGravity(40.5) * glass, kelvinF(83), 'refined', '2004')
    if (!('found' in result)) throw new Error('no base density')
    expect(Math.abs(apiGravity(result.found.density) - 38.7)).toBeLessThanOrEqual(0.05)
  })
})

describe('editions and groups', () => {
  test('from 800 kg/m³ up the editions differ by no more than 3e-5 up to 60 °C and 1e-4 up to 150 °C', () => {
    for (const density of [800, 820, 850, 900, 950]) {
      for (let celsius = 0; celsius <= 150; celsius += 5) {
        const both = (['2004', '1980'] as const).map((edition) => {
          const result = baseDensity(density, kelvin(15), 'refined', edition)
          if (!('found' in result)) throw new Error(`${density} by ${edition}`)
          const { density: base, constants } = result.found
          const factor = edition === '2004' ? volumeFactor2004 : volumeFactor1980
          return (base * factor(base, kelvin(celsius), constants)) / density
        })
        expect(Math.abs((both[0] ?? 0) - (both[1] ?? 1))).toBeLessThan(celsius <= 60 ? 3e-5 : 1e-4)
      }
    }
  })

  test('2004: neighbouring groups have the same expansion at their border, to 2e-8 per °F', () => {
    for (const [lighter, heavier] of [
      ['gasolines', 'transition'],
      ['transition', 'jetFuels'],
      ['jetFuels', 'fuelOils'],
    ] as const) {
      const border = row(GROUPS_2004, heavier).minimum
      expect(row(GROUPS_2004, lighter).maximum).toBe(border)
      const step =
        expansionCoefficient(border, row(GROUPS_2004, lighter)) -
        expansionCoefficient(border, row(GROUPS_2004, heavier))
      expect(Math.abs(step)).toBeLessThan(2e-8)
    }
  })
})
