import { describe, expect, test } from 'vitest'
import { apiGravity } from '../../../calculators/fuel/api-gravity.ts'
import {
  cetaneIndexA,
  cetaneIndexB,
  cetaneIndexD976,
  cetaneIndexD976Customary,
  densityTerm,
} from '../../../calculators/fuel/cetane-index.ts'
import { SIXTY_FAHRENHEIT, WATER_DENSITY_60F } from '../../../calculators/fuel/density-2004.ts'
import { bureauEnergy, oilEnergy, specificEnergy } from '../../../calculators/fuel/energy-content.ts'
import type { EnergyFuel } from '../../../calculators/fuel/energy-content.ts'
import { carbonAromaticityIndex, ignitionIndex } from '../../../calculators/fuel/ignition-residual.ts'
import { refinedDensityAt } from '../../../calculators/fuel/refined-density.ts'

// Values worked out apart from this code with mpmath from the equations: they check the arithmetic, not the method.

const at60F = (density15: number) => refinedDensityAt(density15, SIXTY_FAHRENHEIT) ?? NaN
const distilled = (t10: number, t50: number, t90: number) => ({
  t10: t10 + 273.15,
  t50: t50 + 273.15,
  t90: t90 + 273.15,
})

describe('specific energy', () => {
  test.each<[EnergyFuel, number, number, number, number, number]>([
    ['residual', 991, 0.5, 0.05, 3.5, 39.847],
    ['residual', 960, 0.2, 0.03, 1.0, 41.21],
    ['distillate', 845, 0, 0, 0.1, 42.791],
    ['distillate', 860, 0.02, 0.01, 0.5, 42.467],
  ])('%s of %d kg/m³ with %d, %d and %d %%: %d MJ/kg net', (fuel, density, water, ash, sulfur, expected) => {
    const impurities = { water: water / 100, ash: ash / 100, sulfur: sulfur / 100 }
    expect(specificEnergy('net', fuel, density, impurities) / 1e6).toBeCloseTo(expected, 3)
  })

  test('the residual fuel of 991 kg/m³ holds 42.112 MJ/kg gross', () => {
    const impurities = { water: 0.005, ash: 0.0005, sulfur: 0.035 }
    expect(specificEnergy('gross', 'residual', 991, impurities) / 1e6).toBeCloseTo(42.112, 3)
  })

  test.each([760, 800, 845, 880, 920])(
    'of a distillate of %d kg/m³ agrees with the rule of the Bureau of Standards within 0.1 %',
    (density) => {
      for (const kind of ['net', 'gross'] as const) {
        const bureau = bureauEnergy(kind, at60F(density) / WATER_DENSITY_60F)
        expect(Math.abs(oilEnergy(kind, 'distillate', density) / bureau - 1)).toBeLessThan(0.001)
      }
    },
  )

  test('the linear term raises the net value: with its sign turned, net would lie 12 % lower', () => {
    expect(oilEnergy('net', 'distillate', 845)).toBeGreaterThan(42.7e6)
    expect(oilEnergy('net', 'distillate', 845)).toBeLessThan(oilEnergy('gross', 'distillate', 845))
  })
})

describe('cetane index', () => {
  test.each([
    [850, 215, 260, 310, 45.2, 44.2935, 45.643],
    [840, 215, 260, 310, 49.087, 48.2925, 48.964],
    [845, 220, 275, 335, 50.585, 50.235, 50.539],
    [820, 200, 245, 300, 52.985, 52.176, 52.255],
    [865, 230, 285, 345, 45.438, 45.189, 46.092],
  ])('%d kg/m³, %d, %d and %d °C', (density, t10, t50, t90, a, b, d976) => {
    const distillation = distilled(t10, t50, t90)
    expect(cetaneIndexA(density, distillation)).toBeCloseTo(a, 3)
    expect(cetaneIndexB(density, distillation)).toBeCloseTo(b, 3)
    expect(cetaneIndexD976(density, distillation.t50)).toBeCloseTo(d976, 3)
  })

  test('procedure A has minus 0.420 B: the plus of one public page raises the index of a light, heavy-ended fuel by three', () => {
    const distillation = distilled(200, 250, 345)
    const b = densityTerm(820)
    const withPlus = cetaneIndexA(820, distillation) + 2 * 0.42 * b * (345 - 310)
    expect(withPlus - cetaneIndexA(820, distillation)).toBeGreaterThan(3)
    const withMinus = 45.2 + 0.0892 * -15 + (0.131 + 0.901 * b) * -10 + (0.0523 - 0.42 * b) * 35
    const rest = 0.00049 * (225 - 1225) + 107 * b + 60 * b * b
    expect(cetaneIndexA(820, distillation)).toBeCloseTo(withMinus + rest, 9)
  })

  test.each([
    [820, 245],
    [840, 260],
    [850, 270],
    [865, 285],
  ])('the two forms of D976 differ by less than half a unit at %d kg/m³ and %d °C', (density, t50) => {
    const customary = cetaneIndexD976Customary(apiGravity(at60F(density)), t50 * 1.8 + 32)
    expect(Math.abs(cetaneIndexD976(density, t50 + 273.15) - customary)).toBeLessThan(0.5)
  })
})

describe('residual fuel', () => {
  test.each([
    [991, 380, 50, 851.9],
    [960, 30, 50, 854.6],
    [1010, 700, 50, 865.0],
    [930, 10, 50, 846.9],
    [991, 35, 100, 852.8],
  ])('%d kg/m³ with %d mm²/s at %d °C: CCAI %d', (density, viscosity, celsius, expected) => {
    expect(carbonAromaticityIndex(density, viscosity * 1e-6, celsius + 273.15)).toBeCloseTo(expected, 1)
  })

  test('one fuel has nearly one CII from its viscosity at 50 and at 100 °C, which speaks for the equation as recalled', () => {
    const warm = ignitionIndex(991, 380e-6, 323.15)
    const hot = ignitionIndex(991, 35e-6, 373.15)
    expect(Math.abs(warm - hot)).toBeLessThan(0.5)
    expect(warm).toBeGreaterThan(30)
  })
})
