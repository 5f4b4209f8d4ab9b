import type { ChartLine } from '../calculator/types.ts'
import { lineAt, trendOf } from '../statistics/crossing.ts'
import type { Point } from '../statistics/theil-sen.ts'

/** Points of each line: enough that a curve looks like one. */
const STEPS = 24

/**
 * The line through readings and the two lines of its band, from the first reading to the look-ahead.
 * @param shown what stands on the vertical axis for a value of the line, undefined where there is nothing
 */
export function trendLines(
  points: readonly Point[],
  lookAhead: number,
  shown: (y: number) => number | undefined,
): ChartLine[] {
  const trend = trendOf(points)
  if (trend === undefined) return []
  const first = Math.min(...points.map((point) => point.x))
  // A look-ahead of many times the readings' own span would press them into a corner.
  const last = trend.last + Math.min(lookAhead, trend.last - first)
  const through = (slope: number) =>
    Array.from({ length: STEPS + 1 }, (_, at) => first + ((last - first) * at) / STEPS).flatMap((x) => {
      const y = shown(lineAt(trend, slope, x))
      return y === undefined ? [] : [{ x, y }]
    })
  const { slope, lowSlope, highSlope } = trend.line
  return [
    { label: 'Line', points: through(slope) },
    { label: 'Band of 95 %, lower end', points: through(lowSlope), edge: true },
    { label: 'Band of 95 %, upper end', points: through(highSlope), edge: true },
  ].filter((line) => line.points.length > 1)
}
