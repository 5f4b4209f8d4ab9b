import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { doubleLogarithm } from '../../../calculators/fuel/viscosity-walther.ts'
import {
  LOG_BOOK,
  chartX,
  chartY,
  drawnCurves,
  placeOf,
  trendX,
  trendY,
  valueAt,
  windowX,
  windowY,
  type Axis,
} from './drawn-curves.ts'
import { inHealth } from '../model/bench.ts'
import { fuel, setPoint, tolerance } from './plant-and-fuels.ts'

// A curve in a sketch is a statement: its corners must lie where the equation puts them, to half a drawn millimetre.

const CLOSE = 0.6
const articleText = (id: string) => readFileSync(`content/circuit/${id}.mdx`, 'utf8')

function cornersOf(article: string, name: string): [number, number][] {
  const path = new RegExp(`class="[^"]*\\bcurve-${name}" d="([^"]+)"`).exec(articleText(article))?.[1]
  if (path === undefined) throw new Error(`${article} has no curve-${name}`)
  const numbers = (path.match(/[\d.]+/g) ?? []).map(Number)
  return Array.from({ length: numbers.length / 2 }, (_, index) => [
    numbers[2 * index] ?? Number.NaN,
    numbers[2 * index + 1] ?? Number.NaN,
  ])
}

test.each(drawnCurves)('$article: the curve $name lies where its equation puts it', (curve) => {
  const corners = cornersOf(curve.article, curve.name)
  expect(corners).toHaveLength(curve.at.length)
  for (const [x, y] of corners)
    expect(Math.abs(placeOf(curve.y, curve.of(valueAt(curve.x, x))) - y), `at ${x}`).toBeLessThan(CLOSE)
})

test('a value and its place on an axis belong together', () => {
  for (const axis of [trendX, { from: [2, 56], to: [200, 384], ratios: true }] as Axis[])
    expect(valueAt(axis, placeOf(axis, 42))).toBeCloseTo(42, 9)
})

