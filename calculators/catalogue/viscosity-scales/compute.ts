import type { Notice, Step, ValuesOf } from '../../calculator/types.ts'
import {
  ENGLER_BEGINS,
  englerByUbbelohde,
  englerDegrees,
  REDWOOD_BEGINS,
  redwoodSeconds,
  viscosityFromEngler,
  viscosityFromRedwood,
} from '../../fuel/engler-redwood.ts'
import { risingRoot } from '../../fuel/rising-root.ts'
import { nearestFurol, SAYBOLT_RANGE, sayboltFurol, sayboltUniversal } from '../../fuel/saybolt.ts'
import { inWords } from '../words.ts'
import type { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Thinner and thicker than any liquid for which these scales were made. [m²/s] */
const SEARCHED = { minimum: 1e-9, maximum: 10 } as const

/** Furol seconds are defined at two temperatures; as near as this counts as there. [K] */
const AT_FUROL = 1

function kinematicOf(input: Values): number {
  switch (input.scale) {
    case 'universal':
      return risingRoot((v) => sayboltUniversal(v, input.temperature), input.universalSeconds, SEARCHED)
    case 'furol':
      return risingRoot((v) => sayboltFurol(v, input.temperature), input.furolSeconds, SEARCHED)
    case 'engler':
      return viscosityFromEngler(input.englerDegrees)
    case 'redwood':
      return viscosityFromRedwood(input.redwoodSeconds)
    default:
      return input.kinematicViscosity
  }
}

function noticesOf(input: Values, viscosity: number, degrees: number, seconds: number): Notice[] {
  const tooThin = [
    ...(viscosity < SAYBOLT_RANGE.universal ? ['Saybolt Universal'] : []),
    ...(viscosity < SAYBOLT_RANGE.furol ? ['Saybolt Furol'] : []),
    ...(degrees < ENGLER_BEGINS ? ['Engler'] : []),
    ...(seconds < REDWOOD_BEGINS ? ['Redwood No. 1'] : []),
  ]
  const furol = nearestFurol(input.temperature)
  const offFurol = Math.abs(input.temperature - furol) > AT_FUROL && viscosity >= SAYBOLT_RANGE.furol
  return [
    ...(tooThin.length > 0
      ? [
          {
            grade: 'information' as const,
            text: `So thin a liquid is outside the range of these scales: ${tooThin.join(', ')}. Do not quote their values.`,
          },
        ]
      : []),
    ...(offFurol
      ? [
          {
            grade: 'information' as const,
            text: `Furol seconds are defined at 122 °F and 210 °F only. The equation of ${inWords(furol, 'temperature')} stands in.`,
          },
        ]
      : []),
  ]
}

/** One viscosity on all five scales. */
export function compute(input: Values) {
  const kinematicViscosity = kinematicOf(input)
  const universal = sayboltUniversal(kinematicViscosity, input.temperature)
  const furol = sayboltFurol(kinematicViscosity, input.temperature)
  const engler = englerDegrees(kinematicViscosity)
  const redwood = redwoodSeconds(kinematicViscosity)
  const older = englerByUbbelohde(kinematicViscosity)
  const hot = nearestFurol(input.temperature) > 350
  const seconds = (label: string, symbol: string, rule: string, value: number): Step => ({
    label,
    symbol,
    rule,
    value,
    kind: 'time',
    unit: 's',
  })
  return {
    outputs: { kinematicViscosity, universal, furol, engler, redwood },
    steps: [
      {
        label: 'Kinematic viscosity',
        symbol: 'ν',
        rule:
          input.scale === 'kinematic' ? 'as given' : 'the ν at which the scale of the known value shows it',
        value: kinematicViscosity,
        kind: 'kinematicViscosity' as const,
      },
      seconds(
        'Saybolt Universal',
        'SUS',
        '[4.6324ν + (1 + 0.03264ν) 10⁵ / (3930.2 + 262.7ν + 23.97ν² + 1.646ν³)] [1 + 0.000061 (t − 100 °F)]',
        universal,
      ),
      seconds(
        'Saybolt Furol',
        'SFS',
        hot ? '0.4792ν + 5610 / (ν² + 2130)' : '0.4717ν + 13924 / (ν² − 72.59ν + 6816)',
        furol,
      ),
      {
        label: 'Engler',
        symbol: '°E',
        rule: `the °E for which ν is the smaller of 8°E − 8.64/°E and 7.6°E − 4/°E${older === undefined ? '; no check by the older equation of Ubbelohde, which holds from 15 mm²/s on' : ''}`,
        value: engler,
        kind: 'ratio' as const,
      },
      ...(older === undefined
        ? []
        : [
            {
              label: 'Check: Engler by the older equation of Ubbelohde',
              symbol: '°E′',
              rule: 'the °E′ for which ν = 7.31°E′ − 6.31/°E′',
              value: older,
              kind: 'ratio' as const,
            },
          ]),
      seconds(
        'Redwood No. 1',
        'R1',
        'the R1 for which ν is the smaller of 0.260R1 − 179/R1 and 0.247R1 − 50/R1',
        redwood,
      ),
    ],
    notices: noticesOf(input, kinematicViscosity, engler, redwood),
  }
}
