import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { describe, expect, test } from 'vitest'
import energyContent from '../../../calculators/catalogue/energy-content/index.ts'
import filterLife from '../../../calculators/catalogue/filter-life/index.ts'
import injectionQuantity from '../../../calculators/catalogue/injection-quantity/index.ts'
import injectorCooling from '../../../calculators/catalogue/injector-cooling/index.ts'
import rangeAndHours from '../../../calculators/catalogue/range-and-hours/index.ts'
import readingTrend from '../../../calculators/catalogue/reading-trend/index.ts'
import viscosityOfBlend from '../../../calculators/catalogue/viscosity-of-blend/index.ts'
import { run } from '../../../calculators/calculator/run.ts'
import type { Calculator, InputValue } from '../../../calculators/calculator/types.ts'
import { tagsOf } from '../../../components/content/mdx-pages.ts'
import { fuel, setPoint, tolerance } from './plant-and-fuels.ts'
import { startOf } from './start-of.ts'

// What the articles on surplus flow, metering, gauges, instruments and service say in words, and what their
// drawings show to scale. The test's name quotes the words.

const minute = 60
const hour = 3600
const gravity = 9.80665
const litre = 1e-3
const circuit = parse(readFileSync('content/circuits/pq-12.yaml', 'utf8')) as {
  connections: { pipe?: { id: string; bore: string } }[]
  elements: { id: string; model?: { range?: string } }[]
}

/** Bore of a pipe of the PQ-12 [m]. */
function bore(id: string): number {
  const written = circuit.connections.find(({ pipe }) => pipe?.id === id)?.pipe?.bore
  if (!written?.endsWith(' mm')) throw new Error(`no bore in mm at ${id}`)
  return Number.parseFloat(written) / 1000
}

const speedIn = (flow: number, width: number): number => flow / ((Math.PI / 4) * width ** 2)

function outcome(calculator: Calculator, given: Record<string, InputValue>): Record<string, number | string> {
  const defaults = Object.fromEntries(
    Object.entries(calculator.inputs).map(([id, input]): [string, InputValue] => [id, input.default]),
  )
  const result = run(calculator, { ...defaults, ...given })
  if ('refusal' in result) throw new Error(result.refusal.reason)
  return Object.fromEntries(Object.entries(result.outputs).map(([id, { value }]) => [id, value]))
}

const rects = (article: string) =>
  tagsOf(readFileSync(`content/circuit/${article}.mdx`, 'utf8'))
    .filter(({ name, attributes }) => name === 'rect' && attributes['class'] !== undefined)
    .map(({ attributes }) => ({ width: Number(attributes['width']), height: Number(attributes['height']) }))

describe('why the circuit moves several times what is burnt', () => {
  const delivery = setPoint('pump-delivery')
  const full = setPoint('fuel-burnt-at-full-load')
  const idle = setPoint('fuel-burnt-at-idle')

  test('«a little over four; at idle seventy-five»', () => {
    expect(delivery / full).toBeGreaterThan(4)
    expect(delivery / full).toBeLessThan(4.5)
    expect(delivery / idle).toBeCloseTo(75, 6)
  })

  test('the widths of the bands are to scale', () => {
    const widths = rects('why-it-moves-more-than-is-burnt').map(({ height }) => height)
    const scale = 54 / delivery
    const expected = [delivery, full, delivery - full, delivery, idle, delivery - idle]
    expect(widths).toHaveLength(expected.length)
    for (const [at, flow] of expected.entries())
      expect(Math.abs((widths[at] ?? Number.NaN) - flow * scale)).toBeLessThan(0.06)
  })

  const returnHeader = (flow: number) =>
    Number(
      outcome(injectorCooling, {
        known: 'heat',
        headerFlow: flow,
        burntAtFullLoad: full,
        burntAtIdle: idle,
        inlet: setPoint('heater-set-point'),
        heatAtFullLoad: 617,
        heatAtIdle: 183,
        limit: setPoint('return-temperature-high'),
      })['outletAtFullLoad'],
    )

  test('the curve is drawn with the heat of the plant’s injectors', () => {
    expect(setPoint('injector-heat-at-full-load') / 12).toBeCloseTo(617, -0.5)
    expect(setPoint('injector-heat-at-idle') / 12).toBeCloseTo(183, -0.5)
  })

  test('«with a quarter of the delivery gone, the limit is all but reached», and below half it is far passed', () => {
    const limit = setPoint('return-temperature-high')
    expect(limit - returnHeader(0.75 * delivery)).toBeGreaterThan(0)
    expect(limit - returnHeader(0.75 * delivery)).toBeLessThan(1.5)
    expect(returnHeader(0.7 * delivery)).toBeGreaterThan(limit)
    expect(returnHeader(delivery)).toBeLessThan(limit - 5)
    expect(returnHeader(0.5 * delivery)).toBeGreaterThan(limit + 10)
  })

  test('«the fuel runs down three times as fast» as a slug of gas climbs', () => {
    const width = bore('return-pipe')
    const slug = 0.345 * Math.sqrt(gravity * width)
    expect(speedIn(setPoint('return-flow-at-full-load'), width) / slug).toBeCloseTo(3, 0)
  })

  test('«less than a ten-thousandth of the rated power»', () => {
    expect((delivery * setPoint('pump-pressure')) / setPoint('rated-power')).toBeLessThan(1e-4)
  })
})

