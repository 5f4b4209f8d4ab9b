import type { Notice, Refusal, ValuesOf } from '../../calculator/types.ts'
import { elementResistance, housingResistance } from '../../hydraulics/filter.ts'
import { ratioFromStraightened, straightened } from '../../hydraulics/filter-loading.ts'
import type { LoadingLaw } from '../../hydraulics/filter-loading.ts'
import { crossing, lineAt, trendOf } from '../../statistics/crossing.ts'
import type { Point } from '../../statistics/theil-sen.ts'
import { step } from '../step.ts'
import { HOUR, timeOf, trendNotices } from '../trend-outcomes.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** At half the permitted drop little of the life is left. */
const HALF = 0.5
/** A fall by more than this share between two readings is no scatter: common practice. */
const FALL = 0.25

const housingDrop = (input: Values): number => input.housingShare * input.cleanDrop
const newElementDrop = (input: Values): number => input.cleanDrop - housingDrop(input)

/** Drop of the element alone, at reference, for each reading; not above zero where the housing took it all. */
export function elementDrops(input: Values): Point[] {
  const housing = housingResistance(housingDrop(input), input.referenceFlow, input.density)
  return input.readings.map((row) => {
    const dynamic = (row['viscosity'] ?? Number.NaN) * input.density
    const element = elementResistance(
      row['drop'] ?? Number.NaN,
      row['flow'] ?? Number.NaN,
      dynamic,
      input.density,
      housing,
    )
    const atReference = element * input.referenceViscosity * input.density * input.referenceFlow
    return { x: timeOf(row), y: atReference }
  })
}

/** The same as the loading law makes them straight. */
export function straightPoints(input: Values): Point[] {
  const clean = newElementDrop(input)
  return elementDrops(input).map(({ x, y }) => ({ x, y: straightened(input.law, y / clean) }))
}

/** Drop of the whole filter at reference for a value on the straight line. */
export function dropOf(input: Values, straight: number): number | undefined {
  const ratio = ratioFromStraightened(input.law, straight)
  return ratio === undefined ? undefined : housingDrop(input) + ratio * newElementDrop(input)
}

function whyNot(input: Values): Refusal | undefined {
  if (input.changeOut <= input.cleanDrop)
    return {
      field: 'changeOut',
      reason: `${inputs.changeOut.label} is ${inWords(input.changeOut, 'pressureDifference')}, not above that of a new element, ${inWords(input.cleanDrop, 'pressureDifference')}`,
      accepted: 'a drop above that of a new element',
    }
  const at = elementDrops(input).findIndex((point) => !(point.y > 0))
  if (at >= 0)
    return {
      field: 'readings',
      reason: `${inputs.readings.label}, reading ${at + 1}: the drop is no more than the housing alone takes at this flow`,
      accepted: 'a larger drop, or a smaller flow or share of the housing',
    }
  if (new Set(input.readings.map(timeOf)).size < 2)
    return {
      field: 'readings',
      reason: `${inputs.readings.label} all have the same hours`,
      accepted: 'at least two different hours',
    }
  return undefined
}

function likelyBy(input: Values, law: LoadingLaw): number {
  const other = { ...input, law }
  const trend = trendOf(straightPoints(other))
  if (trend === undefined) return input.lookAhead
  return crossing(trend, limitOf(other), 'maximum', input.lookAhead).likely
}

const PAST_ANY_DROP: Notice = {
  grade: 'caution',
  text: 'By this law the line has run past every drop that is finite at the last hours. The change-out drop stands in its place: the truth is above it.',
}

const limitOf = (input: Values): number =>
  straightened(input.law, (input.changeOut - housingDrop(input)) / newElementDrop(input))

function noticesOf(input: Values, shareNow: number): Notice[] {
  const notices: Notice[] = []
  const [slowest, fastest] = (['cake', 'complete'] as const).map((law) => likelyBy(input, law) / HOUR)
  notices.push({
    grade: 'information',
    text: `Loading climbs ever faster, and a straight line promises too much. The same readings leave ${slowest?.toFixed(0)} h by the straight law and ${fastest?.toFixed(0)} h by the steepest, looking no further than ${(input.lookAhead / HOUR).toFixed(0)} h.`,
  })
  if (shareNow >= HALF && shareNow < 1)
    notices.push({
      grade: 'caution',
      text: 'More than half of the permitted drop is used: by then about 80 % of the life is gone, says one hydraulics lexicon. Have the elements at hand.',
    })
  const drops = elementDrops(input).toSorted((a, b) => a.x - b.x)
  const fell = drops.findIndex((point, at) => at > 0 && point.y < (1 - FALL) * (drops[at - 1]?.y ?? 0))
  if (fell > 0)
    notices.push({
      grade: 'caution',
      text: `Brought to reference, the drop fell between reading ${fell} and ${fell + 1} in the order of hours. A filter does not clean itself: look for a changed element, a torn one, an open bypass or less flow.`,
    })
  return notices
}

/** Life left by the loading law through all readings, with the band of its slope. */
export function compute(input: Values) {
  const refusal = whyNot(input)
  if (refusal) return { refusal }
  const points = straightPoints(input)
  const trend = trendOf(points)
  if (trend === undefined)
    return { refusal: { field: 'readings', reason: 'No line can be drawn', accepted: 'other hours' } }
  const limit = limitOf(input)
  const meets = crossing(trend, limit, 'maximum', input.lookAhead)
  const straightNow = lineAt(trend, trend.line.slope, trend.last)
  const dropNow = dropOf(input, straightNow)
  const now = dropNow ?? input.changeOut
  const first = Math.min(...points.map((point) => point.x))
  return {
    outputs: {
      verdict: meets.outlook,
      likely: meets.likely,
      earliest: meets.earliest,
      latest: meets.latest,
      now,
      shareUsed: now / input.changeOut,
      chance: trend.test.probability,
    },
    steps: [
      step('Housing at reference', 'Δp_h0', 's Δp_new', housingDrop(input), 'pressureDifference'),
      step(
        'Element at reference, last reading in the table',
        'Δp_e0',
        '(Δp − Δp_h0 (Q/Q₀)²) (ν₀/ν) (Q₀/Q)',
        elementDrops(input).at(-1)?.y ?? 0,
        'pressureDifference',
      ),
      step('Straightened, at the last hours', 'x', ruleOf[input.law], straightNow, 'ratio'),
      step(
        'Slope in 1000 h',
        'b',
        'median of the slopes of all pairs',
        trend.line.slope * 1000 * HOUR,
        'ratio',
      ),
      step('Straightened limit', 'x_max', `${ruleOf[input.law]}, of Δp_max − Δp_h0`, limit, 'ratio'),
      { ...step('Hours left by the line', 't_L', '(x_max − x) / b', meets.likely, 'time'), unit: 'h' },
    ],
    notices: [
      ...(dropNow === undefined ? [PAST_ANY_DROP] : []),
      ...noticesOf(input, now / input.changeOut),
      ...trendNotices(trend, first, points.length, meets, input.lookAhead),
    ],
  }
}

/** With r for the drop of the element over that of a new one. */
const ruleOf: Readonly<Record<LoadingLaw, string>> = {
  cake: 'r − 1',
  intermediate: 'ln r',
  standard: '1 − 1/√r',
  complete: '1 − 1/r',
}
