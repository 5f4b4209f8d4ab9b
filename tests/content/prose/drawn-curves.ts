import { stokesVelocity } from '../../../calculators/cleanliness/settling.ts'
import { redwoodSeconds } from '../../../calculators/fuel/engler-redwood.ts'
import { carbonAromaticityIndex } from '../../../calculators/fuel/ignition-residual.ts'
import { refinedDensityAt } from '../../../calculators/fuel/refined-density.ts'
import { HUNDRED_FAHRENHEIT, sayboltUniversal } from '../../../calculators/fuel/saybolt.ts'
import { doubleLogarithm, viscosityOnLine } from '../../../calculators/fuel/viscosity-walther.ts'
import {
  narrowGap,
  openingFlow,
  roundHole,
  type SmallOpening,
} from '../../../calculators/hydraulics/orifice-small.ts'
import { suctionState } from '../../../calculators/hydraulics/suction.ts'
import { theilSen } from '../../../calculators/statistics/theil-sen.ts'
import { fuel, setPoint } from './plant-and-fuels.ts'

/** Place on a drawing for a value: from `from` to `to`, evenly or by equal ratios. */
export interface Axis {
  readonly from: readonly [value: number, place: number]
  readonly to: readonly [value: number, place: number]
  readonly ratios?: boolean
}

const scaled = (axis: Axis, value: number) => (axis.ratios ? Math.log(value) : value)

export function placeOf(axis: Axis, value: number): number {
  const [start, end] = [scaled(axis, axis.from[0]), scaled(axis, axis.to[0])]
  return axis.from[1] + ((scaled(axis, value) - start) / (end - start)) * (axis.to[1] - axis.from[1])
}

export function valueAt(axis: Axis, place: number): number {
  const [start, end] = [scaled(axis, axis.from[0]), scaled(axis, axis.to[0])]
  const value = start + ((place - axis.from[1]) / (axis.to[1] - axis.from[1])) * (end - start)
  return axis.ratios ? Math.exp(value) : value
}

/** A path in a sketch of an article, of class `curve-NAME`, and what it stands for. */
export interface DrawnCurve {
  readonly article: string
  readonly name: string
  readonly x: Axis
  readonly y: Axis
  readonly of: (x: number) => number
  /** Where the curve's corners stand. */
  readonly at: readonly number[]
}

const summer = fuel('summer-gas-oil')
const winter = fuel('winter-gas-oil')
const heavy = fuel('heavy-distillate')
type Fuel = typeof summer
const kelvin = (celsius: number) => celsius + 273.15
const viscosityOf = (one: Fuel, celsius: number) => viscosityOnLine(one.line, kelvin(celsius))
const densityOf = (one: Fuel, celsius: number) => refinedDensityAt(one.density, kelvin(celsius)) ?? Number.NaN
const dynamicOf = (one: Fuel, celsius: number) => viscosityOf(one, celsius) * densityOf(one, celsius)
const range = (from: number, to: number, step: number) =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step)

const hotX: Axis = { from: [40, 60], to: [80, 372] }
const hotY: Axis = { from: [0, 214], to: [2, 34] }
const hot = (name: string, of: (celsius: number) => number): DrawnCurve => ({
  article: 'hot-fuel',
  name,
  x: hotX,
  y: hotY,
  of,
  at: range(40, 80, 5),
})

const ccaiX: Axis = { from: [30, 64], to: [700, 384], ratios: true }
const ccaiY: Axis = { from: [900, 214], to: [1020, 22] }
const ccai = (index: number, at: readonly number[]): DrawnCurve => ({
  article: 'ignition-quality',
  name: `ccai-${index}`,
  x: ccaiX,
  y: ccaiY,
  of: (viscosity) => 950 + index - carbonAromaticityIndex(950, viscosity * 1e-6, kelvin(50)),
  at,
})

