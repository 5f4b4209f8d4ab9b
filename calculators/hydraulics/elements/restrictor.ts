import type { Law } from '../network/net.ts'
import { dropShare, restrictorCrossing, type Restrictor } from '../restrictor.ts'
import type { Liquid } from './liquid.ts'

export interface RestrictorElement {
  readonly restrictor: Restrictor
  /** [m], above 0 */
  readonly bore: number
  /** Inside diameter before it. [m], above the bore */
  readonly pipe: number
}

/**
 * Law of a fixed orifice or drilled restrictor, laminar to turbulent in one smooth curve, alike both ways.
 * @param element its two constants [-], bore [m], pipe [m]
 * @param liquid density [kg/m³], kinematic viscosity [m²/s]
 * @returns the law, the drop of restrictorDrop
 * @source orifice-smooth-transition, common practice (the coefficients)
 */
export function restrictorLaw(element: RestrictorElement, liquid: Liquid): Law {
  const { restrictor, bore, pipe } = element
  const { density, kinematicViscosity } = liquid
  const crossing = restrictorCrossing(restrictor, bore, pipe, density, kinematicViscosity)
  return (flow, into) => {
    const share = Math.abs(flow) / crossing.flow
    const x = dropShare(share)
    const drop = crossing.drop * x
    into.drop = flow < 0 ? -drop : drop
    // From x⁴/(1 + x²) = share⁴: 1 at no flow, then the power goes from one to two.
    const straight = share === 0 ? 1 : x / share
    into.slope = ((crossing.drop / crossing.flow) * straight * (2 + 2 * x * x)) / (2 + x * x)
  }
}
