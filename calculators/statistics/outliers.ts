import { median, medianAbsoluteDeviation } from './median.ts'

/** A modified z beyond this marks a value that stands out. [-] @source iglewicz-hoaglin-1993 */
export const STANDS_OUT = 3.5

/** Φ⁻¹(3/4), the factor that makes a modified z comparable with a z of the normal distribution. [-] */
const FACTOR = 0.6745

/**
 * Modified z of each value: 0.6745 times its departure from the median over the median absolute deviation. [-]
 * @param values at least one [any unit]
 * @param leastDeviation what the deviation is taken to be at least [same unit], above 0 to keep a deviation of zero
 *   from dividing; 0 for the plain rule, which then gives zero or an infinity
 * @returns one z for each value, in their order
 * @source iglewicz-hoaglin-1993
 */
export function modifiedZ(values: readonly number[], leastDeviation: number): number[] {
  const centre = median(values)
  const deviation = Math.max(medianAbsoluteDeviation(values), leastDeviation)
  return values.map((value) => {
    const departure = value - centre
    return departure === 0 ? 0 : (FACTOR * departure) / deviation
  })
}
