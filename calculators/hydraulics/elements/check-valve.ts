import type { Law } from '../network/net.ts'

export interface CheckValveElement {
  /** Inlet less outlet pressure at which it opens. [Pa], 0 or more */
  readonly cracking: number
  /** Drop over flow and over its square once it is open. [Pa·s/m³] above 0, [Pa·s²/m⁶] */
  readonly linear: number
  readonly quadratic: number
  /** Flow for each pascal past the shut seat, both ways. [m³/(s·Pa)], above 0 and below 1/linear */
  readonly leakage: number
}

/**
 * Law of a check or foot valve: seat leakage while shut and backwards, cracking pressure and resistance once open.
 * @param valve cracking [Pa], linear [Pa·s/m³] and quadratic [Pa·s²/m⁶] resistance, leakage [m³/(s·Pa)]
 * @returns the law, with a kink where the valve opens
 * @source common practice (shut: laminar seat leakage; open: viscous and inertial drop added)
 */
export function checkValveLaw(valve: CheckValveElement): Law {
  const { cracking, linear, quadratic, leakage } = valve
  const shut = 1 / leakage
  const opensAt = cracking * leakage
  return (flow, into) => {
    const past = flow - opensAt
    if (past <= 0) {
      into.drop = flow * shut
      into.slope = shut
    } else {
      into.drop = cracking + (linear + quadratic * past) * past
      into.slope = linear + 2 * quadratic * past
    }
  }
}
