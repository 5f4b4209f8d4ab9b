import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { dyeDose, dyeLeft, fillsUntil } from '../../fuel/dye.ts'
import { step } from '../step.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Above this a dose is no leak-test dose any more: common practice, no published source. */
const LARGE_SHARE = 0.005

function noticesOf(input: Values): Notice[] {
  const notices: Notice[] = [
    {
      grade: 'information',
      text: 'Dye in joints, threads and paint glows much longer than the dye in the fuel: clean it off before the next test.',
    },
  ]
  if (input.share > LARGE_SHARE)
    notices.push({
      grade: 'caution',
      text: 'That is a strong dose. More dye does not find more; it stains more. Read the label again.',
    })
  return notices
}

/** The dose for all the fuel that takes part, and how it fades with burning and filling. */
export function compute(input: Values) {
  const volume = input.tank + input.circuit
  const before = input.left + input.circuit
  const after = input.full + input.circuit
  if (!(volume > 0)) {
    return {
      refusal: {
        field: 'tank',
        reason: 'Tank and circuit together hold no fuel',
        accepted: 'the volume as dipped, and that of the circuit',
      },
    }
  }
  if (!(before > 0 && before < after)) {
    return {
      refusal: {
        field: 'left',
        reason: `${inputs.left.label} is ${inWords(input.left, 'volume')}, and after the fill it is ${inWords(input.full, 'volume')}: nothing is filled, or nothing was left`,
        accepted: `more than nothing in tank and circuit, and less than ${inWords(input.full, 'volume')} in the tank`,
      },
    }
  }
  const dose = dyeDose(volume, input.share)
  const leftShare = dyeLeft(before, after, input.fills)
  return {
    outputs: {
      dose,
      leftShare,
      concentration: input.share * leftShare,
      fillsNeeded: fillsUntil(before, after, input.threshold),
      volume,
    },
    steps: [
      step('Fuel that takes part', 'V', 'V_t + V_c', volume, 'volume'),
      step('Dose', 'D', 'V c₀', dose, 'volume'),
      step('Fuel before each fill, with the circuit', 'V₁', 'V_l + V_c', before, 'volume'),
      step('Fuel after it, with the circuit', 'V₂', 'V_f + V_c', after, 'volume'),
      step('Left after one fill', 'q', 'V₁ / V₂', before / after, 'ratio'),
      step('Left after all fills', 'qⁿ', 'q^n', leftShare, 'ratio'),
    ],
    notices: noticesOf(input),
  }
}
