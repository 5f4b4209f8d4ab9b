import { median } from './median.ts'
import { normalQuantile } from './normal.ts'

export interface Point {
  readonly x: number
  readonly y: number
}

/** A robust straight line y = intercept + slope·x, with the interval of its slope. */
export interface TheilSenLine {
  readonly slope: number
  readonly intercept: number
  readonly lowSlope: number
  readonly highSlope: number
}

/** Slopes of all pairs whose x differ, in rising order. */
function pairSlopes(points: readonly Point[]): number[] {
  const slopes: number[] = []
  for (const [index, first] of points.entries())
    for (const second of points.slice(index + 1))
      if (first.x !== second.x) slopes.push((second.y - first.y) / (second.x - first.x))
  return slopes.sort((a, b) => a - b)
}

/**
 * Sizes of the groups of equal values. [-]
 * @param values any order [any unit]
 * @returns one size, of two or more, for each value that stands more than once
 * @source sen-1968 (ties)
 */
export function tieSizes(values: readonly number[]): number[] {
  const counts = new Map<number, number>()
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1)
  return [...counts.values()].filter((count) => count > 1)
}

/**
 * Variance of Kendall's S for data without any trend, less what ties take from it. [-]
 * @param count how many points [-], 2 or more
 * @param xTies sizes of the groups of equal x [-]
 * @param yTies sizes of the groups of equal y [-]
 * @returns [n(n−1)(2n+5) − Σt(t−1)(2t+5) over the ties of x and of y]/18
 * @source sen-1968 (equation 2.6)
 */
export function kendallVariance(count: number, xTies: readonly number[], yTies: readonly number[]): number {
  const term = (n: number) => n * (n - 1) * (2 * n + 5)
  const taken = [...xTies, ...yTies].reduce((sum, size) => sum + term(size), 0)
  return (term(count) - taken) / 18
}

/**
 * Line of Theil and Sen: the slope is the median of the slopes of all pairs, the intercept that of Conover,
 * median(y) − slope·median(x). Up to 29 % of the points may be wrong without carrying it away.
 * @param points at least two with different x [any units]
 * @param confidence share of cases in which the interval holds the true slope [-], between 0 and 1
 * @returns slope, intercept and the ends of the slope's interval; undefined when all x are equal
 * @source theil-1950, sen-1968 (interval, section 3), conover-intercept
 */
export function theilSen(points: readonly Point[], confidence: number): TheilSenLine | undefined {
  const slopes = pairSlopes(points)
  const slope = median(slopes)
  const [lowest] = slopes
  const highest = slopes.at(-1)
  if (lowest === undefined || highest === undefined) return undefined
  const xs = points.map((point) => point.x)
  const ys = points.map((point) => point.y)
  const variance = kendallVariance(points.length, tieSizes(xs), tieSizes(ys))
  const reach = normalQuantile((1 + confidence) / 2) * Math.sqrt(Math.max(0, variance))
  // Ranks counted from one, rounded half to even as scipy does.
  const upperRank = Math.min(roundHalfEven((slopes.length + reach) / 2), slopes.length - 1)
  const lowerRank = Math.max(roundHalfEven((slopes.length - reach) / 2) - 1, 0)
  return {
    slope,
    intercept: median(ys) - slope * median(xs),
    lowSlope: slopes[lowerRank] ?? lowest,
    highSlope: slopes[upperRank] ?? highest,
  }
}

function roundHalfEven(value: number): number {
  const rounded = Math.round(value)
  return Math.abs(value % 1) === 0.5 && rounded % 2 !== 0 ? rounded - 1 : rounded
}
