import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { crossing, lineAt, trendOf } from '../../statistics/crossing.ts'
import type { Crossing, Trend } from '../../statistics/crossing.ts'
import type { Point } from '../../statistics/theil-sen.ts'
import { step } from '../step.ts'
import { HOUR, timeOf, trendNotices } from '../trend-outcomes.ts'
import type { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

/** The slope is told for so many hours, which gives numbers a person can picture. */
const TOLD_FOR = 1000 * HOUR

export function pointsOf(input: Pick<Values, 'readings'>): Point[] {
  return input.readings.map((row) => ({ x: timeOf(row), y: row['reading'] ?? Number.NaN }))
}

function noticesOf(input: Values, trend: Trend, first: number, meets: Crossing): Notice[] {
  const notices = trendNotices(trend, first, input.readings.length, meets, input.lookAhead)
  const moved = Math.abs(trend.line.slope) * (trend.last - first)
  if (moved > 0 && moved < input.accuracy)
    notices.push({
      grade: 'caution',
      text: 'Over all readings the line has moved by less than the gauge repeats. A drifting gauge would look the same: check it first.',
    })
  if (trend.line.lowSlope < 0 && trend.line.highSlope > 0)
    notices.push({
      grade: 'information',
      text: 'The band of the slope reaches from falling to rising.',
    })
  return notices
}

/** Robust line through the readings, how sure it is, and when it meets the limit. */
export function compute(input: Values) {
  const points = pointsOf(input)
  const trend = trendOf(points)
  if (trend === undefined)
    return {
      refusal: {
        field: 'readings',
        reason: 'All readings have the same running hours',
        accepted: 'at least two different hours',
      },
    }
  const { slope, lowSlope, highSlope } = trend.line
  const meets = crossing(trend, input.limit, input.side, input.lookAhead)
  const first = Math.min(...points.map((point) => point.x))
  const now = lineAt(trend, slope, trend.last)
  return {
    outputs: {
      verdict: meets.outlook,
      likely: meets.likely,
      earliest: meets.earliest,
      latest: meets.latest,
      slope: slope * TOLD_FOR,
      lowSlope: lowSlope * TOLD_FOR,
      highSlope: highSlope * TOLD_FOR,
      now,
      chance: trend.test.probability,
    },
    steps: [
      { ...step('Median of the hours', 't̃', 'middle value', trend.pivot.x, 'time'), unit: 'h' },
      step('Median of the readings', 'ỹ', 'middle value', trend.pivot.y, 'ratio'),
      step(
        'Slope in 1000 h',
        'b',
        'median of (y_j − y_i) / (t_j − t_i) over all pairs',
        slope * TOLD_FOR,
        'ratio',
      ),
      step('Line at the last reading', 'y_n', 'ỹ + b (t_n − t̃)', now, 'ratio'),
      step('Rising pairs less falling pairs', 'S', 'sum of the signs over all pairs', trend.test.s, 'ratio'),
      step('Its z', 'Z', '(S ∓ 1) / √Var(S)', trend.test.z, 'ratio'),
    ],
    notices: noticesOf(input, trend, first, meets),
  }
}