describe('header, injectors, rack and governor', () => {
  /** Four-stroke: one injection in two turns. */
  const strokeTime = (speed: string) => (2 * 2 * Math.PI) / setPoint(speed)
  const stroke = (burnt: string, speed: string) => (setPoint(burnt) * strokeTime(speed)) / 12
  const idle = stroke('fuel-burnt-at-idle', 'idle-speed')
  const full = stroke('fuel-burnt-at-full-load', 'rated-speed')

  test('the table: 0.4 s and 0.133 s, 0.2 mL and 1.17 mL', () => {
    expect(strokeTime('idle-speed')).toBeCloseTo(0.4, 6)
    expect(strokeTime('rated-speed')).toBeCloseTo(0.133, 3)
    expect(idle * 1e6).toBeCloseTo(0.2, 6)
    expect(full * 1e6).toBeCloseTo(1.17, 2)
  })

  test('the heights of the land are to scale, «about six times as high» at full load', () => {
    expect(full / idle).toBeCloseTo(6, 0)
    const text = readFileSync('content/circuit/header-injectors-rack-and-governor.mdx', 'utf8')
    const heights = [...text.matchAll(/class="strong" d="M[\d.]+ 194 V([\d.]+)"/g)].map(
      ([, end]) => 194 - Number(end),
    )
    expect(heights).toHaveLength(2)
    expect((heights[0] ?? 0) / (heights[1] ?? 1)).toBeCloseTo(idle / full, 2)
  })

  test('«a millimetre: a full-load stroke by about a fourteenth, an idle stroke by more than a third»', () => {
    const millilitre = 1e-6
    const at = (rack: number) =>
      Number(
        outcome(injectionQuantity, {
          form: 'rack',
          rack,
          firstRack: 0.007,
          firstQuantity: 0.17 * millilitre,
          secondRack: 0.019,
          secondQuantity: 1.2 * millilitre,
          speed: setPoint('idle-speed'),
        })['quantity'],
      )
    const step = at(0.01) - at(0.009)
    expect(full / step).toBeCloseTo(14, -0.5)
    expect(step / idle).toBeGreaterThan(1 / 3)
    expect(at(0.0074)).toBeCloseTo(idle, 7)
  })
})

describe('gauges and how they mislead', () => {
  test('«all the speed of the fuel is worth less than a fortieth of what the header gauge may be wrong»', () => {
    const speed = speedIn(setPoint('pump-delivery'), bore('header-pipe'))
    const worth = (fuel('summer-gas-oil').density * speed ** 2) / 2
    expect(worth).toBeLessThan(setPoint('header-gauge-accuracy') / 40)
  })

  test('«in the narrower suction pipe it is about a third of what the vacuum gauge may be wrong»', () => {
    const speed = speedIn(setPoint('pump-delivery'), setPoint('suction-bore'))
    const worth = (fuel('summer-gas-oil').density * speed ** 2) / 2
    expect(worth / setPoint('vacuum-gauge-accuracy')).toBeCloseTo(1 / 3, 1)
  })

  test('«misread by about a hundredth of the range: more than half of what the gauge may be wrong»', () => {
    const range = Number.parseFloat(
      circuit.elements.find(({ id }) => id === 'header-gauge')?.model?.range ?? '',
    )
    const share = (3 * Math.tan(Math.PI / 6)) / 180
    expect(share).toBeCloseTo(0.01, 3)
    const error = share * range * 1e3
    expect(error / setPoint('header-gauge-accuracy')).toBeGreaterThan(0.5)
    expect(error / setPoint('header-gauge-accuracy')).toBeLessThan(0.6)
  })
})

