import { describe, expect, test } from 'vitest'
import {
  englerByUbbelohde,
  englerDegrees,
  redwoodSeconds,
  viscosityFromEngler,
  viscosityFromRedwood,
} from '../../../calculators/fuel/engler-redwood.ts'
import {
  FUROL_TEMPERATURES,
  HUNDRED_FAHRENHEIT,
  sayboltFurol,
  sayboltUniversal,
} from '../../../calculators/fuel/saybolt.ts'

const mm2 = (value: number) => value * 1e-6
const off = (got: number, wanted: number) => Math.abs(got / wanted - 1)
const at210F = FUROL_TEMPERATURES.hot

// The table of the Hydraulic Institute, as a public library of code reprints it (seen): mm²/s, Saybolt Universal,
// Redwood No. 1, Engler.
const table = [
  [7.4, 50, 44.3, 1.58],
  [10.3, 60, 52.3, 1.88],
  [13.1, 70, 60.9, 2.17],
  [15.7, 80, 69.2, 2.45],
  [20.6, 100, 85.6, 3.02],
  [32.1, 150, 128, 4.48],
  [43.2, 200, 170, 5.92],
  [54, 250, 212, 7.35],
  [65, 300, 254, 8.79],
  [110, 500, 423, 14.6],
  [220, 1000, 896, 29.2],
  [440, 2000, 1690, 58.4],
] as const

describe('the table of the Hydraulic Institute', () => {
  test.each(table)('%f mm²/s: %f SUS, %f s Redwood, %f °E', (viscosity, universal, redwood, engler) => {
    // Up to 75 mm²/s the table keeps to the standard; above, it rounds its factor from 4.632 to 4.545.
    const allowed = viscosity < 75 ? 0.007 : 0.02
    expect(off(sayboltUniversal(mm2(viscosity), HUNDRED_FAHRENHEIT), universal)).toBeLessThan(allowed)
    // Two sources of the same scale: as far as this they differ, and the calculator says so.
    expect(off(redwoodSeconds(mm2(viscosity)), redwood)).toBeLessThan(0.056)
    expect(off(englerDegrees(mm2(viscosity)), engler)).toBeLessThan(0.035)
  })

  // Furol seconds of the same table, which does not say for which temperature they stand.
  test.each([
    [54, 28],
    [65, 32.5],
    [110, 51.6],
    [220, 100.7],
    [440, 200],
  ])('%f mm²/s: %f SFS', (viscosity, furol) => {
    const got = [FUROL_TEMPERATURES.cool, at210F].map((t) => off(sayboltFurol(mm2(viscosity), t), furol))
    expect(Math.min(...got)).toBeLessThan(0.04)
  })
})

describe('ASTM D2161', () => {
  test('above the table the factor is 4.632 at 100 °F and 4.664 at 210 °F (seen)', () => {
    expect(sayboltUniversal(mm2(5000), HUNDRED_FAHRENHEIT) / 5000).toBeCloseTo(4.632, 3)
    expect(sayboltUniversal(mm2(5000), at210F) / 5000).toBeCloseTo(4.664, 2)
    expect(off(sayboltUniversal(mm2(5000), at210F) / 5000, 4.664)).toBeLessThan(2e-4)
  })

  test('TP-410 example 7-17: 14.3 mm²/s is about 75 SUS (seen)', () => {
    expect(sayboltUniversal(mm2(14.3), HUNDRED_FAHRENHEIT)).toBeCloseTo(75, -0.3)
  })

  // Arithmetic, from the equations as remembered: a check of the sum, not of the equations.
  test.each([
    [50, 26.03, 25.17],
    [100, 48.63, 48.38],
    [380, 179.4, 182.1],
  ])('%f mm²/s: %f SFS at 122 °F, %f at 210 °F (derived)', (viscosity, cool, hot) => {
    expect(off(sayboltFurol(mm2(viscosity), FUROL_TEMPERATURES.cool), cool)).toBeLessThan(3e-4)
    expect(off(sayboltFurol(mm2(viscosity), at210F), hot)).toBeLessThan(3e-4)
  })
})

test('the older equation of Ubbelohde: more degrees for one viscosity, by 3 to 7 % from 15 mm²/s on, and none below', () => {
  for (const viscosity of [15.01, ...table.slice(4).map(([one]) => one)]) {
    const more = (englerByUbbelohde(mm2(viscosity)) ?? Number.NaN) / englerDegrees(mm2(viscosity)) - 1
    expect(more).toBeGreaterThan(0.03)
    expect(more).toBeLessThan(0.07)
  }
  expect(englerByUbbelohde(mm2(14.99))).toBeUndefined()
})

test('there and back: 1e-9, also where two equations meet', () => {
  for (let viscosity = 6; viscosity < 1e4; viscosity *= 1.01) {
    expect(off(viscosityFromEngler(englerDegrees(mm2(viscosity))), mm2(viscosity))).toBeLessThan(1e-9)
    expect(off(viscosityFromRedwood(redwoodSeconds(mm2(viscosity))), mm2(viscosity))).toBeLessThan(1e-9)
  }
})
