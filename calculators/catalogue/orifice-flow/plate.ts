import type { Notice, Refusal } from '../../calculator/types.ts'
import { orificeDrop, plateFlow, reynoldsOn } from '../../hydraulics/orifice-flow.ts'
import {
  leastPlateReynolds,
  PLATE_LIMITS,
  plateCoefficient,
  plateDoubt,
} from '../../hydraulics/orifice-plate.ts'
import { formatIn, formatNumber } from '../../quantity/format.ts'
import type { Values } from './compute.ts'

/** What every form of orifice comes to. */
export interface Found {
  readonly flow: number
  readonly drop: number
  readonly coefficient: number
  readonly low: number
  readonly high: number
  readonly reynolds: number
  readonly notices: readonly Notice[]
}

/** Under this share of the least Reynolds number the plate is refused, above it the result is marked. */
const FAR_BELOW = 0.2
/** From here on the standard states how well it knows C. */
const DOUBT_STATED_FROM = 10_000

const millimetres = (length: number) => formatIn(length, 'length', 'mm')

const TAKE_A_RESTRICTOR = 'or choose a small restrictor above, whose coefficient is a range of our own'

function outsideLimits(input: Values): Refusal | undefined {
  const ratio = input.bore / input.pipe
  const { pipe } = PLATE_LIMITS
  if (input.bore < PLATE_LIMITS.bore)
    return {
      field: 'bore',
      reason: `The bore is ${millimetres(input.bore)}, under what ISO 5167-2 covers`,
      accepted: `a bore of ${millimetres(PLATE_LIMITS.bore)} or more, ${TAKE_A_RESTRICTOR}`,
    }
  if (input.pipe < pipe.minimum || input.pipe > pipe.maximum)
    return {
      field: 'pipe',
      reason: `The line is ${millimetres(input.pipe)}, outside what ISO 5167-2 covers`,
      accepted: `${millimetres(pipe.minimum)} to ${millimetres(pipe.maximum)}, ${TAKE_A_RESTRICTOR}`,
    }
  if (ratio < PLATE_LIMITS.ratio.minimum || ratio > PLATE_LIMITS.ratio.maximum)
    return {
      field: 'bore',
      reason: `The bore is ${formatNumber(ratio, 3)} of the line, outside what ISO 5167-2 covers`,
      accepted: '0.1 to 0.75 of the bore of the line',
    }
  return undefined
}

/** A measuring plate within the standard, or why it is none. */
export function plate(input: Values): Found | { refusal: Refusal } {
  const refusal = outsideLimits(input)
  if (refusal) return { refusal }
  const { bore, pipe, tappings, density, kinematicViscosity } = input
  const shape = { bore, pipe, tappings }
  const flow = input.solve === 'drop' ? input.flow : plateFlow(shape, input.drop, density, kinematicViscosity)
  const reynolds = reynoldsOn(flow, pipe, kinematicViscosity)
  const least = leastPlateReynolds(shape)
  if (!(reynolds >= FAR_BELOW * least))
    return {
      refusal: {
        field: input.solve === 'drop' ? 'flow' : 'drop',
        reason: `The Reynolds number of the line is far under the ${formatNumber(least, 3)} from which ISO 5167-2 holds`,
        accepted: `more flow or thinner fuel, ${TAKE_A_RESTRICTOR}`,
      },
    }
  const coefficient = plateCoefficient(shape, reynolds)
  const drop = input.solve === 'drop' ? orificeDrop(coefficient, bore, pipe, flow, density) : input.drop
  const doubt = plateDoubt(bore / pipe)
  const notices: Notice[] = []
  if (reynolds < least)
    notices.push({
      grade: 'caution',
      text: `Reynolds number ${formatNumber(reynolds, 3)}: the standard begins at ${formatNumber(least, 3)}. Calibrate the plate with this fuel.`,
    })
  else if (reynolds < DOUBT_STATED_FROM)
    notices.push({
      grade: 'information',
      text: 'Under a Reynolds number of 10 000 the standard gives the coefficient a wider interval than is shown.',
    })
  return {
    flow,
    drop,
    coefficient,
    low: coefficient * (1 - doubt),
    high: coefficient * (1 + doubt),
    reynolds,
    notices,
  }
}
