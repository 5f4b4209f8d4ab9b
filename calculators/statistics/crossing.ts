import { mannKendall } from './mann-kendall.ts'
import type { MannKendall } from './mann-kendall.ts'
import { median } from './median.ts'
import { theilSen } from './theil-sen.ts'
import type { Point, TheilSenLine } from './theil-sen.ts'

/** A share of 95 cases in 100, as everywhere in the handbook. */
const CONFIDENCE = 0.95
/** Above this chance of coming about by itself, a trend is not taken as shown. */
const SHOWN_BELOW = 0.05

export interface Trend {
  readonly line: TheilSenLine
  readonly test: MannKendall
  /** Point about which the lines of the band turn: the medians. */
  readonly pivot: Point
  readonly last: number
}

/**
 * Robust line through readings with the test of Mann and Kendall beside it.
 * @param points readings [any units], at least two with different x
 * @returns line, test, the medians about which the band turns, and the last x; undefined when all x are equal
 * @source theil-1950, sen-1968, mann-1945
 */
export function trendOf(points: readonly Point[]): Trend | undefined {
  const line = theilSen(points, CONFIDENCE)
  if (line === undefined) return undefined
  const xs = points.map((point) => point.x)
  const pivot = { x: median(xs), y: median(points.map((point) => point.y)) }
  return { line, test: mannKendall(points), pivot, last: Math.max(...xs) }
}

/**
 * Where a line of this slope through the pivot stands at x. [unit of y]
 * @param trend from trendOf
 * @param slope one of the line's [unit of y / unit of x]
 * @param x where [unit of x]
 * @returns pivot + slope·(x − pivot)
 * @source theil-1950
 */
export function lineAt(trend: Trend, slope: number, x: number): number {
  return trend.pivot.y + slope * (x - trend.pivot.x)
}

/**
 * How far beyond the last reading a line meets a limit that it must not pass. [unit of x]
 * @param trend from trendOf
 * @param slope of the line through the pivot [unit of y / unit of x]
 * @param limit [unit of y]
 * @param side 'maximum' when readings must stay below it, 'minimum' when above [-]
 * @param lookAhead the farthest that is looked [unit of x], above 0
 * @returns 0 where the line has passed the limit already, and lookAhead where it does not meet it before
 * @source common practice: a straight line drawn on
 */
function distanceToLimit(
  trend: Trend,
  slope: number,
  limit: number,
  side: 'maximum' | 'minimum',
  lookAhead: number,
): number {
  const sign = side === 'maximum' ? 1 : -1
  const room = sign * (limit - lineAt(trend, slope, trend.last))
  if (room <= 0) return 0
  const towards = sign * slope
  return towards * lookAhead >= room ? room / towards : lookAhead
}

export type Outlook = 'passed' | 'notShown' | 'away' | 'within' | 'maybe' | 'later'

export interface Crossing {
  readonly earliest: number
  readonly likely: number
  readonly latest: number
  readonly outlook: Outlook
}

/**
 * When the limit is met, by the line and by the steepest and the flattest line of its band, and what that means.
 * @param trend from trendOf
 * @param limit [unit of y]
 * @param side 'maximum' or 'minimum' [-]
 * @param lookAhead the farthest that is looked [unit of x], above 0
 * @returns distances beyond the last reading, none above lookAhead, and the outlook in a word
 * @source sen-1968 (interval of the slope); turning the band about the medians is common practice, no published source
 */
export function crossing(
  trend: Trend,
  limit: number,
  side: 'maximum' | 'minimum',
  lookAhead: number,
): Crossing {
  const { slope, lowSlope, highSlope } = trend.line
  const reach = (of: number) => distanceToLimit(trend, of, limit, side, lookAhead)
  const ends = [reach(lowSlope), reach(slope), reach(highSlope)]
  const [earliest, latest] = [Math.min(...ends), Math.max(...ends)]
  const likely = reach(slope)
  const outlook = (): Outlook => {
    if (likely === 0) return 'passed'
    if (trend.test.probability >= SHOWN_BELOW) return 'notShown'
    if ((side === 'maximum' ? slope : -slope) <= 0) return 'away'
    if (latest < lookAhead) return 'within'
    return earliest < lookAhead ? 'maybe' : 'later'
  }
  return { earliest, likely, latest, outlook: outlook() }
}
