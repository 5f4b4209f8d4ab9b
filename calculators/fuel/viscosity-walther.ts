/** 1 mm²/s in m²/s. The constants of the equation were fitted to mm²/s. */
const SQUARE_MILLIMETRE = 1e-6

/** Values of ν below which Z is not above 1, where its double logarithm ends. Found from Z(ν) = 1. */
export const LOWEST_VISCOSITY = 0.115274 * SQUARE_MILLIMETRE

/** The short form was fitted between these. [m²/s] */
export const WALTHER_RANGE = { minimum: 0.21 * SQUARE_MILLIMETRE, maximum: 2e7 * SQUARE_MILLIMETRE }

export interface ViscosityPoint {
  /** [K] */
  readonly temperature: number
  /** [m²/s] */
  readonly kinematicViscosity: number
}

/** log log Z = intercept − slope · log T, with T in kelvin and logarithms to base 10. */
export interface WaltherLine {
  /** A in the standard. [-] */
  readonly intercept: number
  /** B in the standard. [-] */
  readonly slope: number
}

/** The low-viscosity term of Z and its derivative, for ν in mm²/s. */
function lowViscosityTerm(viscosity: number): { value: number; derivative: number } {
  const value = Math.exp(-1.47 - 1.84 * viscosity - 0.51 * viscosity * viscosity)
  return { value, derivative: -(1.84 + 1.02 * viscosity) * value }
}

/**
 * Z of the viscosity-temperature equation: ν + 0.7 + exp(−1.47 − 1.84ν − 0.51ν²), ν in mm²/s. [-]
 * @param kinematicViscosity [m²/s], 0.21e-6 to 20 (2e7 mm²/s); outside it is an extrapolation of the fit
 * @returns Z; it grows with viscosity throughout
 * @source astm-d341 (short form)
 */
export function waltherZ(kinematicViscosity: number): number {
  const viscosity = kinematicViscosity / SQUARE_MILLIMETRE
  return viscosity + 0.7 + lowViscosityTerm(viscosity).value
}

/**
 * Kinematic viscosity whose Z is given: the exact root, so that a round trip returns what it started from. [m²/s]
 * The inverse printed in the standard is a fit to this root and departs from it by up to 3e-4.
 * @param z Z of the equation [-], above 0.92993 (Z at zero viscosity)
 * @returns the viscosity; not a number below that limit
 * @source astm-d341 (short form, solved instead of the printed approximate inverse)
 */
export function viscosityFromWaltherZ(z: number): number {
  if (!(z >= 0.7 + Math.exp(-1.47))) return NaN
  // Z is increasing and convex and this start lies right of the root: Newton comes down on it without overshoot.
  let viscosity = z - 0.7
  for (let iteration = 0; iteration < 60; iteration++) {
    const term = lowViscosityTerm(viscosity)
    const step = (viscosity + 0.7 + term.value - z) / (1 + term.derivative)
    viscosity -= step
    // Half the square of a step is more than what is left after it.
    if (step * step <= 1e-16 * viscosity) break
  }
  return viscosity * SQUARE_MILLIMETRE
}

/**
 * W of the equation, log log Z: it falls on a straight line against log T, and it blends by shares. [-]
 * @param kinematicViscosity [m²/s], above LOWEST_VISCOSITY
 * @returns W; not a number below that limit
 * @source astm-d341 (short form), astm-d7152
 */
export function doubleLogarithm(kinematicViscosity: number): number {
  return Math.log10(Math.log10(waltherZ(kinematicViscosity)))
}

/**
 * Kinematic viscosity whose W = log log Z is given. [m²/s]
 * @param w W of the equation [-]
 * @returns the viscosity; infinite where Z leaves the range of numbers
 * @source astm-d341 (short form, solved exactly)
 */
export function viscosityFromDoubleLogarithm(w: number): number {
  const z = Math.exp(Math.LN10 * Math.exp(Math.LN10 * w))
  return Number.isFinite(z) ? viscosityFromWaltherZ(z) : Infinity
}

/**
 * The line through two measured points.
 * @param first temperature [K] and kinematic viscosity [m²/s] of one point
 * @param second the same of the other point [K], [m²/s]; its temperature must differ
 * @returns intercept A and slope B; not numbers for equal temperatures or a viscosity under LOWEST_VISCOSITY
 * @source astm-d341
 */
export function lineThroughPoints(first: ViscosityPoint, second: ViscosityPoint): WaltherLine {
  const rise = doubleLogarithm(first.kinematicViscosity) - doubleLogarithm(second.kinematicViscosity)
  const slope = rise / Math.log10(second.temperature / first.temperature)
  return lineThroughPoint(first, slope)
}

/**
 * The line through one measured point with a known slope.
 * @param point temperature [K] and kinematic viscosity [m²/s]
 * @param slope B of the equation [-]; petroleum fuels lie near 3 to 5
 * @returns intercept A and slope B
 * @source astm-d341
 */
export function lineThroughPoint(point: ViscosityPoint, slope: number): WaltherLine {
  const intercept = doubleLogarithm(point.kinematicViscosity) + slope * Math.log10(point.temperature)
  return { intercept, slope }
}

/**
 * Kinematic viscosity on the line at a temperature. [m²/s]
 * @param line intercept A and slope B [-]
 * @param temperature [K], above 0; the standard's own range runs from the cloud point to the initial boiling point
 * @returns the viscosity; infinite where the line leaves the range of numbers, as it does far below freezing
 * @source astm-d341
 */
export function viscosityOnLine(line: WaltherLine, temperature: number): number {
  return viscosityFromDoubleLogarithm(line.intercept - line.slope * Math.log10(temperature))
}

/**
 * Temperature at which the line reaches a viscosity, 10^((A − log log Z)/B). [K]
 * @param line intercept A and slope B [-]; the slope must not be zero
 * @param kinematicViscosity wanted viscosity [m²/s], 0.21e-6 to 20; outside it is an extrapolation of the fit
 * @returns the temperature; infinite, zero or not a number where the line never comes to that viscosity
 * @source astm-d341
 */
export function temperatureOnLine(line: WaltherLine, kinematicViscosity: number): number {
  return 10 ** ((line.intercept - doubleLogarithm(kinematicViscosity)) / line.slope)
}
