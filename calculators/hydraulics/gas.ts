/** Air's constant: Ostwald coefficient at 273 K in a liquid of relative density 0.85. [-] */
const AIR_AT_ZERO = 0.098
const LOGARITHM_AT_ZERO = Math.log(3.333 * AIR_AT_ZERO)

/**
 * Ostwald coefficient of air in a petroleum liquid: volume of gas, at its own pressure and temperature, in one volume
 * of liquid. It does not change with pressure. [-]
 * @param temperature [K], 228 to 423
 * @param densityAt15 of the liquid [kg/m³], 630 to 900
 * @returns 7.70·L·(0.980 − d), with L = 0.300·exp[0.639·(700 − T)/T·ln(3.333·L₀)]
 * @source astm-d2779 (scope seen, equation and constants from memory)
 */
export function airSolubility(temperature: number, densityAt15: number): number {
  const atReference = 0.3 * Math.exp(((0.639 * (700 - temperature)) / temperature) * LOGARITHM_AT_ZERO)
  return 7.7 * atReference * (0.98 - densityAt15 / 1000)
}

/**
 * Free gas that comes out of a liquid when its pressure falls, all of the excess released, ideal gas. [-]
 * @param solubility Ostwald coefficient [-]
 * @param saturation absolute pressure at which the liquid took up its gas [Pa]
 * @param pressure absolute pressure now [Pa], above 0
 * @returns volume of free gas, at the pressure of now, for one volume of liquid; 0 when the pressure is not lower
 * @source hicks-calculations (table 3, which this agrees with within a point), astm-d2779
 */
export function gasReleased(solubility: number, saturation: number, pressure: number): number {
  return (solubility * Math.max(0, saturation - pressure)) / pressure
}

/**
 * Gas that was carried as bubbles, grown by the fall of pressure. [-]
 * @param share of the mixture by volume at the first pressure [-], 0 to below 1
 * @param first absolute pressure at which the share was stated [Pa]
 * @param pressure absolute pressure now [Pa], above 0
 * @returns volume of gas, at the pressure of now, for one volume of liquid
 * @source hicks-calculations (table 3)
 */
export function gasGrown(share: number, first: number, pressure: number): number {
  return ((share / (1 - share)) * first) / pressure
}

/**
 * Share of a pump's displacement that is still filled with liquid. [-]
 * @param gas volume of gas for one volume of liquid at the inlet [-], 0 or more
 * @returns 1/(1 + gas)
 * @source hicks-calculations (table 3)
 */
export function liquidShare(gas: number): number {
  return 1 / (1 + gas)
}
