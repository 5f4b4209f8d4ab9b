import type { Law } from '../network/net.ts'

/**
 * Law of a part whose drop is one term with the flow and one with its square.
 * @param linear [Pa·s/m³], 0 or more
 * @param quadratic [Pa·s²/m⁶], 0 or more; not both 0
 * @returns linear·q + quadratic·q|q|
 * @source common practice (viscous and inertial drop added)
 */
export function twoTermLaw(linear: number, quadratic: number): Law {
  return (flow, into) => {
    const inertial = quadratic * Math.abs(flow)
    into.drop = (linear + inertial) * flow
    into.slope = linear + 2 * inertial
  }
}
