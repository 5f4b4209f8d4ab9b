import type { FilterResistance } from '../filter.ts'
import { filterFlow } from '../filter-parallel.ts'
import type { Law } from '../network/net.ts'
import { roundHole } from '../orifice-small.ts'
import type { SpringValve } from '../spring-valve.ts'
import { leakLaw } from './leak.ts'
import type { Liquid } from './liquid.ts'

/** Discharge coefficient of the wide open seat, which gives the hole its size. [-] Common practice. */
const SEAT_COEFFICIENT = 0.62

export interface SpringValveElement extends SpringValve {
  /** Flow for each pascal past the shut seat, both ways. [m³/(s·Pa)], above 0, well below fullFlow/(cracking + override) */
  readonly leakage: number
  /** Share of the seat that dirt or a bent stem holds open. [-], 0 to 1 */
  readonly stuckOpen: number
  /** Never lifts: seat leakage is all that passes. */
  readonly stuckShut: boolean
}

/** Resistance of the share that is stuck open: linear [Pa·s/m³] and quadratic [Pa·s²/m⁶], or none. */
function stuckShare(valve: SpringValveElement, liquid: Liquid): FilterResistance | undefined {
  const { fullFlow, stuckOpen } = valve
  if (stuckOpen === 0) return undefined
  const wideOpen = valve.cracking + valve.override
  const area = (stuckOpen * fullFlow) / (SEAT_COEFFICIENT * Math.sqrt((2 * wideOpen) / liquid.density))
  const hole = roundHole(Math.sqrt((4 * area) / Math.PI), 0)
  return {
    element: hole.resistance * liquid.density * liquid.kinematicViscosity,
    housing: wideOpen / (stuckOpen * fullFlow) ** 2,
  }
}

/**
 * Law of a spring valve: seat leakage below cracking, then cracking plus override in proportion to flow, then, wide
 * open, an orifice. A share that is stuck open passes fuel as an orifice of that share beside it, both ways.
 * @param valve cracking [Pa], override [Pa] above 0, full flow [m³/s] above 0, leakage [m³/(s·Pa)] above 0, stuck share [-]
 * @param liquid density [kg/m³], kinematic viscosity [m²/s]; they count in a share that is stuck open only
 * @returns the law, with kinks where the valve opens and where it is wide open; the pressure before the valve is that
 * behind it plus the drop, since the outlet pressure acts on the back of the seat
 * @source iso-4126-1 (terms), sampson-1891, common practice (the straight override line, the orifice beyond it)
 */
export function springValveLaw(valve: SpringValveElement, liquid: Liquid): Law {
  const { cracking, override, fullFlow, leakage, stuckOpen, stuckShut } = valve
  if (stuckShut) return leakLaw(leakage)
  const wideOpen = cracking + override
  const lifting = ((1 - stuckOpen) * fullFlow) / override
  const stuck = stuckShare(valve, liquid)
  const throughStuck = (pressure: number) => (stuck ? filterFlow(stuck, pressure, 1, 1) : 0)
  const opensAt = leakage * cracking + throughStuck(cracking)
  const wideFlow = leakage * wideOpen + throughStuck(wideOpen) + (1 - stuckOpen) * fullFlow
  const wideQuadratic = wideOpen / wideFlow ** 2

  return (flow, into) => {
    if (flow > wideFlow) {
      into.slope = 2 * wideQuadratic * flow
      into.drop = wideQuadratic * flow * flow
      return
    }
    // Seat and lift together go straight with the pressure, as if from a flow of their own at no pressure.
    const open = flow > opensAt
    const straight = open ? leakage + lifting : leakage
    const share = open ? flow + lifting * cracking : flow
    if (!stuck) {
      into.drop = share / straight
      into.slope = 1 / straight
      return
    }
    // What passes the stuck share, s: pressure = (a + b|s|)·s and share = straight·pressure + s.
    const first = 1 + straight * stuck.element
    const past =
      (2 * share) / (first + Math.sqrt(first * first + 4 * straight * stuck.housing * Math.abs(share)))
    const inertial = stuck.housing * Math.abs(past)
    into.drop = (stuck.element + inertial) * past
    into.slope = 1 / (straight + 1 / (stuck.element + 2 * inertial))
  }
}
