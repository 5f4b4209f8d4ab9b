/** Particles in one millilitre, in the counts of the table. [1/m³] */
const PER_MILLILITRE = 1e6

/**
 * Upper end of each scale number, particles per mL; the lower end is the one before. The steps are rounded, so the
 * table stands and no power of two. @source iso-4406
 */
const UPPER_ENDS = [
  0.01, 0.02, 0.04, 0.08, 0.16, 0.32, 0.64, 1.3, 2.5, 5, 10, 20, 40, 80, 160, 320, 640, 1300, 2500, 5000,
  10_000, 20_000, 40_000, 80_000, 160_000, 320_000, 640_000, 1_300_000, 2_500_000,
] as const

/** A sample of which fewer particles than this were counted gets the sign ≥. [-] @source iso-4406 */
export const FEWEST_SURE = 20

export const LARGEST_SCALE_NUMBER = UPPER_ENDS.length - 1

/** The count at which the table ends. [1/m³] */
export const LARGEST_COUNT = 2_500_000 * PER_MILLILITRE

/** So little, relative, is rounding of units and no particle. */
const ROUNDING = 1e-9

/**
 * Scale number of a count: more than the lower end, up to and including the upper end. [-]
 * @param count particles of a size and larger [1/m³], 0 to LARGEST_COUNT
 * @returns the scale number, 0 to 28; −1 above the table
 * @source iso-4406 (table 1)
 */
export function scaleNumber(count: number): number {
  return UPPER_ENDS.findIndex((end) => count <= end * PER_MILLILITRE * (1 + ROUNDING))
}

/**
 * The range of counts that a scale number stands for. [1/m³]
 * @param number scale number [-], a whole one of 0 to 28
 * @returns the counts above which and up to which it runs; not a number outside the table
 * @source iso-4406 (table 1)
 */
export function countsOf(number: number): { readonly above: number; readonly upTo: number } {
  const upTo = UPPER_ENDS[number] ?? Number.NaN
  const above = number === 0 ? 0 : (UPPER_ENDS[number - 1] ?? Number.NaN)
  return { above: above * PER_MILLILITRE, upTo: upTo * PER_MILLILITRE }
}
