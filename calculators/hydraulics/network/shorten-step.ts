import { evaluate, type Pass } from './iteration.ts'
import type { Law } from './net.ts'
import type { PreparedNet } from './prepare.ts'

/** A step may overshoot by up to this share of its first descent: Newton mends that faster than a search would. [-] */
const OVERSHOOT = 1
/** From this iteration on no overshoot is let pass, so that the energy falls with every step, whatever the kinks. */
const STRICT_FROM = 12
/** A step is too short where the energy still falls by more than this share of the first descent. [-] */
const TOO_SHORT = 0.9
/** A strict search aims a little before the lowest point. [-] */
const AIM_BEFORE = 0.2
/** Every trial takes at least this share off the bracket. [-] */
const LEAST_CUT = 0.05
const MOST_TRIALS = 40

/**
 * Takes back a part of a step that went too far. Along a step of balanced flows the energy of a net is convex, since
 * every law rises; its derivative comes with each evaluation, so the lowest point is found between two bounds.
 * @param prepared from prepareNet, with the step in it
 * @param laws one for each link, from Law
 * @param flows by link after the whole step [m³/s], changed in place
 * @param pass what evaluate and changeFlows found, from Pass; filled in again
 * @param balanced whether the flows were balanced before the step [-]; else only laws without a finite value shorten it
 * @param iteration how many went before [-]
 * @returns share of the step that is left [-], 1 for all of it; 0 when no part of it gives finite numbers
 * @source common practice (line search on a convex function by its derivative)
 */
export function shortenStep(
  prepared: PreparedNet,
  laws: readonly Law[],
  flows: Float64Array,
  pass: Pass,
  balanced: boolean,
  iteration: number,
): number {
  const descent = balanced ? pass.descent : Infinity
  const strict = iteration >= STRICT_FROM
  const allowed = strict ? 0 : OVERSHOOT * descent
  const aim = strict ? -AIM_BEFORE * descent : 0
  const far = () => !(pass.along <= allowed)
  if (!far()) return 1
  const { step } = prepared
  let share = 1
  let [low, lowValue] = [0, -descent]
  let [high, highValue] = [1, pass.along]
  let moved: 'low' | 'high' | undefined
  for (let trial = 0; trial < MOST_TRIALS; trial++) {
    const width = high - low
    const straight = (width * (aim - lowValue)) / (highValue - lowValue)
    const cut = Number.isFinite(straight) ? straight : width / 2
    const next = low + Math.min(Math.max(cut, LEAST_CUT * width), (1 - LEAST_CUT) * width)
    for (let link = 0; link < flows.length; link++)
      flows[link] = (flows[link] as number) + (next - share) * (step[link] as number)
    share = next
    evaluate(prepared, laws, flows, pass)
    if (far()) {
      ;[high, highValue] = [share, pass.along]
      // A bound that stays twice counts half: else a bent curve would bring the other on by small steps only.
      if (moved === 'high') lowValue = aim + (lowValue - aim) / 2
      moved = 'high'
    } else if (pass.along < -TOO_SHORT * descent) {
      ;[low, lowValue] = [share, pass.along]
      if (moved === 'low') highValue = aim + (highValue - aim) / 2
      moved = 'low'
    } else return share
  }
  if (Number.isFinite(pass.along)) return share
  for (let link = 0; link < flows.length; link++)
    flows[link] = (flows[link] as number) - share * (step[link] as number)
  evaluate(prepared, laws, flows, pass)
  return 0
}
