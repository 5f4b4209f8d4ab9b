import { plateCoefficient, type Plate } from './orifice-plate.ts'

/** Newton is not needed: C hardly moves with the flow, and each round gains two digits or more. */
const ROUNDS = 40

/**
 * Flow of a liquid through an orifice: C/√(1 − β⁴) · (π/4)d² · √(2Δp/ρ). [m³/s]
 * @param coefficient C [-]
 * @param bore d [m]
 * @param pipe inside diameter [m], above the bore
 * @param drop Δp between the tappings [Pa], 0 or more
 * @param density ρ [kg/m³], above 0
 * @returns the volume flow
 * @source iso-5167-2
 */
export function orificeFlow(
  coefficient: number,
  bore: number,
  pipe: number,
  drop: number,
  density: number,
): number {
  const approach = 1 / Math.sqrt(1 - (bore / pipe) ** 4)
  return coefficient * approach * (Math.PI / 4) * bore ** 2 * Math.sqrt((2 * drop) / density)
}

/**
 * Drop of a liquid across an orifice, the inverse of orificeFlow. [Pa]
 * @param coefficient C [-], above 0
 * @param bore d [m]
 * @param pipe inside diameter [m], above the bore
 * @param flow [m³/s]
 * @param density ρ [kg/m³]
 * @returns the drop between the tappings
 * @source iso-5167-2
 */
export function orificeDrop(
  coefficient: number,
  bore: number,
  pipe: number,
  flow: number,
  density: number,
): number {
  return (flow / orificeFlow(coefficient, bore, pipe, 1, density)) ** 2
}

/**
 * Reynolds number on a diameter. [-]
 * @param flow [m³/s]
 * @param diameter [m], above 0
 * @param kinematicViscosity [m²/s], above 0
 * @returns 4Q/(π d ν)
 * @source hagen-poiseuille (definition)
 */
export function reynoldsOn(flow: number, diameter: number, kinematicViscosity: number): number {
  return (4 * flow) / (Math.PI * diameter * kinematicViscosity)
}

/**
 * Flow through an ISO 5167-2 plate from its drop, C and Reynolds number agreeing with each other. [m³/s]
 * @param plate bore [m], pipe [m], tappings
 * @param drop between the tappings [Pa], above 0
 * @param density [kg/m³]
 * @param kinematicViscosity [m²/s]
 * @returns the flow; outside the standard's limits an extrapolation
 * @source iso-5167-2
 */
export function plateFlow(plate: Plate, drop: number, density: number, kinematicViscosity: number): number {
  const { bore, pipe } = plate
  let flow = orificeFlow(0.6, bore, pipe, drop, density)
  for (let round = 0; round < ROUNDS; round++) {
    const reynolds = reynoldsOn(flow, pipe, kinematicViscosity)
    flow = orificeFlow(plateCoefficient(plate, reynolds), bore, pipe, drop, density)
  }
  return flow
}
