import { describe, expect, test } from 'vitest'
import { airAt } from '../../../calculators/heat/air.ts'
import { coolingTimeConstant, timeToReach } from '../../../calculators/heat/cooling.ts'
import { nusseltInWind } from '../../../calculators/heat/cylinder.ts'
import { specificHeat } from '../../../calculators/heat/petroleum-heat.ts'

describe('Churchill and Bernstein, exercises of wind-on-pipe-exercises', () => {
  test.each([
    ['7-53', 1.632e4, 0.7255, 71.19, 2e-4],
    ['7-100', 3.254e4, 0.7336, 107.0, 1e-3],
  ])('%s: Re %d, Pr %d, Nu %d', (_, reynolds, prandtl, nusselt, tolerance) => {
    expect(Math.abs(nusseltInWind(reynolds, prandtl) / nusselt - 1)).toBeLessThan(tolerance)
  })
})

describe('air against the tables of the same exercises', () => {
  test.each([
    [40, 1.702e-5, 0.02662, 0.7255],
    [10, 1.426e-5, 0.02439, 0.7336],
  ])('%d °C: within 3 %', (celsius, viscosity, conductivity, prandtl) => {
    const air = airAt(celsius + 273.15)
    expect(Math.abs(air.kinematicViscosity / viscosity - 1)).toBeLessThan(0.01)
    expect(Math.abs(air.conductivity / conductivity - 1)).toBeLessThan(0.03)
    expect(Math.abs(air.prandtl / prandtl - 1)).toBeLessThan(0.03)
  })
})

test('thermocouple-exercise: 99 % of a step after 9.96 s', () => {
  const diameter = 1e-3
  const timeConstant = coolingTimeConstant(
    (Math.PI / 6) * diameter ** 3,
    Math.PI * diameter ** 2,
    8500,
    320,
    210,
  )
  expect(timeToReach(0, 100, 99, timeConstant)).toBeCloseTo(9.96, 1)
})

test('specific heat in the same equation in degrees Fahrenheit: (0.388 + 0.00045 t)/√d', () => {
  const density = 0.845 * 999.016
  for (const fahrenheit of [0, 60, 140, 212]) {
    const kelvin = (fahrenheit + 459.67) / 1.8
    const other = (4186.8 * (0.388 + 0.00045 * fahrenheit)) / Math.sqrt(0.845)
    expect(Math.abs(specificHeat(density, kelvin) / other - 1)).toBeLessThan(0.002)
  }
})
