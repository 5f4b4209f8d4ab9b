import { expect, test } from 'vitest'
import {
  airThroughHole,
  airThroughOpening,
  airVolume,
  airViscosity,
  CRITICAL_RATIO,
} from '../../../calculators/hydraulics/air-flow.ts'
import { narrowGap, roundHole } from '../../../calculators/hydraulics/orifice-small.ts'
import { airSolubility, gasGrown, gasReleased, liquidShare } from '../../../calculators/hydraulics/gas.ts'
import { distillateVapourPressure, standardAtmosphere } from '../../../calculators/hydraulics/vapour.ts'

const PSI = 6894.757293168361
const INCH = 0.0254
const CUBIC_FOOT = 0.3048 ** 3
const fahrenheit = (value: number) => ((value + 459.67) * 5) / 9

/** Ten per cent dissolved, and five per cent carried, alone and together: liquid share at a vacuum in inHg. */
const hicks: readonly (readonly [vacuum: number, dissolved: number, carried: number, printed: number])[] = [
  [5, 0.1, 0, 97.5],
  [10, 0.1, 0, 95],
  [15, 0.1, 0, 90.5],
  [20, 0.1, 0, 83],
  [25, 0.1, 0, 66],
  [5, 0, 0.01, 99],
  [10, 0, 0.01, 98.5],
  [15, 0, 0.01, 98],
  [20, 0, 0.01, 97],
  [25, 0, 0.01, 94],
  [15, 0, 0.05, 90.5],
  [20, 0, 0.05, 86],
  [25, 0, 0.05, 75.5],
  [20, 0.1, 0.05, 74],
  [25, 0.1, 0.05, 55],
]

test.each(hicks)(
  'rotary pump at %f inHg, %f dissolved, %f carried: %f %% liquid in table 3, within a point',
  (vacuum, dissolved, carried, printed) => {
    const [first, pressure] = [29.92, 29.92 - vacuum]
    const gas = gasReleased(dissolved, first, pressure) + gasGrown(carried, first, pressure)
    expect(Math.abs(100 * liquidShare(gas) - printed)).toBeLessThan(1)
  },
)

/** Rows of the sheet: gauge pressure [psi], diameter [in], free air [ft³/min]; 70 °F is taken, coefficient 1. */
const orifices: readonly (readonly [number, number, number])[] = [
  [1, 1 / 64, 0.028],
  [1, 1 / 16, 0.45],
  [2, 1 / 16, 0.633],
  [3, 1 / 8, 3.1],
  [5, 1 / 4, 15.9],
  [7, 1, 300],
  [9, 1 / 2, 84.7],
  [12, 3 / 8, 54.6],
  [15, 1 / 16, 1.68],
  [20, 1 / 8, 7.86],
  [50, 1 / 4, 58.6],
  [100, 1 / 16, 6.49],
  [125, 1, 2023],
]

test.each(orifices)('air at %f psi through %f in: %f cubic feet a minute', (gauge, diameter, printed) => {
  const [atmosphere, temperature] = [14.7 * PSI, fahrenheit(70)]
  const area = (Math.PI / 4) * (diameter * INCH) ** 2
  const mass = airThroughHole(area, 1, atmosphere + gauge * PSI, atmosphere, temperature)
  const free = (airVolume(mass, atmosphere, temperature) / CUBIC_FOOT) * 60
  // One part in a hundred, or half of the last digit printed where that is more.
  expect(Math.abs(free - printed)).toBeLessThan(Math.max(0.01 * printed, 0.0005))
})

test('air is choked from the critical ratio of 0.528 on', () => {
  expect(CRITICAL_RATIO).toBeCloseTo(0.52828, 5)
  const at = (ratio: number) => airThroughHole(1e-6, 0.62, 1e5, ratio * 1e5, 293.15)
  expect(at(0.1)).toBe(at(0.5))
  expect(at(0.6)).toBeLessThan(at(0.5))
  expect(at(1)).toBe(0)
})

/** Vapour pressures of No. 2 distillate by the table, from memory, two figures: °F and psi. */
test.each([
  [40, 0.0031],
  [50, 0.0045],
  [60, 0.0065],
  [70, 0.009],
  [80, 0.012],
  [90, 0.016],
  [100, 0.022],
])('vapour pressure at %f °F is %f psi', (degrees, psi) => {
  expect(Math.abs(distillateVapourPressure(fahrenheit(degrees)) / (psi * PSI) - 1)).toBeLessThan(0.055)
})

/** Values of the standard atmosphere as public copies print them. */
test.each([
  [0, 101_325],
  [500, 95_461],
  [1000, 89_875],
  [2000, 79_495],
])('standard atmosphere at %f m is %f Pa', (height, pressure) => {
  expect(Math.abs(standardAtmosphere(height) / pressure - 1)).toBeLessThan(2e-4)
})

/** Arithmetic of the solubility equation, worked apart from this code; no printed value was read. */
test.each([
  [15, 0.1122],
  [40, 0.1289],
  [60, 0.1419],
])('air in fuel of 845 kg/m³ at %f °C: Ostwald coefficient %f', (degrees, expected) => {
  expect(airSolubility(degrees + 273.15, 845)).toBeCloseTo(expected, 4)
})

test('air in a fine crack creeps, in a hole it does not', () => {
  const crack = narrowGap(5e-6, 0.01, 1.5e-3)
  const [before, behind, temperature] = [101_325, 91_325, 293.15]
  const { mass, viscousShare } = airThroughOpening(crack, 0.62, before, behind, temperature)
  const mean = (before + behind) / 2 / (287.05 * temperature)
  const creeping = ((before - behind) * mean) / (crack.resistance * airViscosity(temperature))
  expect(mass / creeping).toBeCloseTo(1, 2)
  expect(viscousShare).toBeGreaterThan(0.99)
  expect(
    airThroughOpening(roundHole(2e-3, 1e-3), 0.62, before, behind, temperature).viscousShare,
  ).toBeLessThan(0.02)
})

test('viscosity of air at 15 °C is 17.9 µPa·s, as the standard atmosphere has it (from memory)', () => {
  expect(airViscosity(288.15) * 1e6).toBeCloseTo(17.894, 2)
})
