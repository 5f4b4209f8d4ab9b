import { LOWEST_FLASH } from '../../heat/flash.ts'
import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { effectiveness } from '../../heat/exchanger.ts'
import { HEAT_RANGE, specificHeat } from '../../heat/petroleum-heat.ts'
import { heatTaken, massFlowOf, temperatureAfter } from '../../heat/stream.ts'
import { formatIn } from '../../quantity/format.ts'
import { step } from '../step.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** The specific heat at the mean temperature settles far sooner. */
const ROUNDS = 50

interface Exchanged {
  readonly outlet: number
  readonly effectiveness: number
  readonly transferUnits: number
  readonly ratio: number
}

/** Outlet of an exchanger, its fuel side's capacity rate taken at the mean temperature of the fuel. */
function exchange(input: Values, form: 'counterflow' | 'parallel' | 'constant', massFlow: number): Exchanged {
  let outlet = input.inlet
  let result = { outlet, effectiveness: 0, transferUnits: 0, ratio: 0 }
  for (let round = 0; round < ROUNDS; round++) {
    const fuel = massFlow * specificHeat(input.density15, (input.inlet + outlet) / 2)
    const hot = form === 'constant' ? Infinity : input.hotCapacity
    const least = Math.min(fuel, hot)
    const transferUnits = input.conductance / least
    const ratio = form === 'constant' ? 0 : least / Math.max(fuel, hot)
    const share = effectiveness(transferUnits, ratio, form)
    outlet = input.inlet + (share * least * (input.hotInlet - input.inlet)) / fuel
    result = { outlet, effectiveness: share, transferUnits, ratio }
  }
  return result
}

function noticesOf(input: Values, outlet: number): Notice[] {
  const notices: Notice[] = []
  if (outlet > HEAT_RANGE.maximum || outlet < HEAT_RANGE.minimum)
    notices.push({ grade: 'caution', text: 'That is outside the range in which the specific heat is known.' })
  if (outlet >= LOWEST_FLASH)
    notices.push({
      grade: 'caution',
      text: 'At or above 55 °C gas oil may stand at its flash point (EN 590 asks for above 55 °C). Only in a closed circuit under pressure, and with the thermostat known to be good. The injectors warm it further on its way back to the vented tank: check the return header against its own limit.',
    })
  if (input.form === 'electric')
    notices.push({
      grade: 'information',
      text: 'An electric heater gives its power whatever flows. At a trickle the outlet boils: it must switch off without flow.',
    })
  return notices
}

/** Outlet temperature or duty of a fuel heater. */
export function compute(input: Values) {
  const { form, inlet, density15 } = input
  const massFlow = massFlowOf(input.flow, density15, inlet)
  const exchanged =
    form === 'counterflow' || form === 'parallel' || form === 'constant'
      ? exchange(input, form, massFlow)
      : undefined
  const outlet =
    exchanged?.outlet ??
    (form === 'electric' ? temperatureAfter(input.power, massFlow, inlet, density15) : input.wanted)
  if (!(outlet < inputs.inlet.physical.maximum))
    return {
      refusal: {
        field: form === 'electric' ? 'power' : 'flow',
        reason: `So little fuel flows that it would leave the heater above ${formatIn(inputs.inlet.physical.maximum, 'temperature', 'degC')}`,
        accepted: 'less power or more flow',
      },
    }
  const duty = heatTaken(massFlow, inlet, outlet, density15)
  const meanHeat = specificHeat(density15, (inlet + outlet) / 2)
  return {
    outputs: { outlet, duty, rise: outlet - inlet, meanHeat },
    steps: [
      step('Mass flow of fuel', 'ṁ', 'Q ρ(T₁)', massFlow, 'massFlow'),
      step(
        'Specific heat at the mean temperature',
        'c',
        '4186.8 (0.403 + 0.00081 t)/√d',
        meanHeat,
        'specificHeat',
      ),
      step('Capacity rate of the fuel', 'C_f', 'ṁ c', massFlow * meanHeat, 'thermalConductance'),
      ...(exchanged
        ? [
            step(
              'Ratio of capacity rates',
              'C_r',
              form === 'constant' ? '0' : 'lesser over greater of C_f and C_h',
              exchanged.ratio,
            ),
            step(
              'Number of transfer units',
              'N',
              'U A over the lesser capacity rate',
              exchanged.transferUnits,
            ),
            step('Effectiveness', 'ε', RULES[form as keyof typeof RULES], exchanged.effectiveness),
          ]
        : []),
      step(
        'Outlet temperature',
        'T₂',
        exchanged ? 'T₁ + ε C_min (T_h − T₁)/C_f' : form === 'electric' ? 'h(T₂) = h(T₁) + P/ṁ' : 'as wanted',
        outlet,
        'temperature',
      ),
      step('Duty', 'P', 'ṁ (h(T₂) − h(T₁))', duty, 'power'),
    ],
    notices: noticesOf(input, outlet),
  }
}

const RULES = {
  counterflow: '(1 − e^(−N(1 − C_r)))/(1 − C_r e^(−N(1 − C_r)))',
  parallel: '(1 − e^(−N(1 + C_r)))/(1 + C_r)',
  constant: '1 − e^(−N)',
} as const
