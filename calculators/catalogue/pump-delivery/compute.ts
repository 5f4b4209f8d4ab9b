import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { displacedFlow, slipAt, slipConstant } from '../../hydraulics/slip.ts'
import { step } from '../step.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Common practice, no published source. */
const FAR = 5
const POOR_EFFICIENCY = 0.7

function noticesOf(input: Values, slip: number, knownSlip: number, efficiency: number): Notice[] {
  const notices: Notice[] = []
  const ratio = knownSlip > 0 ? slip / knownSlip : 1
  if (ratio > FAR || ratio < 1 / FAR)
    notices.push({
      grade: 'caution',
      text: 'Slip differs from the known point by more than a factor of five. The straight rule is a rough one; measure a point nearer to this one.',
    })
  if (efficiency < POOR_EFFICIENCY)
    notices.push({
      grade: 'caution',
      text: 'More than three tenths of the displacement slip back. That heats the fuel in the pump, which thins it further.',
    })
  if (input.viscosity < input.knownViscosity)
    notices.push({
      grade: 'information',
      text: 'Thinner fuel than at the known point: the pump delivers less when hot than when cold, at one pressure.',
    })
  return notices
}

function tooMuch(derived: number, input: Values) {
  return {
    refusal: {
      field: 'knownFlow',
      reason: `${inputs.knownFlow.label} is ${inWords(input.knownFlow, 'volumeFlow')}, more than the displacement makes at that speed, ${inWords(derived, 'volumeFlow')}`,
      accepted: `up to ${inWords(derived, 'volumeFlow')}, or another displacement or speed`,
    },
  }
}

/** Delivery at another speed, pressure and viscosity. */
export function compute(input: Values) {
  const knownDerived = displacedFlow(input.displacement, input.knownSpeed)
  const knownSlip =
    input.known === 'flow' ? knownDerived - input.knownFlow : (1 - input.knownEfficiency) * knownDerived
  if (knownSlip < 0) return tooMuch(knownDerived, input)
  const constant = slipConstant(knownSlip, input.knownRise, input.knownViscosity * input.density)
  const derived = displacedFlow(input.displacement, input.speed)
  const slip = slipAt(constant, input.rise, input.viscosity * input.density)
  if (slip >= derived) {
    return {
      refusal: {
        field: 'speed',
        reason: `At ${inWords(input.speed, 'rotationalSpeed')} the displacement makes ${inWords(derived, 'volumeFlow')}, and ${inWords(slip, 'volumeFlow')} would slip back: nothing is delivered and the pressure is not reached`,
        accepted: 'more speed, less pressure or thicker fuel',
      },
    }
  }
  const delivery = derived - slip
  const efficiency = delivery / derived
  return {
    outputs: {
      delivery,
      slip,
      efficiency,
      derived,
      slowest: (2 * Math.PI * slip) / input.displacement,
    },
    steps: [
      step('Derived flow at the known point', 'V n₁', 'displacement × turns', knownDerived, 'volumeFlow'),
      step('Slip at the known point', 'Q_s1', 'V n₁ − Q₁', knownSlip, 'volumeFlow'),
      step('Derived flow', 'V n', 'displacement × turns', derived, 'volumeFlow'),
      step('Slip', 'Q_s', 'Q_s1 (Δp/Δp₁) (ν₁/ν)', slip, 'volumeFlow'),
      step('Delivery', 'Q', 'V n − Q_s', delivery, 'volumeFlow'),
      step('Volumetric efficiency', 'η', 'Q / (V n)', efficiency, 'ratio'),
    ],
    notices: noticesOf(input, slip, knownSlip, efficiency),
  }
}
