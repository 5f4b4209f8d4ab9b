import type { SmallOpening } from './orifice-small.ts'

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
 * @returns the mass flow; in a hole so fine that the air creeps it is less, see airThroughOpening
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

/**
 * Dynamic viscosity of air by Sutherland's formula, 1.458e-6·T^1.5/(T + 110.4). [Pa·s]
 * @param temperature [K], 100 to 1900
 * @returns the viscosity, whatever the pressure
 * @source iso-2533 (formula from memory)
 */
export function airViscosity(temperature: number): number {
  return (1.458e-6 * temperature ** 1.5) / (temperature + 110.4)
}

export interface AirFlow {
  /** [kg/s] */
  readonly mass: number
  /** Share of the pressure that viscosity takes; near 1 the air creeps. [-] */
  readonly viscousShare: number
}

/**
 * Air through a pinhole or crack, where it may creep: m/m_v + (m/m_i)² = 1, with the isentropic flow m_i and the creeping
 * one m_v = (p₁² − p₂²)/(2 R T · resistance · μ) of an ideal gas at one temperature. [kg/s]
 * @param opening area [m²] and resistance to creeping flow [1/m³], from roundHole or narrowGap
 * @param coefficient of discharge in fast flow [-]
 * @param before absolute pressure before it [Pa], above 0
 * @param behind absolute pressure behind it [Pa]
 * @param temperature of the air [K]
 * @returns mass flow and the share of viscosity; exact in both limits, a smooth passage between them
 * @source air-orifice-table, sampson-1891, hagen-poiseuille, common practice (adding the two)
 */
export function airThroughOpening(
  opening: SmallOpening,
  coefficient: number,
  before: number,
  behind: number,
  temperature: number,
): AirFlow {
  const fast = airThroughHole(opening.area, coefficient, before, behind, temperature)
  if (fast === 0) return { mass: 0, viscousShare: 1 }
  const slow =
    ((before - behind) * (before + behind)) /
    (2 * AIR_CONSTANT * temperature * opening.resistance * airViscosity(temperature))
  const mass = 2 / (1 / slow + Math.sqrt(1 / slow ** 2 + 4 / fast ** 2))
  return { mass, viscousShare: mass / slow }
}
