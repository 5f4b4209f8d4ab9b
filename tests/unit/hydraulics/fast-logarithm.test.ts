import { expect, test } from 'vitest'
import { fastLogarithm, powerMinusNineTenths } from '../../../calculators/hydraulics/fast-logarithm.ts'

const VALUES = Array.from({ length: 40_001 }, (_, i) => 10 ** (-299 + i * 0.01495))
// Around powers of two the series is at its ends, and the exponent steps.
for (let exponent = -60; exponent <= 60; exponent++)
  for (const off of [-1e-9, -1e-15, 0, 1e-15, 1e-9]) VALUES.push(2 ** exponent * (1 + off))

test('the logarithm is that of Math.log to 1e-12', () => {
  let worst = 0
  for (const value of VALUES) worst = Math.max(worst, Math.abs(fastLogarithm(value) - Math.log(value)))
  expect(worst).toBeLessThan(1e-12)
})

test('the power −0.9 is that of Math.pow to 1e-12', () => {
  let worst = 0
  for (const value of VALUES)
    worst = Math.max(worst, Math.abs(powerMinusNineTenths(value) / value ** -0.9 - 1))
  expect(worst).toBeLessThan(1e-12)
})
