import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { volumeFactor1980 } from '../../../calculators/fuel/density-1980.ts'
import { GROUPS_1980, groupsOf } from '../../../calculators/fuel/density-groups.ts'
import {
  lineThroughPoint,
  lineThroughPoints,
  viscosityOnLine,
  type WaltherLine,
} from '../../../calculators/fuel/viscosity-walther.ts'
import { fuel, setPoint, tolerance } from './plant-and-fuels.ts'

// What the circuit articles say in words about the plant and its fuels, so that a changed set point or fuel
// cannot leave an article behind. The test's name quotes the words.

const summer = fuel('summer-gas-oil')
const winter = fuel('winter-gas-oil')
const heavy = fuel('heavy-distillate')

const celsius = (value: number) => value + 273.15
const squareMillimetre = 1e-6
const at = (line: WaltherLine, degrees: number) => viscosityOnLine(line, celsius(degrees)) / squareMillimetre
const atmosphere = 101_325
const gravity = 9.80665
const [fuelOils] = groupsOf('fuelOils', GROUPS_1980)
if (!fuelOils) throw new Error('the tables of 1980 have no row for fuel oils')

/** Volume at 15 °C over volume at a temperature, by the tables of 1980. */
const factor = (degrees: number) => volumeFactor1980(summer.density, celsius(degrees), fuelOils)

describe('the way of the fuel', () => {
  const delivery = setPoint('pump-delivery')
  const burnt = setPoint('fuel-burnt-at-full-load')

  test('«a little over four times what is burnt»', () => {
    expect(delivery / burnt).toBeGreaterThan(4)
    expect(delivery / burnt).toBeLessThan(4.5)
  })

  test('«rather more than three quarters of it comes back»', () => {
    expect(1 - burnt / delivery).toBeGreaterThan(0.75)
    expect(1 - burnt / delivery).toBeLessThan(0.8)
  })

  test('«at its lowest delivery the pump sweeps the circuit once in a minute»', () => {
    const sweep = setPoint('circuit-volume') / (delivery - tolerance('pump-delivery'))
    expect(sweep).toBeGreaterThan(50)
    expect(sweep).toBeLessThanOrEqual(60)
  })

  test('«gas that passes the valve expands to more than twice its volume»', () => {
    const before = atmosphere + setPoint('return-valve-cracking') - tolerance('return-valve-cracking')
    expect(before / (atmosphere + setPoint('return-line-pressure'))).toBeGreaterThan(2)
  })

  test('the four pressures stand apart, tolerances included', () => {
    const low = (id: string) => setPoint(id) - tolerance(id)
    const high = (id: string) => setPoint(id) + tolerance(id)
    expect(low('pump-relief-cracking')).toBeGreaterThan(setPoint('bypass-valve-full-flow'))
    expect(low('bypass-valve-cracking')).toBeGreaterThan(high('header-pressure'))
    expect(low('header-pressure')).toBeGreaterThan(high('return-valve-cracking'))
  })
})

