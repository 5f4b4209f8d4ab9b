import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { fuelMassFlow } from '../../engine/burn.ts'
import { step } from '../step.ts'
import type { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

const HOUR = 3600

/** Fuel burnt by mass and by volume. */
export function compute(input: Values) {
  const massFlow = fuelMassFlow(input.power, input.consumption)
  const volumeFlow = massFlow / input.density
  const notices: readonly Notice[] = [
    {
      grade: 'information',
      text: 'The pump delivers several times as much; the rest cools the injectors and returns. Do not look for this flow in the supply line.',
    },
  ]
  return {
    outputs: { volumeFlow, massFlow, inAnHour: volumeFlow * HOUR },
    steps: [
      step('Mass burnt', 'ṁ', 'P b', massFlow, 'massFlow'),
      step('Volume burnt', 'Q', 'ṁ / ρ', volumeFlow, 'volumeFlow'),
    ],
    notices,
  }
}
