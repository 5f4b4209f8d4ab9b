import type { Notice, Refusal, Step, ValuesOf } from '../../calculator/types.ts'
import { apiGravity } from '../../fuel/api-gravity.ts'
import {
  cetaneIndexA,
  cetaneIndexB,
  cetaneIndexD976,
  cetaneIndexD976Customary,
  densityTerm,
} from '../../fuel/cetane-index.ts'
import { SIXTY_FAHRENHEIT } from '../../fuel/density-2004.ts'
import { refinedDensityAt } from '../../fuel/refined-density.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Cetane numbers between which the four-variable equation was correlated. @source astm-d4737 */
const CORRELATED = { minimum: 32.5, maximum: 56.5 }
const KELVIN_TO_FAHRENHEIT = 1.8

function wrongOrder(input: Values): Refusal | undefined {
  if (input.method === 'd976') return undefined
  const pairs = [
    ['t50', 't10'],
    ['t90', 't50'],
  ] as const
  for (const [later, sooner] of pairs) {
    if (input[later] > input[sooner]) continue
    return {
      field: later,
      reason: `${inputs[later].label} is ${inWords(input[later], 'temperature')}, but ${inputs[sooner].label} is ${inWords(input[sooner], 'temperature')}`,
      accepted: 'temperatures that rise as more has come over',
    }
  }
  return undefined
}

function noticesOf(index: number): Notice[] {
  const notices: Notice[] = []
  if (index < CORRELATED.minimum || index > CORRELATED.maximum)
    notices.push({
      grade: 'caution',
      text: `The methods were correlated with cetane numbers from ${CORRELATED.minimum} to ${CORRELATED.maximum}. This result lies outside.`,
    })
  else
    notices.push({
      grade: 'information',
      text: 'An estimate of the cetane number to about ± 2. It sees no cetane improver: an improved fuel ignites sooner than this says.',
    })
  return notices
}

const ratio = (label: string, symbol: string, rule: string, value: number): Step => ({
  label,
  symbol,
  rule,
  value,
  kind: 'ratio',
})

function stepsOfA(input: Values): Step[] {
  const b = densityTerm(input.density)
  return [
    ratio('Density term, D in g/mL', 'B', 'exp[−3.5(D − 0.85)] − 1', b),
    ratio('Shift of the 10 % point from 215 °C', 'T_10N', 'T₁₀ − 215', input.t10 - 273.15 - 215),
    ratio('Shift of the 50 % point from 260 °C', 'T_50N', 'T₅₀ − 260', input.t50 - 273.15 - 260),
    ratio('Shift of the 90 % point from 310 °C', 'T_90N', 'T₉₀ − 310', input.t90 - 273.15 - 310),
    ratio(
      'Index',
      'CCI',
      '45.2 + 0.0892T_10N + (0.131 + 0.901B)T_50N + (0.0523 − 0.420B)T_90N + 0.00049(T_10N² − T_90N²) + 107B + 60B²',
      cetaneIndexA(input.density, input),
    ),
  ]
}

function stepsOfD976(input: Values): Step[] {
  const at60F = refinedDensityAt(input.density, SIXTY_FAHRENHEIT)
  const midBoiling = (input.t50 - 273.15) * KELVIN_TO_FAHRENHEIT + 32
  return [
    ratio(
      'Index, D in g/mL and T₅₀ in °C',
      'CI',
      '454.74 − 1641.416D + 774.74D² − 0.554T₅₀ + 97.803(log T₅₀)²',
      cetaneIndexD976(input.density, input.t50),
    ),
    ...(at60F === undefined
      ? []
      : [
          ratio(
            'Check: the form in °API and °F',
            'CI′',
            '−420.34 + 0.016G² + 0.192G log M + 65.01(log M)² − 0.0001809M²',
            cetaneIndexD976Customary(apiGravity(at60F), midBoiling),
          ),
        ]),
  ]
}

/** The index by the method chosen, the others beside it in the working. */
export function compute(input: Values) {
  const refusal = wrongOrder(input)
  if (refusal) return { refusal }
  const byMethod = {
    'd4737-a': cetaneIndexA(input.density, input),
    'd4737-b': cetaneIndexB(input.density, input),
    d976: cetaneIndexD976(input.density, input.t50),
  }
  const index = byMethod[input.method]
  const others: Step[] =
    input.method === 'd976'
      ? []
      : [
          ...(input.method === 'd4737-b'
            ? [ratio('Beside it: procedure A', 'CCI_A', 'see there', byMethod['d4737-a'])]
            : [ratio('Beside it: procedure B', 'CCI_B', 'see there', byMethod['d4737-b'])]),
          ratio('Beside it: D976', 'CI_976', 'see there', byMethod.d976),
        ]
  const own =
    input.method === 'd4737-a'
      ? stepsOfA(input)
      : input.method === 'd976'
        ? stepsOfD976(input)
        : [
            ratio(
              'Index, D in g/mL and temperatures in °C',
              'CCI',
              '309.33 − 399.90D + 0.1113T₁₀ + 0.1212T₅₀ + 0.0627T₉₀',
              byMethod['d4737-b'],
            ),
          ]
  return { outputs: { index }, steps: [...own, ...others], notices: noticesOf(index) }
}
