import { describe, expect, test } from 'vitest'
import {
  orificeDrop,
  orificeFlow,
  plateFlow,
  reynoldsOn,
} from '../../../calculators/hydraulics/orifice-flow.ts'
import { plateCoefficient, type Tappings } from '../../../calculators/hydraulics/orifice-plate.ts'
import {
  restrictorCoefficient,
  restrictorDrop,
  RESTRICTORS,
} from '../../../calculators/hydraulics/restrictor.ts'
import vectors from './orifices.json' with { type: 'json' }

const TAPPINGS: readonly Tappings[] = ['corner', 'flange', 'd-and-half-d']
const GALLON = 0.003785411784
const off = (value: number, expected: number) => Math.abs(value / expected - 1)

const { library } = vectors

test(`${vectors.cases.length} random plates of ${library} within ISO 5167-2, within 0.1 %`, () => {
  expect(vectors.cases.length).toBeGreaterThanOrEqual(1000)
  let worst = 0
  for (const [
    bore = 0,
    pipe = 0,
    tap = 0,
    density = 0,
    viscosity = 0,
    flow = 0,
    c = 0,
    drop = 0,
  ] of vectors.cases) {
    const plate = { bore, pipe, tappings: TAPPINGS[tap] ?? 'corner' }
    const coefficient = plateCoefficient(plate, reynoldsOn(flow, pipe, viscosity))
    worst = Math.max(worst, off(coefficient, c))
    worst = Math.max(worst, off(orificeDrop(coefficient, bore, pipe, flow, density), drop))
    worst = Math.max(worst, off(plateFlow(plate, drop, density, viscosity), flow))
  }
  expect(worst).toBeLessThan(1e-3)
})

test.each([
  [0.5, 1e4, 0.61858, 0.61764],
  [0.5, 1e5, 0.60687, 0.60618],
  [0.5, 1e6, 0.60378, 0.60313],
  [0.6, 1e5, 0.61034, 0.61178],
  [0.7, 1e5, 0.60995, 0.6169],
])('C of β %f at Re %f, corner and D–D/2 tappings (arithmetic)', (ratio, reynolds, corner, far) => {
  const plate = { bore: 0.1 * ratio, pipe: 0.1 }
  expect(plateCoefficient({ ...plate, tappings: 'corner' }, reynolds)).toBeCloseTo(corner, 4)
  expect(plateCoefficient({ ...plate, tappings: 'd-and-half-d' }, reynolds)).toBeCloseTo(far, 4)
})

describe('worked examples of Crane TP-410', () => {
  test('7-23: 2 in bore in 4 in pipe, 4.4 in of mercury under water: 106 gpm', () => {
    const drop = 4.4 * 0.0254 * (13_560 - 999) * 9.80665
    const plate = { bore: 2 * 0.0254, pipe: 4.026 * 0.0254, tappings: 'corner' } as const
    expect(off(plateFlow(plate, drop, 999, 1.12e-6) / (GALLON / 60), 106)).toBeLessThan(0.005)
  })

  test('7-29: 50 mm bore in 73.66 mm, 17 kPa: 478 L/min by the book’s chart of coefficients', () => {
    const plate = { bore: 0.05, pipe: 0.07366, tappings: 'corner' } as const
    expect(off(plateFlow(plate, 17e3, 999, 1.14e-6) * 60_000, 478)).toBeLessThan(0.035)
  })
})

test('a restrictor there and back; laminar flow grows with the drop, turbulent with its root', () => {
  for (const { middle } of Object.values(RESTRICTORS))
    for (let drop = 1; drop < 1e7; drop *= 10) {
      const flowAt = (p: number) =>
        orificeFlow(restrictorCoefficient(middle, 0.003, p, 845, 1e-4), 0.003, 0.016, p, 845)
      expect(off(restrictorDrop(middle, 0.003, 0.016, flowAt(drop), 845, 1e-4), drop)).toBeLessThan(1e-9)
    }
  const sharp = RESTRICTORS.sharp.middle
  const slope = (drop: number) =>
    Math.log(
      orificeFlow(
        restrictorCoefficient(sharp, 0.003, 1.01 * drop, 845, 3e-6),
        0.003,
        0.016,
        1.01 * drop,
        845,
      ) / orificeFlow(restrictorCoefficient(sharp, 0.003, drop, 845, 3e-6), 0.003, 0.016, drop, 845),
    ) / Math.log(1.01)
  expect(slope(1e-3)).toBeCloseTo(1, 3)
  expect(slope(1e6)).toBeCloseTo(0.5, 3)
})
