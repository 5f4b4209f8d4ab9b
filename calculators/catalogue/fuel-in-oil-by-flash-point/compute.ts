import type { Notice, Refusal, Step, ValuesOf } from '../../calculator/types.ts'
import { flashIndex, shareByFlashPoint } from '../../fuel/flash-point-blend.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Limits of an engine builder's oil survey for medium-speed engines. @source oil-survey-limits */
const FLASH_LIMITS = { alarmingFall: 50, rejected: 423.15 } as const

const temperature = (value: number) => inWords(value, 'temperature')

/** New oil must flash higher than the fuel, aged as it may be: else the test cannot tell them apart. */
function refusalOf({ newFlash, freshFlash, ageing }: Values): Refusal | undefined {
  if (freshFlash + ageing < newFlash) return undefined
  return {
    field: 'newFlash',
    reason: `${inputs.newFlash.label} is ${temperature(newFlash)}, no higher than that of the aged fuel, ${temperature(freshFlash + ageing)}`,
    accepted: `more than ${temperature(freshFlash + ageing)}`,
  }
}

type Verdict = 'cannotBeTold' | 'watch' | 'alarm' | 'rejected'

function verdictOf(input: Values, fall: number): Verdict {
  if (input.usedFlash < FLASH_LIMITS.rejected) return 'rejected'
  if (fall >= FLASH_LIMITS.alarmingFall) return 'alarm'
  return fall > input.testSpread ? 'watch' : 'cannotBeTold'
}

function noticesOf(input: Values, fall: number): Notice[] {
  if (input.usedFlash <= input.freshFlash + input.ageing)
    return [
      {
        grade: 'action',
        text: 'The used oil flashes as the fuel itself does. Check the sample and its label before anything else, and do not run the engine.',
      },
    ]
  if (fall <= 0)
    return [
      {
        grade: 'information',
        text: 'The used oil flashes no lower than the new one. Fuel long in hot oil can hide so; compare the viscosity.',
      },
    ]
  return [
    {
      grade: 'information',
      text: 'The two shares are the ends of a doubt, not a measurement: the first is right for fuel that came in an hour ago, the second for fuel that has lain in hot oil for weeks.',
    },
    ...(fall > input.testSpread
      ? [
          {
            grade: 'information' as const,
            text: 'Petrol, solvent or cleaning agent lowers the flash point far more than diesel fuel. If viscosity has hardly fallen, think of them.',
          },
        ]
      : []),
  ]
}

/** Share of fuel in the oil from the fall of the flash point: two ends of a range, and a grade. */
export function compute(input: Values) {
  const refusal = refusalOf(input)
  if (refusal) return { refusal }
  const share = (fuel: number) =>
    Math.min(1, Math.max(0, shareByFlashPoint(input.newFlash, fuel, input.usedFlash)))
  const agedFlash = input.freshFlash + input.ageing
  const ifFresh = share(input.freshFlash)
  const ifAged = share(agedFlash)
  const fall = input.newFlash - input.usedFlash
  const ratio = (label: string, symbol: string, rule: string, value: number): Step => ({
    label,
    symbol,
    rule,
    value,
    kind: 'ratio',
  })
  return {
    outputs: { ifFresh, ifAged, verdict: verdictOf(input, fall), fall },
    steps: [
      {
        label: 'Fall of the flash point',
        symbol: 'ΔF',
        rule: 'F_new − F_used',
        value: fall,
        kind: 'temperatureDifference' as const,
      },
      ratio('Index of the new oil', 'I_new', '10^(−F_new / 100), F in °F', flashIndex(input.newFlash)),
      ratio('Index of the used oil', 'I_used', '10^(−F_used / 100)', flashIndex(input.usedFlash)),
      ratio('Index of the fresh fuel', 'I_fresh', '10^(−F_fresh / 100)', flashIndex(input.freshFlash)),
      ratio('Index of the aged fuel', 'I_aged', '10^(−(F_fresh + ΔF_aged) / 100)', flashIndex(agedFlash)),
      ratio('Share if the fuel is fresh', 'x_fresh', '(I_used − I_new) / (I_fresh − I_new), 0 to 1', ifFresh),
      ratio('Share if the fuel has aged', 'x_aged', '(I_used − I_new) / (I_aged − I_new), 0 to 1', ifAged),
    ],
    notices: noticesOf(input, fall),
  }
}
