/** An opening so fine loads twice as fast as a very fine one half as wide. [m] */
const FINE = 50e-6
/** In a fine filter wax doubles the resistance for each of these below the cloud point. [K] Common practice. */
const DOUBLES = 2
/** A filter that is waxed through. [-] */
const MOST = 5000

/**
 * Resistance of a filter's elements by wax over that without: it doubles every 2 K below the cloud point in a fine
 * medium, slower in a coarse one. Our own law; the true one hangs on the fuel and on how long it runs.
 * @param cloudPoint [K]
 * @param temperature of the fuel before the filter [K]
 * @param opening of the medium [m]
 * @returns the ratio [-], 1 from the cloud point up
 * @source common practice, no published source
 */
export function waxedResistance(cloudPoint: number, temperature: number, opening: number): number {
  const below = cloudPoint - temperature
  if (below <= 0) return 1
  return Math.min(MOST, 2 ** (below / (DOUBLES * (1 + opening / FINE))))
}
