const SQUARE_MILLIMETRE = 1e-6

/** Below these readings the equations do not hold. [°E], [s] */
export const ENGLER_BEGINS = 1.35
export const REDWOOD_BEGINS = 34

/** In a thinner liquid the older equation for Engler draws near to the later ones and crosses them: no check. [m²/s] */
export const UBBELOHDE_BEGINS = 15e-6

/** ν = slope·x − correction/x: the form of all efflux viscometers, the correction being for the speed of the jet. */
interface EffluxLine {
  readonly slope: number
  readonly correction: number
}

const ENGLER: TwoLines = [
  { slope: 8, correction: 8.64 },
  { slope: 7.6, correction: 4 },
]
const ENGLER_1907: EffluxLine = { slope: 7.31, correction: 6.31 }
const REDWOOD: TwoLines = [
  { slope: 0.26, correction: 179 },
  { slope: 0.247, correction: 50 },
]

/**
 * Each scale has an equation for low readings and one for high ones. They are changed where they cross, 3.4 °E and
 * 99.6 s, and not at the round figures of the sources, 3.2 °E and 100 s: so a conversion has no step and turns back.
 */
type TwoLines = readonly [EffluxLine, EffluxLine]

function viscosityOf(lines: TwoLines, x: number): number {
  return Math.min(...lines.map((line) => line.slope * x - line.correction / x)) * SQUARE_MILLIMETRE
}

/** The positive root of slope·x² − ν·x − correction = 0. */
function readingOf({ slope, correction }: EffluxLine, kinematicViscosity: number): number {
  const v = kinematicViscosity / SQUARE_MILLIMETRE
  return (v + Math.sqrt(v * v + 4 * slope * correction)) / (2 * slope)
}

/**
 * Kinematic viscosity of Engler degrees: 8E − 8.64/E at first, 7.6E − 4/E from 3.4 °E on, in mm²/s. [m²/s]
 * @param degrees [°E], from 1.35 on; below, the equation is outside its range and soon gives nonsense
 * @returns the viscosity; negative below about 1.04 °E
 * @source hydraulic-institute-scales (equations from memory; within 3.5 % of that table from 7 mm²/s on)
 */
export function viscosityFromEngler(degrees: number): number {
  return viscosityOf(ENGLER, degrees)
}

/**
 * Engler degrees of a kinematic viscosity, the inverse of viscosityFromEngler. [°E]
 * @param kinematicViscosity [m²/s], above 0
 * @returns the degrees; below 1.35 outside the equations' range
 * @source hydraulic-institute-scales (equations from memory)
 */
export function englerDegrees(kinematicViscosity: number): number {
  return Math.max(...ENGLER.map((line) => readingOf(line, kinematicViscosity)))
}

/**
 * Engler degrees by the older equation of Ubbelohde, ν = 7.31E − 6.31/E in mm²/s: a check on the other. [°E]
 * @param kinematicViscosity [m²/s], from 15e-6 on
 * @returns the degrees, 3 to 7 % more than by the later equations; undefined below 15e-6, where the two cross
 * @source herschel-1917 (which treats Ubbelohde's equation; its constants from memory)
 */
export function englerByUbbelohde(kinematicViscosity: number): number | undefined {
  return kinematicViscosity < UBBELOHDE_BEGINS ? undefined : readingOf(ENGLER_1907, kinematicViscosity)
}

/**
 * Kinematic viscosity of Redwood No. 1 seconds: 0.260R − 179/R at first, 0.247R − 50/R from 100 s on, in mm²/s. [m²/s]
 * @param seconds [s], from 34 on; below, the equation is outside its range
 * @returns the viscosity; negative below about 26 s
 * @source redwood-equations
 */
export function viscosityFromRedwood(seconds: number): number {
  return viscosityOf(REDWOOD, seconds)
}

/**
 * Redwood No. 1 seconds of a kinematic viscosity, the inverse of viscosityFromRedwood. [s]
 * @param kinematicViscosity [m²/s], above 0
 * @returns the seconds; below 34 outside the equations' range
 * @source redwood-equations
 */
export function redwoodSeconds(kinematicViscosity: number): number {
  return Math.max(...REDWOOD.map((line) => readingOf(line, kinematicViscosity)))
}
