import type { Law } from '../network/net.ts'
import type { SmallOpening } from '../orifice-small.ts'
import type { Liquid } from './liquid.ts'
import { twoTermLaw } from './two-terms.ts'

/**
 * Law of a leak that goes with the pressure, as through a seat or a clearance.
 * @param conductance flow for each pascal [m³/(s·Pa)], above 0
 * @returns the law q/conductance
 * @source hagen-poiseuille (laminar flow in a clearance)
 */
export function leakLaw(conductance: number): Law {
  return twoTermLaw(1 / conductance, 0)
}

/**
 * Law of a small hole or crack, the inverse of openingFlow.
 * @param opening area [m²] and resistance [1/m³], from roundHole or narrowGap
 * @param coefficient of discharge in fast flow [-], above 0 to 1
 * @param liquid density [kg/m³], kinematic viscosity [m²/s]
 * @returns the law: resistance·μ·q + ρ/2·(q/(C·A))²
 * @source sampson-1891, hagen-poiseuille, common practice (adding the two drops)
 */
export function openingLaw(opening: SmallOpening, coefficient: number, liquid: Liquid): Law {
  const { density, kinematicViscosity } = liquid
  return twoTermLaw(
    opening.resistance * density * kinematicViscosity,
    density / (2 * (coefficient * opening.area) ** 2),
  )
}
