import { LAMINAR_TO, TURBULENT_FROM } from './friction.ts'

/** Of Swamee and Jain: 1/√f = −2 log₁₀(ε/3.7D + 5.74/Re^0.9). */
export const SWAMEE_JAIN = { number: 5.74, power: 0.9, perFold: 2 / Math.LN10 } as const

/** What a Darcy factor rests on, worked out once for a pipe, so that a solver finds it and its slope without iteration. */
export interface ExplicitFriction {
  /** ε/3.7D, the part of the wall in the turbulent factor. [-] */
  readonly wall: number
  /** Factor between laminar and turbulent flow, c0 + c1·t + c2·t² + c3·t³ with t = Re/2000. [-] */
  readonly c0: number
  readonly c1: number
  readonly c2: number
  readonly c3: number
}

/**
 * Constants of an explicit Darcy factor: 64/Re to Re 2000, Swamee and Jain from Re 4000, between them the cubic in Re
 * that meets both in value and slope. No agreed factor exists between: the join serves a solver, it is not a prediction. [-]
 * @param relativeRoughness roughness over inside diameter [-], 0 to 0.05
 * @returns the constants; from Re 4000 on the factor is within 3.5 % of Colebrook and White
 * @source common practice (Swamee and Jain 1976, from memory; the join is that of public network solvers)
 */
export function explicitFriction(relativeRoughness: number): ExplicitFriction {
  const { number, power, perFold } = SWAMEE_JAIN
  const wall = relativeRoughness / 3.7
  const smooth = number * TURBULENT_FROM ** -power
  const root = -perFold * Math.log(wall + smooth)
  const end = root ** -2
  // Slopes over t; the cubic runs from t = 1 to t = 2.
  const startSlope = -64 / LAMINAR_TO
  const endSlope =
    (-2 * root ** -3 * perFold * power * smooth) / ((wall + smooth) * (TURBULENT_FROM / LAMINAR_TO))
  const start = 64 / LAMINAR_TO
  const rise = end - start
  // With u = t − 1: start + startSlope·u + square·u² + cube·u³.
  const square = 3 * rise - 2 * startSlope - endSlope
  const cube = startSlope + endSlope - 2 * rise
  return {
    wall,
    c0: start - startSlope + square - cube,
    c1: startSlope - 2 * square + 3 * cube,
    c2: square - 3 * cube,
    c3: cube,
  }
}
