/** Density of water at 60 °F, to which relative densities refer. [kg/m³] @source astm-d1250 */
const WATER_AT_60F = 999.016
const ZERO_CELSIUS = 273.15
/** 1 cal/(g·°C), which is also 1 Btu/(lb·°F). [J/(kg·K)] */
const CALORIE = 4186.8

/** Where the specific heat is stated, to 400 °F. [K] @source nbs-mp97 (from memory) */
export const SPECIFIC_HEAT_RANGE = { minimum: 255, maximum: 478 }

/**
 * Relative density 60/60 °F from the density at 15 °C; the third of a degree between them is left out. [-]
 * @param density15 density at 15 °C [kg/m³]
 * @returns the relative density, 0.04 % high at most
 * @source astm-d1250
 */
export function relativeDensity(density15: number): number {
  return density15 / WATER_AT_60F
}

/**
 * Specific heat of a petroleum liquid after Cragoe: 4186.8·(0.403 + 0.00081·t)/√d. [J/(kg·K)]
 * @param density15 density at 15 °C [kg/m³], 700 to 1000
 * @param temperature [K], 255 to 478; outside it is an extrapolation
 * @returns the specific heat, within 4 % as the source says
 * @source nbs-mp97 (from memory)
 */
export function petroleumSpecificHeat(density15: number, temperature: number): number {
  const celsius = temperature - ZERO_CELSIUS
  return (CALORIE * (0.403 + 0.00081 * celsius)) / Math.sqrt(relativeDensity(density15))
}

/**
 * Hydrogen-to-carbon mass ratio of a petroleum liquid: hydrogen 26 − 15·d in per cent, the rest carbon. [-]
 * @param density15 density at 15 °C [kg/m³], 700 to 1000
 * @returns the mass ratio; sulfur, oxygen and nitrogen are left out
 * @source nbs-mp97 (from memory)
 */
export function hydrogenToCarbon(density15: number): number {
  const hydrogen = (26 - 15 * relativeDensity(density15)) / 100
  return hydrogen / (1 - hydrogen)
}
