import type { Notice, Step, ValuesOf } from '../../calculator/types.ts'
import { carbonAromaticityIndex, ignitionIndex } from '../../fuel/ignition-residual.ts'
import type { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Within so much of the limit, the scatter between this index and a burning fuel decides. Common practice. */
const NEAR_LIMIT = 10
/** Lighter than this a fuel is a distillate, and its cetane index says more. Common practice. */
const LIGHTEST_RESIDUAL = 900
/** @source calculated-ignition-index */
const PROBLEMATIC_IGNITION_INDEX = 30

function noticesOf(input: Values, ccai: number, cii: number): Notice[] {
  const notices: Notice[] = []
  if (ccai > input.limit)
    notices.push({
      grade: 'action',
      text: 'Above the limit given: late ignition, hard firing and trouble at part load are to be expected. Ask the engine maker before it is burnt.',
    })
  else if (ccai > input.limit - NEAR_LIMIT)
    notices.push({
      grade: 'caution',
      text: 'Close under the limit. Two fuels of the same index can differ that much in the engine: watch part load and cold starts.',
    })
  if (cii < PROBLEMATIC_IGNITION_INDEX)
    notices.push({
      grade: 'caution',
      text: 'An ignition index under 30 is looked on as trouble by the handbook that prints both indices.',
    })
  if (input.density < LIGHTEST_RESIDUAL)
    notices.push({
      grade: 'caution',
      text: 'So light a fuel is a distillate. These indices are for residual fuels: take the calculated cetane index.',
    })
  return notices
}

/** Both indices of a residual fuel, how far the first is from its limit, and the way there. */
export function compute(input: Values) {
  const ccai = carbonAromaticityIndex(input.density, input.viscosity, input.temperature)
  const cii = ignitionIndex(input.density, input.viscosity, input.temperature)
  const viscosity = input.viscosity * 1e6
  const step = (label: string, symbol: string, rule: string, value: number): Step => ({
    label,
    symbol,
    rule,
    value,
    kind: 'ratio',
  })
  const steps = [
    step(
      'Double logarithm of the viscosity in mm²/s',
      'y',
      'log log(ν + 0.85)',
      Math.log10(Math.log10(viscosity + 0.85)),
    ),
    step(
      'Term of the temperature in °C',
      'z',
      '483 log[(t + 273)/323]',
      483 * Math.log10((input.temperature - 0.15) / 323),
    ),
    step('Carbon aromaticity index', 'CCAI', 'ρ − 81 − 141y − z', ccai),
    step('Ignition index', 'CII', '270.795 + 0.1038t − 0.254565ρ + 23.708 log log(ν + 0.7)', cii),
  ]
  return {
    outputs: { ccai, cii, inHand: input.limit - ccai },
    steps,
    notices: noticesOf(input, ccai, cii),
  }
}