test('the bars of viscosity begin and end at the limits of the table', () => {
  const limits = [
    [2, 4.5],
    [1.3, 2.4],
    [1.9, 4.1],
    [5.5, 24],
    [1.4, 5.5],
    [2, 6],
    [3, 6],
    [2, 11],
  ]
  const axis: Axis = { from: [1, 96], to: [24, 384], ratios: true }
  const bars = [
    ...articleText('fuel-standards').matchAll(/<rect class="fuel" x="([\d.]+)" y="\d+" width="([\d.]+)"/g),
  ]
  expect(bars).toHaveLength(limits.length)
  for (const [index, [low = 0, high = 0]] of limits.entries()) {
    const [start, width] = [Number(bars[index]?.[1]), Number(bars[index]?.[2])]
    expect(Math.abs(start - placeOf(axis, low))).toBeLessThan(CLOSE)
    expect(Math.abs(start + width - placeOf(axis, high))).toBeLessThan(CLOSE)
  }
  const [marks = ''] = /M163\.2 20 V228[^"]*/.exec(articleText('fuel-standards')) ?? []
  const places = [...marks.matchAll(/M([\d.]+) 20/g)].map(([, place]) => Number(place))
  const middles = ['winter-gas-oil', 'summer-gas-oil', 'heavy-distillate'].map((id) =>
    placeOf(axis, fuel(id).middle.kinematicViscosity * 1e6),
  )
  for (const [index, middle] of middles.entries())
    expect(Math.abs((places[index] ?? 0) - middle)).toBeLessThan(CLOSE)
})

test('the bars of energy are the per cents that the page names, on a scale of thirty a per cent', () => {
  const widths = [...articleText('bio-blends').matchAll(/<rect class="fuel" x="150" y="\d+" width="(\d+)"/g)]
  expect(widths.map(([, width]) => Number(width) / 30)).toEqual(
    [0.07 * 8, 1.38, 0.2 * 8, 2.17, 8].map((per) => expect.closeTo(per, 1) as number),
  )
})

const dotsOf = (article: string) =>
  [...articleText(article).matchAll(/<circle class="solid" cx="([\d.]+)" cy="([\d.]+)"/g)].map(
    ([, x, y]) => [Number(x), Number(y)] as const,
  )

test('the readings of the log book are drawn as they stand, and least squares errs by a thousand hours', () => {
  const dots = dotsOf('trends-and-doubt')
  expect(dots).toHaveLength(LOG_BOOK.length)
  for (const [index, { x, y }] of LOG_BOOK.entries()) {
    expect(Math.abs((dots[index]?.[0] ?? 0) - placeOf(trendX, x))).toBeLessThan(CLOSE)
    expect(Math.abs((dots[index]?.[1] ?? 0) - placeOf(trendY, y))).toBeLessThan(CLOSE)
  }
  const limit = setPoint('header-pressure-low') / 1e3
  const until = (name: string) => {
    const line = drawnCurves.find((curve) => curve.name === name)?.of ?? (() => Number.NaN)
    return ((line(0) - limit) / (line(0) - line(600))) * 600
  }
  expect(until('theil-sen') - until('least-squares')).toBeGreaterThan(900)
  expect(until('theil-sen') - until('least-squares')).toBeLessThan(1200)
})

test('the pairs of the three fuels are drawn on the lines of chart paper', () => {
  const dots = dotsOf('viscosity-and-temperature')
  for (const id of ['winter-gas-oil', 'summer-gas-oil', 'heavy-distillate'])
    for (const pair of [fuel(id).first, fuel(id).middle, fuel(id).last]) {
      const x = placeOf(chartX, Math.log10(pair.temperature))
      const y = placeOf(chartY, doubleLogarithm(pair.kinematicViscosity))
      expect(dots.some(([atX, atY]) => Math.hypot(atX - x, atY - y) < CLOSE)).toBe(true)
    }
})

test('the boiling curve goes through the steam table, and the PB-8’s marks lie above it', () => {
  const x: Axis = { from: [70, 64], to: [160, 374] }
  const y: Axis = { from: [0, 210], to: [900, 20] }
  const corners = cornersOf('residual-fuel-and-boosters', 'boiling')
  for (const [celsius, kilopascal] of [
    [100, 101.33],
    [120, 198.5],
    [140, 361.6],
    [160, 618],
  ] as const)
    expect(
      corners.some(
        ([atX, atY]) => Math.hypot(atX - placeOf(x, celsius), atY - placeOf(y, kilopascal)) < CLOSE,
      ),
    ).toBe(true)
  const boilsAt = (place: number) => {
    const after = corners.findIndex(([at]) => at >= place)
    const [[x0, y0], [x1, y1]] = [corners[after - 1] ?? [0, 0], corners[after] ?? [1, 0]]
    return y0 + ((place - x0) / (x1 - x0)) * (y1 - y0)
  }
  const dots = dotsOf('residual-fuel-and-boosters')
  for (const [atX, atY] of dots) expect(atY).toBeLessThan(boilsAt(atX))

  const { parts } = inHealth('pb-8', 'full')
  for (const [id, side] of [
    ['booster-suction-pipe', 'in'],
    ['supply-header', 'in'],
    ['return-glass', 'in'],
  ] as const) {
    const state = parts.find((part) => part.id === id)?.[side]
    const at = [placeOf(x, (state?.temperature ?? 0) - 273.15), placeOf(y, (state?.pressure ?? 0) / 1e3)]
    const nearest = Math.min(
      ...dots.map(([dotX, dotY]) => Math.hypot(dotX - (at[0] ?? 0), dotY - (at[1] ?? 0))),
    )
    expect(nearest, id).toBeLessThan(3)
  }
})

test('«eight hours: near 40 micrometres»; heavy distillate six times longer, cold gas oil twice', () => {
  const time = (name: string, micrometres: number) =>
    drawnCurves
      .find((curve) => curve.article === 'water-and-how-it-settles' && curve.name === name)
      ?.of(micrometres) ?? Number.NaN
  expect(time('warm', 40) / setPoint('tank-rest')).toBeCloseTo(1, 1)
  expect(time('heavy', 40) / time('warm', 40)).toBeGreaterThan(6)
  expect(time('heavy', 40) / time('warm', 40)).toBeLessThan(7)
  expect(time('cold', 40) / time('warm', 40)).toBeCloseTo(2.1, 1)
})

interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

const boxesOf = (article: string): Box[] =>
  [
    ...articleText(article).matchAll(
      /<rect class="fuel" x="([\d.]+)" y="([\d.]+)" width="([\d.]+)" height="([\d.]+)"/g,
    ),
  ].map(([, x, y, width, height]) => ({
    x: Number(x),
    y: Number(y),
    width: Number(width),
    height: Number(height),
  }))

test('the box of the window lies between the four limits, and heavy distillate never enters it', () => {
  const [box] = boxesOf('heating-and-the-viscosity-window')
  const [cold, hot] = [setPoint('fuel-temperature-low') - 273.15, setPoint('fuel-temperature-high') - 273.15]
  const [thick, thin] = [setPoint('fuel-viscosity-highest') * 1e6, setPoint('fuel-viscosity-lowest') * 1e6]
  expect(box?.x).toBeCloseTo(placeOf(windowX, cold), 1)
  expect((box?.x ?? 0) + (box?.width ?? 0)).toBeCloseTo(placeOf(windowX, hot), 1)
  expect(box?.y).toBeCloseTo(placeOf(windowY, thick), 1)
  expect((box?.y ?? 0) + (box?.height ?? 0)).toBeCloseTo(placeOf(windowY, thin), 1)
  const viscosity = (name: string, celsius: number) =>
    drawnCurves
      .find(({ article, name: own }) => article === 'heating-and-the-viscosity-window' && own === name)
      ?.of(celsius) ?? Number.NaN
  expect(viscosity('heavy', hot)).toBeGreaterThan(thick)
  expect(viscosity('winter', setPoint('heater-set-point') - 273.15)).toBeGreaterThan(thin)
  expect(viscosity('winter', setPoint('heater-set-point') - 273.15 + setPoint('heater-swing'))).toBeLessThan(
    thin,
  )
})

test('the ladder of the two valves stands on the set points and their tolerances, and two bands overlap', () => {
  const y: Axis = { from: [120, 296], to: [420, 26] }
  const atLimit = setPoint('header-pressure') + setPoint('secondary-drop-change')
  const rungs = [
    [setPoint('return-valve-cracking'), tolerance('return-valve-cracking')],
    [setPoint('header-pressure'), tolerance('header-pressure')],
    [atLimit, tolerance('header-pressure')],
    [setPoint('bypass-valve-cracking'), tolerance('bypass-valve-cracking')],
  ] as const
  const boxes = boxesOf('the-two-valves')
  expect(boxes).toHaveLength(rungs.length)
  for (const [index, [middle, half]] of rungs.entries()) {
    expect(boxes[index]?.y).toBeCloseTo(placeOf(y, (middle + half) / 1e3), 1)
    expect(boxes[index]?.height).toBeCloseTo((2 * half * 0.9) / 1e3, 1)
  }
  const text = articleText('the-two-valves')
  const [, first, second] =
    /class="strong" d="M76 278.*\n.*class="dash" d="M76 ([\d.]+) H140 M322 ([\d.]+)/.exec(text) ?? []
  expect(Number(first)).toBeCloseTo(placeOf(y, setPoint('return-valve-full-flow') / 1e3), 1)
  expect(Number(second)).toBeCloseTo(placeOf(y, setPoint('bypass-valve-full-flow') / 1e3), 1)
  const [, top, foot] = /class="wrong" d="M236 ([\d.]+) H392 M236 ([\d.]+)/.exec(text) ?? []
  expect(Number(top)).toBe(boxes[2]?.y)
  expect(Number(foot)).toBe((boxes[3]?.y ?? 0) + (boxes[3]?.height ?? 0))
  expect(Number(top)).toBeLessThan(Number(foot))
})

test('the streams of the injector are as wide as they flow, and bear the temperatures in health', () => {
  const text = articleText('injector-cooling-and-the-return-side')
  const [, path = ''] = /class="fuel" d="([^"]+)"/.exec(text) ?? []
  const [inflow, burnt, back] = [
    [78, 60],
    [202.1, 197.9],
    [73.8, 60],
  ].map(([far = 0, near = 0]) => {
    for (const place of [far, near]) expect(path).toContain(String(place))
    return far - near
  })
  const scale = 18 / setPoint('pump-delivery')
  expect(inflow).toBeCloseTo(18, 1)
  expect(burnt).toBeCloseTo(scale * setPoint('fuel-burnt-at-full-load'), 1)
  expect(back).toBeCloseTo(scale * setPoint('return-flow-at-full-load'), 1)
  const degrees = [...text.matchAll(/<SketchFigure value="(\d+) degC"/g)].map(([, value]) => Number(value))
  expect(degrees).toEqual(
    ['heater-set-point', 'return-header-temperature'].map((id) =>
      expect.closeTo(setPoint(id) - 273.15, 6),
    ) as unknown as number[],
  )
})
