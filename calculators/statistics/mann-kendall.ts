import { normalTail } from './normal.ts'
import { kendallVariance, tieSizes } from './theil-sen.ts'
import type { Point } from './theil-sen.ts'

export interface MannKendall {
  /** Pairs that rise less pairs that fall. [-] */
  readonly s: number
  /** Standard deviations from what no trend would give, continuity corrected. [-] */
  readonly z: number
  /** Probability of a value at least as far from zero where there is no trend. [-] */
  readonly probability: number
}

/** Up to so many readings without ties, S is counted out; above, or with ties, it is taken as normal. */
const COUNTED_UP_TO = 10

/** Number of orders of n values for each number of pairs out of order, 0 to n(n−1)/2. */
function ordersByInversions(count: number): number[] {
  let orders = [1]
  for (let size = 2; size <= count; size++) {
    const next = Array.from({ length: (size * (size - 1)) / 2 + 1 }, () => 0)
    for (const [inversions, number] of orders.entries())
      for (let more = 0; more < size; more++)
        next[inversions + more] = (next[inversions + more] ?? 0) + number
    orders = next
  }
  return orders
}

/** Two-sided probability of |S| or more among all orders of n different values. */
function countedProbability(count: number, s: number): number {
  const orders = ordersByInversions(count)
  const pairs = (count * (count - 1)) / 2
  const all = orders.reduce((sum, number) => sum + number, 0)
  const asFar = orders.reduce(
    (sum, number, inversions) => sum + (Math.abs(pairs - 2 * inversions) >= Math.abs(s) ? number : 0),
    0,
  )
  return Math.min(1, asFar / all)
}

/**
 * Test of Mann and Kendall: does y rise or fall with x at all, whatever the shape of the curve?
 * @param points at least two [any units]
 * @returns S, its z, and the two-sided probability that pure chance gives such an S: counted exactly up to 10
 *   readings without ties, otherwise from the normal distribution with the variance corrected for ties
 * @source mann-1945, kendall-1975
 */
export function mannKendall(points: readonly Point[]): MannKendall {
  let s = 0
  for (const [index, first] of points.entries())
    for (const second of points.slice(index + 1))
      s += Math.sign(second.x - first.x) * Math.sign(second.y - first.y)
  const xTies = tieSizes(points.map((point) => point.x))
  const yTies = tieSizes(points.map((point) => point.y))
  const variance = kendallVariance(points.length, xTies, yTies)
  const z = s === 0 || variance <= 0 ? 0 : (s - Math.sign(s)) / Math.sqrt(variance)
  const counted = points.length <= COUNTED_UP_TO && xTies.length === 0 && yTies.length === 0
  const probability = counted
    ? countedProbability(points.length, s)
    : Math.min(1, 2 * normalTail(Math.abs(z)))
  return { s, z, probability }
}
