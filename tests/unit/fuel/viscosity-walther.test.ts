import { expect, test } from 'vitest'
import {
  lineThroughPoint,
  lineThroughPoints,
  LOWEST_VISCOSITY,
  viscosityFromWaltherZ,
  viscosityOnLine,
  waltherZ,
} from '../../../calculators/fuel/viscosity-walther.ts'

const first = { temperature: 313.15, kinematicViscosity: 3e-6 }

test('below Z at zero viscosity there is no viscosity', () => {
  expect(viscosityFromWaltherZ(0.9299)).toBeNaN()
  expect(viscosityFromWaltherZ(NaN)).toBeNaN()
  expect(viscosityFromWaltherZ(0.93)).toBeGreaterThan(0)
})

test('the lowest viscosity is where Z is 1', () => {
  expect(waltherZ(LOWEST_VISCOSITY)).toBeCloseTo(1, 5)
})

test('equal temperatures give no line', () => {
  expect(lineThroughPoints(first, { temperature: 313.15, kinematicViscosity: 2e-6 }).slope).not.toBe(0)
  expect(Number.isFinite(lineThroughPoints(first, { ...first, kinematicViscosity: 2e-6 }).intercept)).toBe(
    false,
  )
})

test('the line passes through its points', () => {
  const second = { temperature: 373.15, kinematicViscosity: 1.2e-6 }
  const line = lineThroughPoints(first, second)
  expect(viscosityOnLine(line, first.temperature) / first.kinematicViscosity).toBeCloseTo(1, 10)
  expect(viscosityOnLine(line, second.temperature) / second.kinematicViscosity).toBeCloseTo(1, 10)
})

test('far below freezing the viscosity runs out of numbers and says infinity', () => {
  expect(viscosityOnLine(lineThroughPoint(first, 20), 150)).toBe(Infinity)
})
