/** Distillation of a middle distillate: temperatures at which 10, 50 and 90 % by volume have come over. */
export interface Distillation {
  /** [K] */
  readonly t10: number
  /** [K] */
  readonly t50: number
  /** [K] */
  readonly t90: number
}

const ICE_POINT = 273.15
const GRAM_PER_MILLILITRE = 1000

/**
 * B of procedure A, exp[−3.5(D − 0.85)] − 1 with D in g/mL: above 0 for fuel lighter than 850 kg/m³. [-]
 * @param density15 density at 15 °C [kg/m³], above 0
 * @returns B
 * @source astm-d4737
 */
export function densityTerm(density15: number): number {
  return Math.expm1(-3.5 * (density15 / GRAM_PER_MILLILITRE - 0.85))
}

/**
 * Calculated cetane index by four variables, procedure A. One public page prints +0.420B in the third term; the
 * standard, other pages and the standard's own consistency have −0.420B. [-]
 * @param density15 density at 15 °C [kg/m³]
 * @param distillation recovery temperatures [K], corrected to standard atmospheric pressure
 * @returns the index; correlated from 32.5 to 56.5 cetane number
 * @source astm-d4737 (procedure A)
 */
export function cetaneIndexA(density15: number, distillation: Distillation): number {
  const b = densityTerm(density15)
  const t10 = distillation.t10 - ICE_POINT - 215
  const t50 = distillation.t50 - ICE_POINT - 260
  const t90 = distillation.t90 - ICE_POINT - 310
  const linear = 0.0892 * t10 + (0.131 + 0.901 * b) * t50 + (0.0523 - 0.42 * b) * t90
  return 45.2 + linear + 0.00049 * (t10 ** 2 - t90 ** 2) + 107 * b + 60 * b ** 2
}

/**
 * Calculated cetane index by four variables, procedure B, for diesel fuel of grade 2-D with little sulfur. [-]
 * @param density15 density at 15 °C [kg/m³]
 * @param distillation recovery temperatures [K], corrected to standard atmospheric pressure
 * @returns the index
 * @source astm-d4737 (procedure B, from memory)
 */
export function cetaneIndexB(density15: number, distillation: Distillation): number {
  const celsius = (kelvin: number) => kelvin - ICE_POINT
  const boiling =
    0.1113 * celsius(distillation.t10) +
    0.1212 * celsius(distillation.t50) +
    0.0627 * celsius(distillation.t90)
  return 309.33 - (399.9 * density15) / GRAM_PER_MILLILITRE + boiling
}

/**
 * Calculated cetane index by two variables, in the metric form. [-]
 * @param density15 density at 15 °C [kg/m³]
 * @param t50 mid-boiling temperature [K], above 0 °C, corrected to standard atmospheric pressure
 * @returns the index; not a number at 0 °C and below
 * @source astm-d976
 */
export function cetaneIndexD976(density15: number, t50: number): number {
  const density = density15 / GRAM_PER_MILLILITRE
  const boiling = t50 - ICE_POINT
  return (
    454.74 - 1641.416 * density + 774.74 * density ** 2 - 0.554 * boiling + 97.803 * Math.log10(boiling) ** 2
  )
}

/**
 * The same by the customary form, of which the metric one is a conversion; the two differ by a few tenths. Kept as
 * a check. [-]
 * @param gravity API gravity [°API]
 * @param midBoiling mid-boiling temperature [°F], above 0
 * @returns the index
 * @source astm-d976
 */
export function cetaneIndexD976Customary(gravity: number, midBoiling: number): number {
  const logarithm = Math.log10(midBoiling)
  return (
    -420.34 +
    0.016 * gravity ** 2 +
    0.192 * gravity * logarithm +
    65.01 * logarithm ** 2 -
    0.0001809 * midBoiling ** 2
  )
}
