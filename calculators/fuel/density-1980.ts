import { expansionCoefficient, type ExpansionConstants } from './density-groups.ts'

/** [K] */
export const FIFTEEN_CELSIUS = 288.15

/**
 * Factor from volume at a temperature to volume at 15 °C, exp[−αΔt(1 + 0.8αΔt)], Δt = t − 15 °C: Tables 54A, 54B and
 * 54D. The tables print it to four decimals. [-]
 * @param density15 density at 15 °C [kg/m³], within the row's limits
 * @param temperature [K], about 255 to 423 (−18 to 150 °C); outside it is an extrapolation
 * @param constants row of the 1980 table [-]
 * @returns density at the temperature over density at 15 °C
 * @source astm-d1250 (1980)
 */
export function volumeFactor1980(
  density15: number,
  temperature: number,
  constants: ExpansionConstants,
): number {
  const alpha = expansionCoefficient(density15, constants)
  const difference = temperature - FIFTEEN_CELSIUS
  return Math.exp(-alpha * difference * (1 + 0.8 * alpha * difference))
}