describe('instruments, accuracy and doubt', () => {
  test('the table: distance over doubt', () => {
    const way = (from: string, to: string, doubt: string) => (setPoint(to) - setPoint(from)) / setPoint(doubt)
    const half = (id: string, doubt: string) => tolerance(id) / setPoint(doubt)
    expect([
      way('suction-vacuum-clean', 'suction-vacuum-limit', 'vacuum-gauge-accuracy'),
      way('secondary-drop-clean', 'secondary-drop-change', 'drop-gauge-accuracy'),
      way('fuel-temperature-low', 'fuel-temperature-high', 'header-thermometer-accuracy'),
      setPoint('exhaust-departure') / setPoint('exhaust-probe-accuracy'),
      half('header-pressure', 'header-gauge-accuracy'),
      half('return-valve-cracking', 'header-gauge-accuracy'),
    ]).toEqual([20, 30, 35, 7, 2.5, 1])
  })

  test('every point of the curve is the class over the share of the range', () => {
    const text = readFileSync('content/circuit/instruments-accuracy-and-doubt.mdx', 'utf8')
    const curve = /class="strong" d="M([\d. L]+)"/.exec(text)?.[1] ?? ''
    const points = curve.split(' L').map((pair) => pair.split(' ').map(Number))
    expect(points.length).toBeGreaterThan(20)
    for (const [x = 0, y = 0] of points) expect((((x - 50) / 340) * (200 - y)) / 18).toBeCloseTo(1, 1)
    const [, dot, height] = /cx="([\d.]+)" cy="([\d.]+)" r="6"/.exec(text) ?? []
    expect((Number(dot) - 50) / 340).toBeCloseTo(setPoint('header-pressure') / 600e3, 3)
    expect((200 - Number(height)) / 18).toBeCloseTo(600e3 / setPoint('header-pressure'), 1)
  })

  test('«within, and it can be told»; class 0.6 takes «little more than a fifth» off the ±', async () => {
    const article = 'instruments-accuracy-and-doubt'
    const wide = await startOf(article, 'valve-set-point-check')
    const fine = await startOf(article, 'valve-set-point-check', { gaugeAccuracy: 1.5e3 })
    expect(wide['verdict']?.value).toBe('within')
    expect(2.5e3).toBe(0.01 * 250e3)
    expect(1.5e3).toBe(0.006 * 250e3)
    const doubt = (outputs: Awaited<ReturnType<typeof startOf>>) =>
      (outputs['setting'] as { uncertainty?: number }).uncertainty ?? Number.NaN
    const saved = 1 - doubt(fine) / doubt(wide)
    expect(saved).toBeGreaterThan(0.2)
    expect(saved).toBeLessThan(0.25)
  })

  test('«to one part in eighty»; «the slip is a fourteenth, so the same doubt is a sixth of the slip»', () => {
    const seconds = setPoint('delivery-test-can') / setPoint('pump-delivery')
    const doubt = Math.hypot(0.01, 0.5 / seconds)
    expect(1 / doubt).toBeCloseTo(80, -0.5)
    const derived = (setPoint('pump-displacement') * setPoint('pump-speed')) / (2 * Math.PI)
    const slip = derived - setPoint('pump-delivery')
    expect(setPoint('pump-delivery') / slip).toBeCloseTo(14, -0.5)
    expect((doubt * setPoint('pump-delivery')) / slip).toBeCloseTo(1 / 6, 1)
    expect(doubt * setPoint('pump-delivery')).toBeLessThan(tolerance('pump-delivery') / 4)
  })

  test('a thermocouple at full load: «a little over 3 K»', () => {
    expect(0.0075 * (setPoint('exhaust-at-full-load') - 273.15)).toBeGreaterThan(3)
    expect(0.0075 * (setPoint('exhaust-at-full-load') - 273.15)).toBeLessThan(3.5)
  })
})

