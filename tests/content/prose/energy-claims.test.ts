import { describe, expect, test } from 'vitest'
import { cetaneIndexA, cetaneIndexD976, densityTerm } from '../../../calculators/fuel/cetane-index.ts'
import { oilEnergy } from '../../../calculators/fuel/energy-content.ts'
import { carbonAromaticityIndex } from '../../../calculators/fuel/ignition-residual.ts'
import { refinedDensityAt } from '../../../calculators/fuel/refined-density.ts'
import { fuel, setPoint } from './plant-and-fuels.ts'

// What the two articles on energy and on ignition say in figures, worked out from the plant and the fuels.

const summer = fuel('summer-gas-oil').density
const winter = fuel('winter-gas-oil').density
const at = (density: number, kelvin: number) => refinedDensityAt(density, kelvin) ?? NaN
const net = (density: number) => oilEnergy('net', 'distillate', density)
const cool = setPoint('fuel-temperature-low')
const warm = setPoint('fuel-temperature-high')

describe('energy, power and what fuel quality costs', () => {
  test('«the two differ by about six per cent»', () => {
    expect(1 - net(summer) / oilEnergy('gross', 'distillate', summer)).toBeCloseTo(0.06, 2)
  })

  test('a litre gains more by density than a kilogram loses', () => {
    expect(net(890)).toBeLessThan(net(830))
    expect((890 * net(890)) / (830 * net(830)) - 1).toBeGreaterThan(3 * (1 - net(890) / net(830)))
  })

  test('«about four per cent of the power is gone»: warm winter fuel against cool summer fuel', () => {
    const ratio = (at(winter, warm) * net(winter)) / (at(summer, cool) * net(summer))
    expect(Math.round(100 * (1 - ratio))).toBe(4)
  })

  test('«two or three per cent» between the ends of the window', () => {
    const loss = 1 - at(summer, warm) / at(summer, cool)
    expect(loss).toBeGreaterThan(0.02)
    expect(loss).toBeLessThan(0.035)
  })

  test('«one per cent for each six degrees; expansion alone explains about half»', () => {
    expect(1 - at(summer, 319.15) / at(summer, 313.15)).toBeCloseTo(0.005, 3)
  })
})

describe('ignition quality', () => {
  const distillation = { t10: 493.15, t50: 548.15, t90: 608.15 }

  test('«on one fuel they differ by a unit or so»', () => {
    const difference = cetaneIndexA(summer, distillation) - cetaneIndexD976(summer, distillation.t50)
    expect(Math.abs(difference)).toBeLessThan(1)
  })

  test('«wrong by several tenths, and by more for a light and heavy-ended fuel»', () => {
    const error = (density: number, t90: number) => 2 * 0.42 * densityTerm(density) * (t90 - 310)
    expect(error(summer, 335)).toBeGreaterThan(0.3)
    expect(error(820, 345)).toBeGreaterThan(2)
  })

  test('«a figure at 100 °C read as one at 50 °C moves the result far»', () => {
    const right = carbonAromaticityIndex(991, 35e-6, 373.15)
    const wrong = carbonAromaticityIndex(991, 35e-6, 323.15)
    expect(wrong - right).toBeGreaterThan(20)
  })
})
