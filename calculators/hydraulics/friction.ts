/** Flow is taken as laminar up to here and as turbulent from TURBULENT_FROM on. [-] */
export const LAMINAR_TO = 2000
export const TURBULENT_FROM = 4000

/** Newton on Colebrook–White gains digits so fast that this many steps always suffice. */
const MOST_STEPS = 30

interface FactorAndSlope {
  readonly factor: number
  /** d factor / d reynolds. */
  readonly slope: number
}

function colebrook(reynolds: number, relativeRoughness: number): FactorAndSlope {
  // Solved for x = 1/√f, in which the equation is nearly a straight line.
  const perDecade = 2 / Math.LN10
  let x = -1.8 * Math.log10((relativeRoughness / 3.7) ** 1.11 + 6.9 / reynolds)
  let inner = 0
  let steepness = 0
  for (let step = 0; step < MOST_STEPS; step++) {
    inner = relativeRoughness / 3.7 + (2.51 * x) / reynolds
    steepness = 1 + (perDecade * 2.51) / (reynolds * inner)
    const change = (x + perDecade * Math.log(inner)) / steepness
    x -= change
    if (Math.abs(change) <= 1e-15 * x) break
  }
  const slopeOfX = (perDecade * 2.51 * x) / (reynolds * reynolds * inner * steepness)
  return { factor: x ** -2, slope: -2 * x ** -3 * slopeOfX }
}

/**
 * Darcy friction factor of turbulent flow after Colebrook and White, solved to rounding:
 * 1/√f = −2 log₁₀[ε/(3.7D) + 2.51/(Re √f)]. [-]
 * @param reynolds Reynolds number on the inside diameter [-], 4000 to 1e8; below, the curve goes on without meaning
 * @param relativeRoughness roughness over inside diameter [-], 0 to 0.05
 * @returns the factor
 * @source colebrook-1939
 */
export function colebrookFactor(reynolds: number, relativeRoughness: number): number {
  return colebrook(reynolds, relativeRoughness).factor
}

/**
 * Darcy friction factor over the whole range: 64/Re to Re 2000, Colebrook–White from Re 4000, between them a cubic in Re
 * of our own that meets both in value and slope. Between 2000 and 4000 no agreed factor exists: the flow itself changes
 * from moment to moment. The join serves a solver that needs a smooth curve; it is not a prediction. [-]
 * @param reynolds Reynolds number on the inside diameter [-], above 0 to 1e8
 * @param relativeRoughness roughness over inside diameter [-], 0 to 0.05
 * @returns the factor; infinite at Re 0, where the pressure drop itself is nil
 * @source colebrook-1939 (turbulent), hagen-poiseuille (laminar), common practice (the join)
 */
export function darcyFactor(reynolds: number, relativeRoughness: number): number {
  if (reynolds <= LAMINAR_TO) return 64 / reynolds
  if (reynolds >= TURBULENT_FROM) return colebrookFactor(reynolds, relativeRoughness)
  const width = TURBULENT_FROM - LAMINAR_TO
  const t = (reynolds - LAMINAR_TO) / width
  const start: FactorAndSlope = { factor: 64 / LAMINAR_TO, slope: -64 / LAMINAR_TO ** 2 }
  const end = colebrook(TURBULENT_FROM, relativeRoughness)
  const u = 1 - t
  return (
    u * u * ((1 + 2 * t) * start.factor + t * width * start.slope) +
    t * t * ((1 + 2 * u) * end.factor - u * width * end.slope)
  )
}