describe('service by hours, by fuel burnt or by condition', () => {
  const flow = (litres: number) => (litres * litre) / minute
  const shunting = [
    [0.8, 0.36, 0],
    [0.15, 1.2, 8],
    [0.05, 2.7, 15],
  ].map(([share = 0, litres = 0, speed = 0]) => ({ share, burn: flow(litres), speed: speed / 3.6 }))
  const mixed = Number(outcome(rangeAndHours, {})['burn'])
  const shunter = Number(outcome(rangeAndHours, { states: shunting })['burn'])
  const full = setPoint('fuel-burnt-at-full-load')

  test('the bars are to scale: dirt of one interval over what the elements hold', () => {
    const bars = rects('service-by-hours-fuel-or-condition').map(({ width }) => width)
    expect(bars).toHaveLength(3)
    const most = 360
    for (const [at, burn] of [full, mixed, shunter].entries()) {
      const dirt = burn * setPoint('secondary-interval') * setPoint('dirt-highest')
      const share = dirt / setPoint('secondary-dirt-held')
      expect(Math.abs((bars[at] ?? Number.NaN) / most - share)).toBeLessThan(0.001)
    }
  })

  test('«less than a tenth of full load’s»; «seven tenths empty, and the shunter’s nine tenths»', () => {
    expect(shunter / full).toBeLessThan(0.1)
    const held = (burn: number) =>
      (burn * setPoint('secondary-interval') * setPoint('dirt-highest')) / setPoint('secondary-dirt-held')
    expect(1 - held(mixed)).toBeCloseTo(0.7, 1)
    expect(1 - held(shunter)).toBeCloseTo(0.9, 1)
  })

  test('«the line meets the limit about a hundred hours before the interval ends»', () => {
    const readings = [
      [0, 12],
      [150, 16],
      [300, 20.5],
      [450, 28.5],
      [600, 37.5],
    ].map(([hours = 0, drop = 0]) => ({
      hours: hours * hour,
      drop: drop * 1e3,
      flow: flow(27),
      viscosity: 3e-6,
    }))
    const life = outcome(filterLife, {
      readings,
      referenceFlow: setPoint('pump-delivery'),
      referenceViscosity: setPoint('reference-viscosity'),
      cleanDrop: setPoint('primary-drop-clean'),
      changeOut: setPoint('primary-drop-change'),
    })
    const early = setPoint('primary-interval') / hour - (600 + Number(life['likely']) / hour)
    expect(early).toBeGreaterThan(80)
    expect(early).toBeLessThan(120)
    expect(Number(life['earliest'])).toBeLessThan(Number(life['likely']))
  })

  test('«each single fall lies within the test’s doubt, and the row does not»', () => {
    const litres = [27.1, 26.8, 26.7, 26.3, 26.2, 25.9]
    const apart = setPoint('pump-test-interval')
    const trend = outcome(readingTrend, {
      readings: litres.map((reading, at) => ({ hours: at * apart, reading })),
      side: 'minimum',
      limit: 25,
      accuracy: 0.3,
      lookAhead: 16000 * hour,
    })
    expect(Number(trend['chance'])).toBeLessThan(0.01)
    expect(Number(trend['likely'])).toBeGreaterThan(3 * apart)
    const falls = litres.slice(1).map((reading, at) => (litres[at] ?? Number.NaN) - reading)
    expect(Math.max(...falls)).toBeLessThan(Math.SQRT2 * 0.0125 * 27)
    expect(25 * (litre / minute)).toBeCloseTo(setPoint('pump-delivery') - tolerance('pump-delivery'), 12)
  })

  test('«each interval is a whole number of times the one above it»', () => {
    const intervals = [
      'strainer',
      'primary',
      'secondary',
      'gauge',
      'pump-test',
      'valve',
      'injector',
      'tank',
    ].map((part) => setPoint(`${part}-interval`))
    const ratios = intervals.slice(1).map((interval, at) => interval / (intervals[at] ?? Number.NaN))
    expect(ratios.map(Math.round)).toEqual(ratios)
    expect(Math.min(...ratios)).toBeGreaterThanOrEqual(1)
  })
})

describe('drawings of older articles', () => {
  test('fuel burnt: the slices of both bars are the shares of time and of fuel', () => {
    const table = rangeAndHours.inputs['states']
    if (table?.type !== 'table') throw new Error('range-and-hours has no table of states')
    const states = table.default.map(({ share = 0, burn = 0 }) => ({ share, burn }))
    const total = states.reduce((sum, { share, burn }) => sum + share * burn, 0)
    const slices = tagsOf(readFileSync('content/circuit/fuel-burnt.mdx', 'utf8'))
      .filter(({ name }) => name === 'rect')
      .map(({ attributes }) => Number(attributes['width']))
    const expected = [
      ...states.map(({ share }) => 360 * share),
      ...states.map(({ share, burn }) => (360 * share * burn) / total),
    ]
    expect(slices).toHaveLength(expected.length)
    for (const [at, width] of expected.entries()) expect(slices[at]).toBeCloseTo(width, 0)
  })

  test('energy: with density the litre gains «several times as much» as the kilogram loses', () => {
    const at = (density: number) => outcome(energyContent, { density })
    const change = (output: string) => Number(at(900)[output]) / Number(at(845)[output]) - 1
    expect(change('net')).toBeLessThan(0)
    expect(change('netPerVolume15')).toBeGreaterThan(-2.5 * change('net'))
  })

  test('blending: where the curve meets the highest viscosity, the mean is «still far above it»', () => {
    const [thick, thin, highest] = [6.5e-6, 1.64e-6, setPoint('fuel-viscosity-highest')]
    const blend = { wanted: 'share', firstViscosity: thick, secondViscosity: thin, wantedViscosity: highest }
    const share = Number(outcome(viscosityOfBlend, blend)['shareOfSecond'])
    const mean = thick + share * (thin - thick)
    expect((mean - highest) / (thick - highest)).toBeGreaterThan(0.4)
  })

  test('cleanliness: bars of 22/20/17 and 18/16/13 on one scale, four numbers apart', () => {
    const bars = rects('cleanliness-codes-counts-and-beta').slice(0, 6)
    const numbers = bars.map(({ width }) => width / 28 + 12)
    expect(numbers).toEqual([22, 18, 20, 16, 17, 13])
  })
})
