import { doubleLogarithm, viscosityFromDoubleLogarithm } from './viscosity-walther.ts'

const SQUARE_MILLIMETRE = 1e-6

export interface BlendPart {
  /** Share of the whole; the shares of a blend add up to 1. [-] */
  readonly share: number
  /** At the temperature of the blend. [m²/s] */
  readonly kinematicViscosity: number
}

/**
 * Viscosity of a blend by the ASTM blending method: log log Z blends by shares, Z as in ASTM D341. [m²/s]
 * The standard is stated for shares by volume and finds shares by mass the more accurate for fuels.
 * @param parts share [-] and kinematic viscosity [m²/s] of each, all at one temperature, 0.21e-6 to 20
 * @returns the viscosity at that temperature; between the thinnest and the thickest part
 * @source astm-d7152 (equation from memory)
 */
export function blendByWalther(parts: readonly BlendPart[]): number {
  const w = parts.reduce((sum, part) => sum + part.share * doubleLogarithm(part.kinematicViscosity), 0)
  return viscosityFromDoubleLogarithm(w)
}

/**
 * Share of the second liquid in a blend of two that has a given viscosity, by the ASTM blending method. [-]
 * @param first viscosity of the first liquid [m²/s]
 * @param second viscosity of the second liquid [m²/s]; must differ from the first
 * @param blend viscosity of the blend [m²/s], all three at one temperature
 * @returns the share; below 0 or above 1 when the blend is not between the two
 * @source astm-d7152 (equation from memory)
 */
export function shareByWalther(first: number, second: number, blend: number): number {
  const start = doubleLogarithm(first)
  return (doubleLogarithm(blend) - start) / (doubleLogarithm(second) - start)
}

/**
 * Viscosity of a blend by the Refutas index, I = 14.534 ln ln(ν + 0.8) + 10.975, ν in mm²/s, which blends by shares
 * of mass. The two constants drop out of a blend; they are kept so that the index can be compared. [m²/s]
 * @param parts share [-] and kinematic viscosity [m²/s] of each, all at one temperature, above 0.2e-6
 * @returns the viscosity at that temperature; not a number for a part of 0.2 mm²/s or less
 * @source maples-refutas
 */
export function blendByRefutas(parts: readonly BlendPart[]): number {
  const blended = parts.reduce((sum, part) => sum + part.share * refutasIndex(part.kinematicViscosity), 0)
  return (Math.exp(Math.exp((blended - 10.975) / 14.534)) - 0.8) * SQUARE_MILLIMETRE
}

/**
 * Refutas index of a viscosity, 14.534 ln ln(ν + 0.8) + 10.975 with natural logarithms and ν in mm²/s. [-]
 * @param kinematicViscosity [m²/s], above 0.2e-6
 * @returns the index
 * @source maples-refutas
 */
export function refutasIndex(kinematicViscosity: number): number {
  return 14.534 * Math.log(Math.log(kinematicViscosity / SQUARE_MILLIMETRE + 0.8)) + 10.975
}

/**
 * Share of the second liquid in a blend of two by the logarithmic rule, ln ν blending by shares. [-]
 * @param first viscosity of the first liquid [m²/s]
 * @param second viscosity of the second liquid [m²/s]; must differ from the first
 * @param blend viscosity of the blend [m²/s], all three at one temperature
 * @returns the share; below 0 or above 1 when the blend is not between the two
 * @source chybowski-2024 (there for dynamic viscosity and shares by mass)
 */
export function shareByLogarithm(first: number, second: number, blend: number): number {
  return Math.log(blend / first) / Math.log(second / first)
}
