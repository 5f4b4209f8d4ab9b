import { baseDensity, densityAt } from './density-correction.ts'
import { FIFTEEN_CELSIUS } from './density-1980.ts'

/**
 * Density of a refined fuel at a temperature from its density at 15 °C, by the 2004 procedure, the group chosen by
 * density. [kg/m³]
 * @param density15 density at 15 °C [kg/m³], about 611 to 1164
 * @param temperature [K], 223 to 423
 * @returns the density, or undefined where the standard has no product of that density
 * @source astm-d1250 (2004)
 */
export function refinedDensityAt(density15: number, temperature: number): number | undefined {
  const base = baseDensity(density15, FIFTEEN_CELSIUS, 'refined', '2004')
  return 'found' in base ? densityAt(base.found, temperature, '2004') : undefined
}