/** Leak through an opening at a temperature, over that at freezing. */
const leak = (name: string, opening: SmallOpening): DrawnCurve => {
  const flow = (celsius: number) =>
    openingFlow(
      opening,
      0.62,
      setPoint('header-pressure'),
      dynamicOf(summer, celsius),
      densityOf(summer, celsius),
    ).flow
  return {
    article: 'leaks-and-what-they-cost',
    name,
    x: { from: [0, 56], to: [60, 376] },
    y: { from: [0, 206], to: [4, 22] },
    of: (celsius) => flow(celsius) / flow(0),
    at: range(0, 60, 5),
  }
}

/** Header pressures of a log book, with one misread: hours and kilopascals. */
export const LOG_BOOK = [
  { x: 0, y: 212 },
  { x: 100, y: 211 },
  { x: 200, y: 209 },
  { x: 300, y: 208 },
  { x: 400, y: 206 },
  { x: 500, y: 188 },
  { x: 600, y: 204 },
] as const

function leastSquares(points: readonly { x: number; y: number }[]) {
  const mean = (pick: (point: { x: number; y: number }) => number) =>
    points.reduce((sum, point) => sum + pick(point), 0) / points.length
  const [x, y] = [mean((point) => point.x), mean((point) => point.y)]
  const slope = mean((point) => (point.x - x) * (point.y - y)) / mean((point) => (point.x - x) ** 2)
  return { slope, intercept: y - slope * x }
}

export const trendX: Axis = { from: [0, 56], to: [600, 372] }
export const trendY: Axis = { from: [180, 206], to: [220, 22] }
const trend = (name: string, line: { slope: number; intercept: number } | undefined): DrawnCurve => ({
  article: 'trends-and-doubt',
  name,
  x: trendX,
  y: trendY,
  of: (hours) => (line ? line.intercept + line.slope * hours : Number.NaN),
  at: [0, 600],
})

const onPlainPaper = (name: string, one: Fuel, at: readonly number[]): DrawnCurve => ({
  article: 'viscosity-and-temperature',
  name: `plain-${name}`,
  x: { from: [0, 30], to: [80, 186] },
  y: { from: [0, 206], to: [20, 26] },
  of: (celsius) => viscosityOf(one, celsius) * 1e6,
  at,
})

export const chartX: Axis = { from: [Math.log10(kelvin(0)), 232], to: [Math.log10(kelvin(80)), 388] }
export const chartY: Axis = { from: [doubleLogarithm(1e-6), 206], to: [doubleLogarithm(30e-6), 26] }
const onChartPaper = (name: string, one: Fuel, coldest: number): DrawnCurve => ({
  article: 'viscosity-and-temperature',
  name: `chart-${name}`,
  x: chartX,
  y: chartY,
  of: (logTemperature) => doubleLogarithm(viscosityOnLine(one.line, 10 ** logTemperature)),
  at: [coldest, 40, 80].map((celsius) => Math.log10(kelvin(celsius))),
})

const scale = (name: string, of: (viscosity: number) => number, at: readonly number[]): DrawnCurve => ({
  article: 'viscosity-scales-and-conversions',
  name,
  x: { from: [2, 56], to: [200, 384], ratios: true },
  y: { from: [0, 206], to: [18, 26] },
  of: (viscosity) => of(viscosity * 1e-6) / viscosity,
  at,
})

const sinking = (name: string, one: Fuel, celsius: number, at: readonly number[]): DrawnCurve => ({
  article: 'water-and-how-it-settles',
  name,
  x: { from: [2, 74], to: [500, 388], ratios: true },
  y: { from: [60, 206], to: [3e7, 22], ratios: true },
  of: (micrometres) =>
    1 / stokesVelocity(micrometres * 1e-6, 998, densityOf(one, celsius), dynamicOf(one, celsius)),
  at,
})

export const windowX: Axis = { from: [0, 66], to: [100, 376] }
export const windowY: Axis = { from: [0, 206], to: [8, 26] }
const inTheWindow = (name: string, one: Fuel, at: readonly number[]): DrawnCurve => ({
  article: 'heating-and-the-viscosity-window',
  name,
  x: windowX,
  y: windowY,
  of: (celsius) => viscosityOf(one, celsius) * 1e6,
  at,
})

