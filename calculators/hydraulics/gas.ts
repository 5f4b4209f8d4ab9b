/** Air's constant: Ostwald coefficient at 273 K in a liquid of relative density 0.85. [-] */
const AIR_AT_ZERO = 0.098

/**
 * Ostwald coefficient of air in a petroleum liquid: volume of gas, at its own pressure and temperature, in one volume
 * of liquid. It does not change with pressure. [-]
 * @param temperature [K], 228 to 423
 * @param densityAt15 of the liquid [kg/m³], 630 to 900
 * @returns 7.70·L·(0.980 − d), with L = 0.300·exp[0.639·(700 − T)/T·ln(3.333·L₀)]
 * @source astm-d2779 (scope seen, equation and constants from memory)
 */
export function airSolubility(temperature: number, densityAt15: number): number {
  const atReference =
    0.3 * Math.exp(((0.639 * (700 - temperature)) / temperature) * Math.log(3.333 * AIR_AT_ZERO))
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

/** Gas constant of dry air. [J/(kg·K)] */
const AIR_CONSTANT = 287.05
/** Ratio of the specific heats of air. [-] */
const GAMMA = 1.4

/** Outlet over inlet pressure at and below which the air in the hole moves at the speed of sound. [-] */
export const CRITICAL_RATIO = (2 / (GAMMA + 1)) ** (GAMMA / (GAMMA - 1))

/**
 * Volume of a mass of air, ideal gas. [m³] for [kg], [m³/s] for [kg/s]
 * @param mass of air [kg] or its flow [kg/s]
 * @param pressure absolute [Pa], above 0
 * @param temperature [K]
 * @returns the volume, or the volume flow
 * @source iso-2533 (gas constant of dry air)
 */
export function airVolume(mass: number, pressure: number, temperature: number): number {
  return (mass * AIR_CONSTANT * temperature) / pressure
}

/**
 * Air through a small hole, isentropic to the narrowest place and choked below the critical ratio. [kg/s]
 * @param area of the hole [m²]
 * @param coefficient of discharge [-], about 0.6 for a sharp edge, 0.97 for a rounded one
 * @param before absolute pressure before the hole [Pa]
 * @param behind absolute pressure behind it [Pa], 0 to the pressure before; no flow where it is not lower
 * @param temperature of the air before the hole [K]
 * @returns the mass flow; in a hole so fine that the air creeps it is less
 * @source air-orifice-table (agrees with its rows), common practice (isentropic flow of an ideal gas)
 */
export function airThroughHole(
  area: number,
  coefficient: number,
  before: number,
  behind: number,
  temperature: number,
): number {
  if (behind >= before) return 0
  const ratio = Math.max(behind / before, CRITICAL_RATIO)
  const expansion = ratio ** (2 / GAMMA) - ratio ** ((GAMMA + 1) / GAMMA)
  const speedTerm = ((2 * GAMMA) / (GAMMA - 1)) * expansion
  return coefficient * area * before * Math.sqrt(speedTerm / (AIR_CONSTANT * temperature))
}
