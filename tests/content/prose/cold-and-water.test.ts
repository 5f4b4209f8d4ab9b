import { describe, expect, test } from 'vitest'
import { hydrogenToCarbon } from '../../../calculators/heat/petroleum-heat.ts'
import { waterMassFraction, waterMoleFraction } from '../../../calculators/cleanliness/water.ts'
import { plainStartOf } from './start-of.ts'
import { setPoint } from './plant-and-fuels.ts'

// What the articles on cold, dirt and water say in words about their calculators. The test's name quotes the words.

const minutes = 60
const hours = 3600

describe('cold weather and wax', () => {
  const cold = 'cold-weather-and-wax'
  const time = async (body: 'tank' | 'line', other = {}) =>
    Number((await plainStartOf(cold, 'time-to-cool', { body, ...other }))['time'])

  test('«running, it loses less than half a degree»; «standing, the line is lost»', async () => {
    const { strainerTemperature, standing } = await plainStartOf(cold, 'cold-margin')
    expect(278.15 - Number(strainerTemperature)).toBeLessThan(0.5)
    expect(standing).toBe('plugs')
  })

  test('«a bare line in two to three minutes»; «in still air about five times as long»; «insulated some forty minutes»', async () => {
    const bare = await time('line')
    expect(bare).toBeGreaterThan(2 * minutes)
    expect(bare).toBeLessThan(3 * minutes)
    expect((await time('line', { wind: 0 })) / bare).toBeCloseTo(5, 0)
    expect((await time('line', { insulation: 0.02 })) / minutes).toBeCloseTo(41.5, 0)
  })

  test('«the full tank overnight»; «in still air about twice as long»; «half full in four fifths of the time»', async () => {
    const full = await time('tank')
    expect(full).toBeLessThan(10 * hours)
    expect((await time('tank', { wind: 0 })) / full).toBeCloseTo(2.1, 1)
    const bottom = 1.2 * 2.8
    const halfWetted = bottom + (setPoint('tank-wetted-area') - bottom) / 2
    const half = await time('tank', { volume: setPoint('tank-volume') / 2, area: halfWetted })
    expect(half / full).toBeCloseTo(0.8, 1)
  })

  test('«more than three quarters of the delivery come back»', () => {
    expect(1 - setPoint('fuel-burnt-at-full-load') / setPoint('pump-delivery')).toBeGreaterThan(0.75)
  })
})

describe('cleanliness', () => {
  const clean = 'cleanliness-codes-counts-and-beta'

  test('«from 22/20/17 to the Charter: β about 16 at each size»', async () => {
    const { beta4, beta6, beta14 } = await plainStartOf(clean, 'filter-target')
    for (const beta of [beta4, beta6, beta14]) expect(Math.round(Number(beta))).toBe(16)
  })

  test('«fewer than about three turns»; «with seven a filter that stops less than half»', async () => {
    const { leastTurns, beta14 } = await plainStartOf(clean, 'filter-target', { passes: 'again', turns: 7 })
    expect(Number(leastTurns)).toBeCloseTo(2.8, 1)
    expect(1 - 1 / Number(beta14)).toBeLessThan(0.5)
  })

  test('«a perfect filter takes out a little less than two thirds in a turn»', () => {
    expect(1 - Math.exp(-1)).toBeLessThan(2 / 3)
    expect(1 - Math.exp(-1)).toBeGreaterThan(0.6)
  })

  test('«just above the interval»; «a delivery at the limit of EN 590 in two days»', async () => {
    const { life } = await plainStartOf(clean, 'beta-ratio')
    const interval = setPoint('secondary-interval')
    expect(Number(life)).toBeGreaterThan(interval)
    expect(Number(life)).toBeLessThan(1.1 * interval)
    const atLimit = await plainStartOf(clean, 'beta-ratio', { dirt: 24e-6 * 845 })
    expect(Number(atLimit['life']) / (24 * hours)).toBeCloseTo(2.2, 1)
  })

  test('«more than twice that of two new filters, and yet far below the limit»', async () => {
    const { ratioToClean, drop, verdict } = await plainStartOf(clean, 'filters-in-parallel')
    expect(Number(ratioToClean)).toBeGreaterThan(2)
    expect(Number(drop)).toBeLessThan(0.65 * setPoint('secondary-drop-change'))
    expect(verdict).toBe('below')
  })
})

describe('water', () => {
  const water = 'water-and-how-it-settles'
  const soluble = (celsius: number) =>
    1e6 * waterMassFraction(waterMoleFraction(hydrogenToCarbon(845), celsius + 273.15), 215)

  test('«about 70 at 20 °C, a little more than a third at freezing, more than twice at 40 °C»', () => {
    expect(soluble(20)).toBeCloseTo(71, 0)
    expect(soluble(0) / soluble(20)).toBeCloseTo(0.38, 2)
    expect(soluble(40) / soluble(20)).toBeGreaterThan(2)
    expect(200 / soluble(0)).toBeGreaterThan(5)
  })

  test('«a tank of clear fuel far within the limit; in the frost half of its water comes out; 65 mL»', async () => {
    const { state, verdict, freeCold, freeVolume } = await plainStartOf(water, 'free-water')
    expect([state, verdict]).toEqual(['whenCold', 'within'])
    expect(Number(freeCold) / 40e-6).toBeCloseTo(0.5, 1)
    expect(Number(freeVolume) / 1e-6).toBeGreaterThan(64)
    expect(Number(freeVolume) / 1e-6).toBeLessThan(66)
  })

  test('«drops that an eye can just see are down within the night; a tenth of that takes nearly a month»', async () => {
    expect((await plainStartOf(water, 'settling-time'))['verdict']).toBe('settled')
    const { time } = await plainStartOf(water, 'settling-time', { diameter: 5e-6 })
    expect(Number(time) / (24 * hours)).toBeGreaterThan(24)
    expect(Number(time) / (24 * hours)).toBeLessThan(31)
  })
})
