import { columnPressure } from '../hydrostatics.ts'
import type { Law } from '../network/net.ts'

/**
 * A law with the lift of an element whose two ends lie at different heights.
 * @param law friction alone, from Law
 * @param density [kg/m³]
 * @param rise height of the end over the start [m]
 * @returns the law with ρ·g·rise added; the same law where there is no rise
 * @source nist-sp811 (standard gravity)
 */
export function withLift(law: Law, density: number, rise: number): Law {
  if (rise === 0) return law
  const lift = columnPressure(density, rise)
  return (flow, into) => {
    law(flow, into)
    into.drop += lift
  }
}
