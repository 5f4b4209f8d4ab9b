import type { Law } from '../network/net.ts'

/**
 * A law as one of another measure of the flow, with the lift of an element whose two ends lie at different heights.
 * @param law friction alone, from Law
 * @param scale flow that the law counts, over that of the new measure [-], above 0
 * @param lift ρ·g·rise of the end over the start, from columnPressure [Pa]
 * @returns the law of the flow in the new measure, with the lift added
 * @source common practice (chain rule)
 */
export function liftedLaw(law: Law, scale: number, lift: number): Law {
  return (flow, into) => {
    law(flow * scale, into)
    into.drop += lift
    into.slope *= scale
  }
}
