import { volumeFactor1980, FIFTEEN_CELSIUS } from '../fuel/density-1980.ts'
import { groupAt, GROUPS_1980, groupsOf } from '../fuel/density-groups.ts'

/** Density of water at 60 °F. [kg/m³] */
const WATER = 999.016
const ZERO_CELSIUS = 273.15
/** J/(kg·K) for each cal/(g·°C). */
const CALORIE = 4186.8

/** Up to 400 °F the equation is good to ±4 %. [K] @source nbs-mp97 (from memory) */
export const HEAT_RANGE = { minimum: 255.37, maximum: 477.59 }

/**
 * Root of the relative density at 60 °F, in which the equations are written; the density at 15 °C stands for that at
 * 60 °F, which changes the heat by 0.03 %.
 */
const rootOfDensity = (density15: number) => Math.sqrt(density15 / WATER)

/**
 * Specific heat of a petroleum liquid after Cragoe, (0.403 + 0.00081 t)/√d in cal/(g·°C). [J/(kg·K)]
 * @param density15 density at 15 °C [kg/m³], 700 to 1000
 * @param temperature [K], 255 to 478; outside it is an extrapolation
 * @returns the specific heat, ±4 %
 * @source nbs-mp97 (from memory)
 */
export function specificHeat(density15: number, temperature: number): number {
  return (CALORIE * (0.403 + 0.00081 * (temperature - ZERO_CELSIUS))) / rootOfDensity(density15)
}

/**
 * Heat content against 0 °C, the integral of specificHeat. [J/kg]
 * @param density15 density at 15 °C [kg/m³]
 * @param temperature [K]
 * @returns the heat content; negative below 0 °C
 * @source nbs-mp97 (from memory)
 */
export function heatContent(density15: number, temperature: number): number {
  const t = temperature - ZERO_CELSIUS
  return (CALORIE * t * (0.403 + 0.000405 * t)) / rootOfDensity(density15)
}

/**
 * Temperature at a heat content, the exact inverse of heatContent. [K]
 * @param density15 density at 15 °C [kg/m³]
 * @param content against 0 °C [J/kg]; less than −4e5, where no fuel is left to speak of, has no answer
 * @returns the temperature; not a number below that
 * @source nbs-mp97 (from memory)
 */
export function temperatureOfContent(density15: number, content: number): number {
  const c = (content * rootOfDensity(density15)) / CALORIE
  return ZERO_CELSIUS + (2 * c) / (0.403 + Math.sqrt(0.403 ** 2 + 4 * 0.000405 * c))
}

/**
 * Density of a refined fuel at a temperature, by the tables of 1980. [kg/m³]
 * @param density15 density at 15 °C [kg/m³], 653 to 1075; outside, the nearest group's expansion is taken
 * @param temperature [K], 223 to 423; outside it is an extrapolation
 * @returns the density
 * @source astm-d1250 (1980)
 */
export function fuelDensity(density15: number, temperature: number): number {
  return densityLine(density15)(temperature)
}

/**
 * Density of one refined fuel at any temperature, its row of the tables looked up once: fuelDensity for many
 * temperatures. [kg/m³] at [K]
 * @param density15 density at 15 °C [kg/m³], as for fuelDensity
 * @returns the density by temperature
 * @source astm-d1250 (1980)
 */
export function densityLine(density15: number): (temperature: number) => number {
  const row = groupAt(density15, groupsOf('refined', GROUPS_1980))
  return (temperature) =>
    temperature === FIFTEEN_CELSIUS ? density15 : density15 * volumeFactor1980(density15, temperature, row)
}

/**
 * Hydrogen-to-carbon mass ratio of a petroleum liquid: hydrogen 26 − 15·d in per cent, the rest carbon. [-]
 * @param density15 density at 15 °C [kg/m³], 700 to 1000
 * @returns the mass ratio; sulfur, oxygen and nitrogen are left out
 * @source nbs-mp97 (from memory)
 */
export function hydrogenToCarbon(density15: number): number {
  const hydrogen = (26 - (15 * density15) / WATER) / 100
  return hydrogen / (1 - hydrogen)
}