/** Parts of the vacuum at the pump with the figures with which the sum on the page begins. [Pa] */
function vacuumParts() {
  const line = {
    length: setPoint('suction-length'),
    bore: setPoint('suction-bore'),
    roughness: 0.046e-3,
    fittings: { elbows90: 4, ballValves: 1 },
    method: 'two-k',
    fixedLoss: 0.78,
  } as const
  const side = { line, lift: setPoint('suction-lift'), strainerDrop: 0, surfacePressure: 101325 }
  const { kinematicViscosity } = summer.first
  const state = suctionState(side, setPoint('pump-delivery'), kinematicViscosity, summer.density)
  return { lift: state.liftPressure, line: state.flow.drop, speed: state.velocityPressure }
}

/** Vacuum from the tank's surface to the pump, against places on the drawing. */
function vacuumOnTheWay(name: string, strainerOf: (others: number) => number): DrawnCurve {
  const { lift, line, speed } = vacuumParts()
  const strainer = strainerOf(lift + line + speed)
  const falls = [
    [90, 120, lift],
    [120, 215, line],
    [215, 255, strainer],
    [300, 330, speed],
  ] as const
  return {
    article: 'lines-lift-and-vacuum',
    name,
    x: { from: [0, 0], to: [400, 400] },
    y: { from: [0, 168], to: [30e3, 288] },
    of: (x) =>
      falls.reduce(
        (sum, [from, to, fall]) => sum + fall * Math.min(1, Math.max(0, (x - from) / (to - from))),
        0,
      ),
    at: [60, 90, 120, 215, 255, 300, 330, 390],
  }
}

export const drawnCurves: readonly DrawnCurve[] = [
  hot('slip', (celsius) => dynamicOf(summer, 40) / dynamicOf(summer, celsius)),
  hot('viscosity', (celsius) => viscosityOf(summer, celsius) / viscosityOf(summer, 40)),
  hot('energy', (celsius) => densityOf(summer, celsius) / densityOf(summer, 40)),
  ccai(850, [30, 40, 60, 100, 180, 300, 500, 700]),
  ccai(870, [30, 40, 60, 100, 180, 300, 500, 700]),
  leak('hole', roundHole(1e-3, 1.5e-3)),
  leak('crack', narrowGap(30e-6, 0.01, 1.5e-3)),
  trend('theil-sen', theilSen(LOG_BOOK, 0.95)),
  trend('least-squares', leastSquares(LOG_BOOK)),
  onPlainPaper('heavy', heavy, range(22, 80, 2)),
  onPlainPaper('summer', summer, range(0, 80, 5)),
  onPlainPaper('winter', winter, range(0, 80, 5)),
  onChartPaper('heavy', heavy, 20),
  onChartPaper('summer', summer, 5),
  onChartPaper('winter', winter, 0),
  scale(
    'saybolt',
    (viscosity) => sayboltUniversal(viscosity, HUNDRED_FAHRENHEIT),
    [2, 2.5, 3, 4, 5, 7, 10, 14, 20, 30, 50, 100, 200],
  ),
  scale('redwood', redwoodSeconds, [3, 4, 5, 7, 10, 14, 20, 30, 50, 100, 200]),
  inTheWindow('summer', summer, range(5, 100, 5)),
  inTheWindow('winter', winter, range(0, 100, 5)),
  inTheWindow('heavy', heavy, range(50, 100, 5)),
  vacuumOnTheWay('clean', () => setPoint('suction-strainer-clean')),
  vacuumOnTheWay('plugged', (others) => setPoint('suction-vacuum-limit') - others),
  sinking('warm', summer, 20, [3, 500]),
  sinking('cold', summer, 0, [3, 500]),
  sinking('heavy', heavy, 20, [3, 500]),
]
