import { median, medianAbsoluteDeviation, SIGMA_PER_MAD } from '../statistics/median.ts'
import { normalTail } from '../statistics/normal.ts'
import { modifiedZ } from '../statistics/outliers.ts'

/** Half-width of a 95 % interval in standard deviations of the normal distribution. [-] */
export const COVERAGE = 1.96

/** Squared standard error of a median over that of a mean, for a normal distribution: π/2. [-] */
const MEDIAN_OVER_MEAN = Math.PI / 2

/** Smaller chances are not told apart. [-] */
export const SMALLEST_CHANCE = 1e-6

export interface SetOfValues {
  readonly centre: number
  /** 1.4826 times the median absolute deviation. */
  readonly sigma: number
  readonly departures: readonly number[]
  readonly modifiedZ: readonly number[]
  /** Place of the largest departure, counted from 0. */
  readonly farthest: number
}

/**
 * Robust picture of one value for each cylinder: median, spread, departures and their modified z. [unit of values]
 * The deviation is taken as no smaller than the reading's own error would make it, so that equal readings of a
 * coarse instrument do not turn the next step of its display into an outlier.
 * @param values one a cylinder [K], two or more
 * @param halfWidth of the 95 % interval of one reading [K], above 0
 * @returns median, robust standard deviation, and for each cylinder departure and modified z
 * @source iglewicz-hoaglin-1993; the floor under the deviation is common practice, no published source
 */
export function robustSet(values: readonly number[], halfWidth: number): SetOfValues {
  const centre = median(values)
  const departures = values.map((value) => value - centre)
  const sizes = departures.map(Math.abs)
  return {
    centre,
    sigma: SIGMA_PER_MAD * medianAbsoluteDeviation(values),
    departures,
    modifiedZ: modifiedZ(values, halfWidth / COVERAGE / SIGMA_PER_MAD),
    farthest: sizes.indexOf(Math.max(...sizes)),
  }
}

/**
 * How far a departure from the median is uncertain by the reading's own error and by that of the median. [K]
 * @param halfWidth of the 95 % interval of one reading [K]
 * @param count how many cylinders [-], 1 or more
 * @returns half-width of a 95 % interval: halfWidth·√(1 + π/2n)
 * @source gum-2008 (sum of squares), normal-median
 */
export function departureUncertainty(halfWidth: number, count: number): number {
  return halfWidth * Math.sqrt(1 + MEDIAN_OVER_MEAN / count)
}

/**
 * Chance that reading errors alone make the largest of n departures at least so large. [-]
 * @param departure [K], any sign
 * @param uncertainty half-width of its 95 % interval [K], above 0
 * @param count how many cylinders [-], 1 or more
 * @returns 1 − (1 − P)ⁿ with P the two tails of the normal distribution beyond the departure; no less than one in
 *   a million, since nobody knows the tails of a real pyrometer so far out
 * @source abramowitz-stegun (26.2, normal distribution)
 */
export function chanceOfDeparture(departure: number, uncertainty: number, count: number): number {
  const one = Math.min(1, 2 * normalTail((COVERAGE * Math.abs(departure)) / uncertainty))
  return Math.max(SMALLEST_CHANCE, -Math.expm1(count * Math.log1p(-one)))
}
