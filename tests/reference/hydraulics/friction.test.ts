import { describe, expect, test } from 'vitest'
import {
  colebrookFactor,
  darcyFactor,
  LAMINAR_TO,
  TURBULENT_FROM,
} from '../../../calculators/hydraulics/friction.ts'
import { columnPressure } from '../../../calculators/hydraulics/hydrostatics.ts'
import { pipeFlow } from '../../../calculators/hydraulics/pipe.ts'
import vectors from './friction.json' with { type: 'json' }

const FOOT = 0.3048
const PSI = 6894.757293168361
const GALLON = 0.003785411784
const BARREL = 0.158987294928

/** Dunlop's transition, as in the public EPANET source: smooth walls by 0.9 power, Re 2000 to 4000. */
function dunlop(reynolds: number, relativeRoughness: number): number {
  const r = reynolds / 2000
  const y2 = relativeRoughness / 3.7 + 5.74 / 4000 ** 0.9
  const y3 = -0.86859 * Math.log(y2)
  const fa = y3 ** -2
  const fb = fa * (2 - 0.00514215 / (y2 * y3))
  const [x1, x2, x3] = [7 * fa - fb, 0.128 - 17 * fa + 2.5 * fb, -0.128 + 13 * fa - 2 * fb]
  return x1 + r * (x2 + r * (x3 + r * (0.032 - 3 * fa + 0.5 * fb)))
}

const { library } = vectors

test(`${vectors.cases.length} random cases of ${library}, laminar and turbulent, within 0.1 %`, () => {
  expect(vectors.cases.length).toBeGreaterThanOrEqual(1000)
  let worst = 0
  for (const [reynolds = NaN, roughness = NaN, factor = NaN] of vectors.cases)
    worst = Math.max(worst, Math.abs(darcyFactor(reynolds, roughness) / factor - 1))
  expect(worst).toBeLessThan(1e-3)
})

test.each([
  [1e4, 0, 0.030883],
  [1e5, 0, 0.01799],
  [1e6, 0, 0.011645],
  [1e5, 1e-4, 0.018514],
  [1e5, 1e-3, 0.022175],
  [1e6, 1e-3, 0.019943],
  [1e4, 1e-2, 0.043127],
])('Colebrook at Re %f, roughness %f, made with fluids', (reynolds, roughness, factor) => {
  expect(Math.abs(colebrookFactor(reynolds, roughness) / factor - 1)).toBeLessThan(3e-5)
})

describe('the transition, where no agreed factor exists', () => {
  const roughnesses = [0, 1e-6, 1e-4, 1e-3, 1e-2, 5e-2]

  test.each(roughnesses)('joins in value and slope at both ends, roughness %f', (roughness) => {
    for (const end of [LAMINAR_TO, TURBULENT_FROM]) {
      const step = 1e-3
      const at = (reynolds: number) => darcyFactor(reynolds, roughness)
      expect(Math.abs(at(end + 1e-9) - at(end - 1e-9))).toBeLessThan(1e-12)
      const before = (at(end) - at(end - step)) / step
      const after = (at(end + step) - at(end)) / step
      expect(Math.abs(before - after)).toBeLessThan(1e-9)
    }
  })

  test.each(roughnesses)('the pressure drop still rises with flow, roughness %f', (roughness) => {
    let before = 0
    for (let reynolds = 1900; reynolds <= 4100; reynolds += 5) {
      const drop = darcyFactor(reynolds, roughness) * reynolds * reynolds
      expect(drop).toBeGreaterThan(before)
      before = drop
    }
  })

  test('stays within 4 % of Dunlop’s cubic, which takes another turbulent factor at its end', () => {
    for (const roughness of [0, 1e-4, 1e-3, 1e-2])
      for (let reynolds = 2001; reynolds < 4000; reynolds += 50)
        expect(Math.abs(darcyFactor(reynolds, roughness) / dunlop(reynolds, roughness) - 1)).toBeLessThan(
          0.04,
        )
  })
})

describe('worked examples of textbooks', () => {
  test('White, 4th ed., example 6.6: water in 6 in asphalted cast iron, 200 ft at 6 ft/s', () => {
    const bore = 0.5 * FOOT
    const flow = 6 * FOOT * (Math.PI / 4) * bore ** 2
    // Re 270 000 of the book fixes the viscosity.
    const viscosity = (6 * FOOT * bore) / 270_000
    const result = pipeFlow(
      { length: 200 * FOOT, bore, roughness: 0.0008 * bore, minorLosses: 0 },
      flow,
      viscosity,
      999,
    )
    expect(Math.abs(result.factor / 0.02 - 1)).toBeLessThan(0.015)
    expect(Math.abs(result.drop / columnPressure(999, 4.5 * FOOT) - 1)).toBeLessThan(0.02)
  })

  test('White, 4th ed., example 6.7: factor at Re 128 000, roughness 0.0013', () => {
    expect(Math.abs(darcyFactor(128_000, 0.0013) / 0.0225 - 1)).toBeLessThan(0.015)
  })

  test('Crane TP-410, example 7-1: smooth pipe at Re 100 600', () => {
    expect(Math.abs(darcyFactor(100_600, 0) / 0.0179 - 1)).toBeLessThan(0.01)
  })

  test('Crane TP-410, example 7-8: laminar oil with a globe valve, 6382 Pa', () => {
    const pipe = { length: 60, bore: 0.2027, roughness: 0.0457e-3, minorLosses: 340 * 0.014 }
    const result = pipeFlow(pipe, (600 * BARREL) / 3600, 0.13 / 869.2, 869.2)
    expect(result.reynolds).toBeLessThan(LAMINAR_TO)
    expect(Math.abs(result.drop / 6382 - 1)).toBeLessThan(0.005)
  })

  test('Crane TP-410, example 7-9: SAE 30 at 400 gpm in 5 in pipe, factor 0.0382', () => {
    const velocity = 6.41 * FOOT
    const bore = 5.047 * 0.0254
    const result = pipeFlow(
      { length: 300 * FOOT, bore, roughness: 4.57e-5, minorLosses: 0 },
      400 * (GALLON / 60),
      0.13 / (0.87 * 999),
      0.87 * 999,
    )
    expect(Math.abs(result.velocity / velocity - 1)).toBeLessThan(0.005)
    expect(Math.abs(result.factor / 0.0382 - 1)).toBeLessThan(0.01)
  })

  test('Crane TP-410, example 7-13: fuel oil at 2 gal/s, 9.65 psi by the chart', () => {
    const pipe = { length: 100 * FOOT, bore: 0.05248, roughness: 0.0018 * 0.0254, minorLosses: 0 }
    const result = pipeFlow(pipe, 2 * GALLON, 2.7e-6, 0.815 * 999)
    expect(Math.abs(result.factor / 0.023 - 1)).toBeLessThan(0.015)
    expect(Math.abs(result.drop / (9.65 * PSI) - 1)).toBeLessThan(0.015)
  })
})

test('one metre of 845 kg/m³ is 8.287 kPa (arithmetic)', () => {
  expect(columnPressure(845, 1)).toBeCloseTo(8287, 0)
})
