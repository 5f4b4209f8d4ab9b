/**
 * Dye for a volume of fuel. [m³]
 * @param volume of all the fuel that takes part [m³]
 * @param share of dye by volume, as its label states it [-]
 * @returns the dose
 * @source common practice, no published source: the label of the dye rules
 */
export function dyeDose(volume: number, share: number): number {
  return volume * share
}

/**
 * Dye left after burning down and filling up a number of times, mixed well each time. [-]
 * @param left fuel in tank and circuit before each fill [m³]
 * @param full fuel in tank and circuit after it [m³], above 0
 * @param fills number of fills [-], 0 or more
 * @returns concentration over the first one, (left/full)^fills
 * @source well-mixed-balance
 */
export function dyeLeft(left: number, full: number, fills: number): number {
  return (left / full) ** fills
}

/**
 * Fills after which no more than a share of the dye is left. [-]
 * @param left fuel in tank and circuit before each fill [m³], above 0 and below full
 * @param full fuel in tank and circuit after it [m³]
 * @param share of the first concentration at which it no longer disturbs [-], above 0 to below 1
 * @returns a whole number
 * @source well-mixed-balance
 */
export function fillsUntil(left: number, full: number, share: number): number {
  return Math.ceil(Math.log(share) / Math.log(left / full) - 1e-9)
}
