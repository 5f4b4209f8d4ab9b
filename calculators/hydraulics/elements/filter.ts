import type { FilterResistance } from '../filter.ts'
import { filterFlow, parallelDrop } from '../filter-parallel.ts'
import type { Law } from '../network/net.ts'
import type { SmallOpening } from '../orifice-small.ts'
import type { Liquid } from './liquid.ts'
import { twoTermLaw } from './two-terms.ts'

/**
 * Law of a filter or strainer: element ∝ viscosity × loading × flow (Darcy), housing ∝ density × flow².
 * @param resistance element when clean [1/m³] and housing [1/m⁴]; not both 0
 * @param loading resistance of the element now over that when clean [-], 1 or more, finite
 * @param liquid density [kg/m³], kinematic viscosity [m²/s]
 * @returns the law, the drop of filterDrop
 * @source darcy-1856, iso-3968 (housing and element measured apart)
 */
export function filterLaw(resistance: FilterResistance, loading: number, liquid: Liquid): Law {
  const { density, kinematicViscosity } = liquid
  return twoTermLaw(resistance.element * loading * density * kinematicViscosity, resistance.housing * density)
}

/**
 * Law of a filter past which a part of the fuel finds a hole: a missing seal, a torn element.
 * @param resistance element when clean [1/m³] and housing [1/m⁴]
 * @param loading resistance of the element now over that when clean [-], 1 or more, finite
 * @param hole area [m²] and resistance [1/m³], from roundHole or narrowGap
 * @param coefficient of discharge of the hole [-]
 * @param liquid density [kg/m³], kinematic viscosity [m²/s]
 * @returns the law: the drop at which the two flows add up
 * @source darcy-1856, iso-3968, sampson-1891, hagen-poiseuille
 */
export function bypassedFilterLaw(
  resistance: FilterResistance,
  loading: number,
  hole: SmallOpening,
  coefficient: number,
  liquid: Liquid,
): Law {
  const { density } = liquid
  const dynamicViscosity = density * liquid.kinematicViscosity
  const filter = { element: resistance.element * loading, housing: resistance.housing }
  const past = { element: hole.resistance, housing: 1 / (2 * (coefficient * hole.area) ** 2) }
  /** Flow through one for each pascal more. */
  const conductance = (one: FilterResistance, drop: number) =>
    1 /
    (one.element * dynamicViscosity +
      2 * one.housing * density * filterFlow(one, drop, dynamicViscosity, density))
  return (flow, into) => {
    const drop = flow === 0 ? 0 : parallelDrop(filter, past, Math.abs(flow), dynamicViscosity, density)
    into.drop = flow < 0 ? -drop : drop
    into.slope = 1 / (conductance(filter, drop) + conductance(past, drop))
  }
}
