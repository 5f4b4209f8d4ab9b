/** Ratio of the standard deviation of a normal distribution to its median absolute deviation, 1/Φ⁻¹(3/4). [-] */
export const SIGMA_PER_MAD = 1.482602218505602

/**
 * The middle value; the mean of the two middle ones where their number is even. [unit of the values]
 * @param values any order, at least one [any unit]
 * @returns the median; not a number for an empty list
 * @source nist-handbook-statistics (measures of location)
 */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b)
  const middle = sorted.length / 2
  const upper = sorted[Math.floor(middle)] ?? Number.NaN
  const lower = Number.isInteger(middle) ? (sorted[middle - 1] ?? Number.NaN) : upper
  return lower + (upper - lower) / 2
}

/**
 * Median of the absolute departures from the median. [unit of the values]
 * @param values at least one [any unit]
 * @returns zero when more than half of the values are equal
 * @source iglewicz-hoaglin-1993
 */
export function medianAbsoluteDeviation(values: readonly number[]): number {
  const centre = median(values)
  return median(values.map((value) => Math.abs(value - centre)))
}
