/** [K] to [°F], in which the rule is stated. */
const fahrenheit = (temperature: number) => temperature * 1.8 - 459.67

/**
 * Flash index of a liquid, 10^(−F/100) with F its flash point in °F. It blends by shares of volume, since it stands
 * for the vapour pressure that the liquid adds. [-]
 * @param flashPoint [K]; stated for lubricating oils and their blends
 * @returns the index; it falls as the flash point rises
 * @source thiele-1927
 */
export function flashIndex(flashPoint: number): number {
  return 10 ** (-fahrenheit(flashPoint) / 100)
}

/**
 * Flash point of a blend of two liquids. [K]
 * @param first flash point of the first liquid [K]
 * @param second flash point of the second liquid [K]
 * @param share of the second liquid, by volume [-], 0 to 1
 * @returns the flash point, between the two and nearer to the lower one
 * @source thiele-1927
 */
export function flashPointOfBlend(first: number, second: number, share: number): number {
  const blended = (1 - share) * flashIndex(first) + share * flashIndex(second)
  return (-100 * Math.log10(blended) + 459.67) / 1.8
}

/**
 * Share of the second liquid that brings the flash point of the first one down to a given value. [-]
 * @param first flash point of the first liquid [K]
 * @param second flash point of the second liquid [K], lower than the first
 * @param blend flash point of the blend [K]
 * @returns the share by volume; below 0 or above 1 when the blend is not between the two
 * @source thiele-1927
 */
export function shareByFlashPoint(first: number, second: number, blend: number): number {
  const start = flashIndex(first)
  return (flashIndex(blend) - start) / (flashIndex(second) - start)
}
