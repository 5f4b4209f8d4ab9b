import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import {
  FITTINGS,
  fullyRoughFactor,
  lossOfFittings,
  twoKLoss,
  type Bill,
  type FittingId,
} from '../../../calculators/hydraulics/fittings.ts'
import { lineFlow } from '../../../calculators/hydraulics/line.ts'

type TwoK = [FittingId, number, number, number]
type Line = [number, number, number, number, number, number, Bill, number]

/** Read rather than imported: to infer the type of so many unlike rows takes the type check a dozen seconds. */
const vectors = JSON.parse(readFileSync(join(import.meta.dirname, 'fittings.json'), 'utf8')) as {
  readonly library: string
  readonly twoK: readonly TwoK[]
  readonly lines: readonly Line[]
}

const { library } = vectors

test(`${vectors.twoK.length} random fittings of ${library} by the two-K method, within 0.1 %`, () => {
  expect(vectors.twoK.length).toBeGreaterThanOrEqual(1000)
  let worst = 0
  for (const [fitting, bore, reynolds, loss] of vectors.twoK)
    worst = Math.max(worst, Math.abs(twoKLoss(FITTINGS[fitting], reynolds, bore) / loss - 1))
  expect(worst).toBeLessThan(1e-3)
})

test(`${vectors.lines.length} random lines of ${library}, pipe and fittings, within 0.1 %`, () => {
  expect(vectors.lines.length).toBeGreaterThanOrEqual(1000)
  let worst = 0
  let laminar = 0
  for (const row of vectors.lines) {
    const [flow, viscosity, density, length, bore, roughness, fittings, expected] = row
    const line = { length, bore, roughness, fittings, method: 'two-k', fixedLoss: 0 } as const
    const { drop, reynolds } = lineFlow(line, flow, viscosity, density)
    worst = Math.max(worst, Math.abs(drop / expected - 1))
    if (reynolds < 2000) laminar += 1
  }
  expect(worst).toBeLessThan(1e-3)
  // Both regimes are there in numbers.
  expect(laminar).toBeGreaterThan(300)
  expect(vectors.lines.length - laminar).toBeGreaterThan(300)
})

/** Bores of schedule 40 and the factors that the handbook prints for them, 2009 edition, from memory. */
test.each([
  [15.76, 0.026],
  [20.96, 0.024],
  [26.64, 0.022],
  [40.94, 0.02],
  [52.48, 0.019],
])('factor at full turbulence for %f mm rounds to the printed %f', (millimetres, printed) => {
  expect(Math.abs(fullyRoughFactor(millimetres / 1000) - printed)).toBeLessThanOrEqual(0.0006)
})

test('Crane TP-410, example 7-3: a valve of L/D 150 at a factor of 0.0165 has K 2.475', () => {
  const bore = 0.0972
  const loss = lossOfFittings({ angleValves: 1 }, 'equivalent-length', 1e6, bore)
  expect(loss).toBeCloseTo(150 * fullyRoughFactor(bore), 12)
  expect(Math.abs(loss / 2.475 - 1)).toBeLessThan(0.01)
})
