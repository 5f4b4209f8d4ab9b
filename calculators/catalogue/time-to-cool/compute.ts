import { refuse } from '../../calculator/refusal.ts'
import type { Notice, Step, ValuesOf } from '../../calculator/types.ts'
import { coolingTimeConstant, temperatureAfter, timeToReach } from '../../heat/cooling.ts'
import { insulatedCoefficient, surfaceCoefficient, WIND_REYNOLDS } from '../../heat/cylinder.ts'
import { specificHeat } from '../../heat/petroleum-heat.ts'
import { step } from '../step.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Dry mineral wool or foam: common practice, no published source. [W/(m·K)] */
const INSULATION = 0.04

function whyNot(input: Values) {
  if (input.body === 'line' && input.outside < input.bore)
    return refuse(
      'outside',
      `${inputs.outside.label} is ${inWords(input.outside, 'length')}, less than the bore, ${inWords(input.bore, 'length')}`,
      'the bore or more',
    )
  const whole = input.ambient - input.start
  const part = input.wanted - input.start
  const between = part === 0 || (part / whole > 0 && part / whole < 1)
  return between
    ? undefined
    : refuse(
        'wanted',
        `${inputs.wanted.label} is ${inWords(input.wanted, 'temperature')}, not between ${inWords(input.start, 'temperature')} now and ${inWords(input.ambient, 'temperature')} outside: it is never reached`,
        'a temperature between the two, short of that outside',
      )
}

/** Surface coefficient with the steps that led to it; the surface is taken half-way between now and wanted. */
function surfaceOf(input: Values, diameter: number) {
  if (input.surface === 'stated') return { coefficient: input.coefficient, steps: [], notices: [] }
  const temperature = (input.start + input.wanted) / 2
  const { reynolds, convection, radiation } = surfaceCoefficient(
    { diameter: diameter + 2 * input.insulation, temperature, emissivity: input.emissivity },
    input.ambient,
    input.wind,
  )
  const notices: Notice[] =
    reynolds > WIND_REYNOLDS.maximum || (input.wind > 0 && reynolds < WIND_REYNOLDS.minimum)
      ? [
          {
            grade: 'caution',
            text: 'The Reynolds number of the wind lies outside the range of the correlation.',
          },
        ]
      : []
  const steps: Step[] = [
    step('Reynolds number of the wind', 'Re', 'u D / ν_air', reynolds, 'ratio'),
    step(
      'Convection by wind and rising air',
      'h_c',
      '∛(h_wind³ + h_still³)',
      convection,
      'heatTransferCoefficient',
    ),
    step('Radiation', 'h_r', '4 ε σ T_m³', radiation, 'heatTransferCoefficient'),
  ]
  return { coefficient: convection + radiation, steps, notices }
}

const NOT_COUNTED: Notice = {
  grade: 'information',
  text: 'The fuel is taken as one temperature throughout. In truth the fuel at the wall is colder than the middle: the whole cools more slowly than said, but the first wax at the wall and in the bottom comes sooner.',
}

/** Time to the wanted temperature, and the temperature after a time. */
export function compute(input: Values) {
  const refusal = whyNot(input)
  if (refusal) return refusal
  const tank = input.body === 'tank'
  const diameter = tank ? input.across : input.outside
  // Of a line, one metre of it.
  const volume = tank ? input.volume : (Math.PI / 4) * input.bore ** 2
  const area = tank ? input.area : Math.PI * input.outside
  const middle = (input.start + input.wanted) / 2
  const heatOfFuel = input.heat === 'stated' ? input.specificHeat : specificHeat(input.density, middle)
  if (!(heatOfFuel > 0))
    return refuse('start', 'At so low a temperature the equation gives no specific heat', 'a warmer fuel')
  const surface = surfaceOf(input, diameter)
  const coefficient = insulatedCoefficient(surface.coefficient, diameter, input.insulation, INSULATION)
  const timeConstant = coolingTimeConstant(volume, area, input.density, heatOfFuel, coefficient)
  const time =
    input.start === input.wanted ? 0 : timeToReach(input.start, input.ambient, input.wanted, timeConstant)
  const after = temperatureAfter(input.start, input.ambient, input.elapsed, timeConstant)
  const inTime = (line: Step): Step => ({ ...line, unit: tank ? 'h' : 'min' })
  // By the time and not by the temperature: where the two just meet, rounding would let them disagree.
  const past = time <= input.elapsed
  return {
    outputs: {
      time,
      temperatureAfter: after,
      overallCoefficient: coefficient,
      timeConstant,
      verdict: past ? ('reached' as const) : ('notReached' as const),
    },
    steps: [
      step('Specific heat', 'c', '4186.8 (0.403 + 0.00081 t) / √d, or as stated', heatOfFuel, 'specificHeat'),
      ...surface.steps,
      step(
        'Coefficient, with the insulation',
        'U',
        '1 / [R ln(1 + δ/R)/k + R/((R + δ) h)]',
        coefficient,
        'heatTransferCoefficient',
      ),
      inTime(step('Time constant', 'τ', tank ? 'ρ V c / (U A)' : 'ρ d² c / (4 U D)', timeConstant, 'time')),
      inTime(step('Time to the wanted temperature', 't', 'τ ln[(T₀ − T_a) / (T − T_a)]', time, 'time')),
    ],
    notices: [...surface.notices, NOT_COUNTED],
  }
}