describe('viscosity and temperature', () => {
  test.each([
    ['summer gas oil', summer],
    ['winter gas oil', winter],
    ['heavy distillate', heavy],
  ])(
    'the middle pair of %s lies on the line of the outer ones, to the digits written',
    (_, { line, middle }) => {
      const share = viscosityOnLine(line, middle.temperature) / middle.kinematicViscosity
      expect(share).toBeCloseTo(1, 2)
      expect(line.slope).toBeGreaterThan(3.9)
      expect(line.slope).toBeLessThan(4.1)
    },
  )

  test('«more than a third from 20 to 40 °C, less than a third from 40 to 60 °C»', () => {
    expect(at(summer.line, 40) / at(summer.line, 20)).toBeLessThan(2 / 3)
    expect(at(summer.line, 60) / at(summer.line, 40)).toBeGreaterThan(2 / 3)
  })

  test('«for a gas oil the dynamic figure is smaller by about a sixth»', () => {
    expect(1 - (summer.density * factor(30)) / 1000).toBeCloseTo(1 / 6, 1)
  })

  test.each([
    ['«pairs at 20 and 60 °C: up to two per cent»', 20, 60, 1, 2],
    ['«pairs at 40 and 50 °C: seven to eight and a half»', 40, 50, 7, 8.5],
  ])('one value wrong by one per cent, the oil at 0 °C, %s', (_, lower, upper, least, most) => {
    const pair = (degrees: number, share: number) => ({
      temperature: celsius(degrees),
      kinematicViscosity: at(summer.line, degrees) * share * squareMillimetre,
    })
    const shares: [number, number][] = [
      [1.01, 1],
      [0.99, 1],
      [1, 1.01],
      [1, 0.99],
    ]
    const errors = shares.map(([first, second]) => {
      const line = lineThroughPoints(pair(lower, first), pair(upper, second))
      return Math.round(200 * Math.abs(at(line, 0) / at(summer.line, 0) - 1)) / 2
    })
    expect(Math.min(...errors)).toBe(least)
    expect(Math.max(...errors)).toBe(most)
  })

  test('«a slope wrong by 0.2: at 20 °C under three per cent, at 0 °C about seven»', () => {
    const wrong = lineThroughPoint(summer.middle, summer.line.slope + 0.2)
    expect(at(wrong, 20) / at(summer.line, 20) - 1).toBeLessThan(0.03)
    expect(at(wrong, 0) / at(summer.line, 0) - 1).toBeCloseTo(0.07, 2)
  })

  test('«equal parts of winter gas oil and heavy distillate: about 4.1 at 40 °C; the mean about 6»', () => {
    const doubleLogarithm = (line: WaltherLine) => line.intercept - line.slope * Math.log10(celsius(40))
    const blend = { intercept: (doubleLogarithm(winter.line) + doubleLogarithm(heavy.line)) / 2, slope: 0 }
    expect(at(blend, 40)).toBeCloseTo(4.1, 1)
    expect((at(winter.line, 40) + at(heavy.line, 40)) / 2).toBeCloseTo(6, 0)
  })

  test('the window of the PQ-12 and the fuels that miss it', () => {
    const window = [setPoint('fuel-temperature-low'), setPoint('fuel-temperature-high')] as const
    expect(viscosityOnLine(summer.line, window[0])).toBeLessThan(5 * squareMillimetre)
    expect(viscosityOnLine(summer.line, window[1])).toBeGreaterThan(2 * squareMillimetre)
    expect(viscosityOnLine(winter.line, window[1])).toBeLessThan(2 * squareMillimetre)
    expect(at(winter.line, 43)).toBeCloseTo(2, 1)
    expect(at(heavy.line, 66)).toBeCloseTo(5, 1)
    expect(viscosityOnLine(heavy.line, window[1])).toBeGreaterThan(5 * squareMillimetre)
  })

  test('«a twelfth of a per cent for each degree»; «filled at 5 °C, warmed to 30 °C: two per cent»', () => {
    expect((factor(15) / factor(16) - 1) * 100).toBeCloseTo(1 / 12, 2)
    expect(factor(5) / factor(30) - 1).toBeCloseTo(0.02, 2)
  })
})

describe('filters and valves', () => {
  test('the table of beta ratios: stopped and passed of a thousand', () => {
    const article = readFileSync('content/circuit/filtration-and-pressure-drop.mdx', 'utf8')
    const rows = [...article.matchAll(/^\| (\d+) +\| (\d+) +\| (\d+) +\|$/gm)].map((row) =>
      row.slice(1).map(Number),
    )
    expect(rows).toHaveLength(6)
    for (const [beta = 0, stopped, passed] of rows)
      expect([stopped, passed]).toEqual([Math.round(1000 * (1 - 1 / beta)), Math.round(1000 / beta)])
  })

  const header = setPoint('header-pressure')
  const change = setPoint('secondary-drop-change')
  const cracking = setPoint('bypass-valve-cracking')

  test('the reference viscosity is the summer gas oil close to 40 °C', () => {
    expect(viscosityOnLine(summer.line, celsius(40))).toBeCloseTo(setPoint('reference-viscosity'), 7)
  })

  test('«the bypass valve has just a little in hand before it cracks», but less than the tolerances', () => {
    expect(header + change).toBeLessThan(cracking - tolerance('bypass-valve-cracking'))
    const worst = header + tolerance('header-pressure') + change
    expect(worst).toBeGreaterThan(cracking - tolerance('bypass-valve-cracking'))
  })

  test('«worth about half of what the gauge itself may be wrong»', () => {
    const column = summer.density * gravity * setPoint('gauge-above-valve')
    expect(column / setPoint('header-gauge-accuracy')).toBeCloseTo(0.5, 1)
  })

  test('«its accuracy is as wide as the tolerance of the back-pressure valve»', () => {
    expect(setPoint('header-gauge-accuracy')).toBe(tolerance('return-valve-cracking'))
  })
})
