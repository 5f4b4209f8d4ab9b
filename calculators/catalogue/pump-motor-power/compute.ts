import type { ValuesOf } from '../../calculator/types.ts'
import { step } from '../step.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Share of the rating that a motor carries all day with a low supply and cold fuel: common practice, no published source. */
const COMFORTABLE = 0.85

/** Hydraulic power, shaft power, torque, and what the motor draws. */
export function compute(input: Values) {
  const hydraulic = input.flow * input.rise
  const shaft = hydraulic / input.efficiency
  const electrical = shaft / input.motorEfficiency
  const torque = shaft / input.speed
  const load = shaft / input.rating
  const verdict: 'enough' | 'tight' | 'over' = load > 1 ? 'over' : load > COMFORTABLE ? 'tight' : 'enough'
  return {
    outputs: { shaft, verdict, load, hydraulic, electrical, torque },
    steps: [
      step('Hydraulic power', 'P_h', 'Q Δp', hydraulic, 'power'),
      step('Shaft power', 'P', 'P_h / η', shaft, 'power'),
      step('Electrical power', 'P_e', 'P / η_m', electrical, 'power'),
      step('Torque', 'M', 'P / (2π n)', torque, 'torque'),
      step('Share of the rated output', 'P/P_r', 'P / P_r', load, 'ratio'),
    ],
    notices: [
      {
        grade: 'information' as const,
        text: 'The hardest case is the relief valve open with cold fuel: full flow at the relief valve’s full-flow pressure, and a poor efficiency. Choose the motor by that, not by the pressure in health.',
      },
    ],
  }
}
