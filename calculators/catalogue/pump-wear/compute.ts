import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { clearanceGrowth, displacedFlow, slipAt, slipConstant } from '../../hydraulics/slip.ts'
import { step } from '../step.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Common practice, no published source. */
const NEAR = 0.03
const SMALL_SLIP = 0.03
const FAR = 3

function moreThanDerived(field: 'flow' | 'newFlow', flow: number, derived: number) {
  return {
    refusal: {
      field,
      reason: `${inputs[field].label} is ${inWords(flow, 'volumeFlow')}, not below what the displacement makes at that speed, ${inWords(derived, 'volumeFlow')}`,
      accepted: `less than ${inWords(derived, 'volumeFlow')}; check displacement, speed and the measured flow`,
    },
  }
}

function noticesOf(input: Values, slip: number, derived: number, ratio: number): Notice[] {
  const notices: Notice[] = [
    {
      grade: 'information',
      text: 'Slip is a small difference of two large flows: look at its ±. A vacuum that draws gas, or a relief valve that weeps, looks like wear. Rule both out first.',
    },
  ]
  if (slip < SMALL_SLIP * derived)
    notices.push({
      grade: 'caution',
      text: 'The slip is so small a part of the flow that a usual meter cannot tell it from nothing. Measure at more pressure, or with warmer fuel.',
    })
  const corrections = [input.viscosity / input.newViscosity, input.rise / input.newRise]
  if (corrections.some((value) => value > FAR || value < 1 / FAR))
    notices.push({
      grade: 'caution',
      text: 'Pressure or viscosity differ from the new pump’s by more than a factor of three. Measure nearer to them if you can.',
    })
  if (ratio < 1)
    notices.push({
      grade: 'information',
      text: 'Less slip than when new cannot be: one of the two measurements is off, or the displacement is.',
    })
  return notices
}

/** Slip now against slip when new, at one pressure and viscosity, and what the pump would deliver there. */
export function compute(input: Values) {
  const derived = displacedFlow(input.displacement, input.speed)
  const newDerived = displacedFlow(input.displacement, input.newSpeed)
  const slip = derived - input.flow
  const newSlip = newDerived - input.newFlow
  if (!(newSlip > 0)) return moreThanDerived('newFlow', input.newFlow, newDerived)
  if (!(slip > 0)) return moreThanDerived('flow', input.flow, derived)
  const constant = slipConstant(slip, input.rise, input.viscosity * input.density)
  const slipThere = slipAt(constant, input.newRise, input.newViscosity * input.density)
  const ratio = slipThere / newSlip
  const delivery = newDerived - slipThere
  const verdict: 'fit' | 'near' | 'worn' =
    delivery < input.least ? 'worn' : delivery < (1 + NEAR) * input.least ? 'near' : 'fit'
  return {
    outputs: {
      ratio,
      delivery,
      verdict,
      slip,
      efficiency: input.flow / derived,
      growth: clearanceGrowth(ratio),
    },
    steps: [
      step('Derived flow during the measurement', 'V n', 'displacement × turns', derived, 'volumeFlow'),
      step('Slip during the measurement', 'Q_s', 'V n − Q', slip, 'volumeFlow'),
      step('Slip when new', 'Q_s0', 'V n₀ − Q₀', newSlip, 'volumeFlow'),
      step(
        'Slip now at the conditions of the new pump',
        'Q_s′',
        'Q_s (Δp₀/Δp) (ν/ν₀)',
        slipThere,
        'volumeFlow',
      ),
      step('Times the slip when new', 'r', 'Q_s′ / Q_s0', ratio, 'ratio'),
      step('Delivery now at those conditions', 'Q′', 'V n₀ − Q_s′', delivery, 'volumeFlow'),
      step('Clearance over clearance when new', 'h/h₀', 'r^(1/3)', clearanceGrowth(ratio), 'ratio'),
    ],
    notices: noticesOf(input, slip, derived, ratio),
  }
}
