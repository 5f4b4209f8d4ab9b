import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { specificHeat } from '../../heat/petroleum-heat.ts'
import { heatTaken, massFlowOf, temperatureAfter } from '../../heat/stream.ts'
import { inWords } from '../words.ts'
import { line } from '../working-line.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Less returns than this share of the delivery: the headers may run short. Common practice. */
const LITTLE_RETURN = 0.5
/** A return so hot gives up gas in the line and warms the tank quickly. [K] */
const HOT_RETURN = 343.15

function noticesOf(share: number, returned: number, rise: number): Notice[] {
  const notices: Notice[] = []
  if (share < LITTLE_RETURN)
    notices.push({
      grade: 'caution',
      text: 'Less than half of the delivery returns. Check pump delivery and filters: an injector at the end of the header may run short.',
    })
  if (returned > HOT_RETURN)
    notices.push({
      grade: 'caution',
      text: 'A return above 70 °C is hot for gas oil: mind the skin, the flash point and the thin fuel at the injectors.',
    })
  if (rise < 0)
    notices.push({
      grade: 'information',
      text: 'The return is colder than the tank: the lines lose more than the engine gives.',
    })
  return notices
}

/** Return flow, its temperature, how often fuel goes round and the heat it brings to the tank. */
export function compute(input: Values) {
  if (input.burnt >= input.delivery)
    return {
      refusal: {
        field: 'burnt',
        reason: `${inputs.burnt.label} is ${inWords(input.burnt, 'volumeFlow')}, as much as the pump delivers or more: nothing returns`,
        accepted: `less than ${inWords(input.delivery, 'volumeFlow')}`,
      },
    }
  const returnFlow = input.delivery - input.burnt
  const massReturned = massFlowOf(returnFlow, input.density15, input.tank)
  const hydraulic = input.delivery * input.pumpRise
  const given = input.engineHeat + input.heaterPower + hydraulic
  const returned =
    input.known === 'temperature'
      ? input.returned
      : temperatureAfter(given, massReturned, input.tank, input.density15)
  const heatToTank = heatTaken(massReturned, input.tank, returned, input.density15)
  const massInTank = massFlowOf(input.volume, input.density15, input.tank)
  const share = returnFlow / input.delivery
  return {
    outputs: {
      returnFlow,
      returned,
      heatToTank,
      shareReturned: share,
      turnoverTime: input.volume / input.delivery,
      // What the tank would warm by in the first hour if it lost nothing.
      risePerHour: (heatToTank * 3600) / (massInTank * specificHeat(input.density15, input.tank)),
    },
    steps: [
      line('Return flow', 'Q_r', 'Q − Q_b', returnFlow, 'volumeFlow'),
      line('Mass returned', 'ṁ_r', 'Q_r ρ(T_t)', massReturned, 'massFlow'),
      ...(input.known === 'heat'
        ? [
            line('Heat of pumping', 'P_p', 'Q Δp', hydraulic, 'power'),
            line('Heat given on the way', 'P', 'P_e + P_h + P_p', given, 'power'),
          ]
        : []),
      line('Temperature of the return', 'T_r', 'h(T_r) = h(T_t) + P/ṁ_r', returned, 'temperature'),
      line('Heat to the tank', 'P_t', 'ṁ_r (h(T_r) − h(T_t))', heatToTank, 'power'),
      line(
        'Specific heat in the tank',
        'c',
        '4186.8 (0.403 + 0.00081 t)/√d',
        specificHeat(input.density15, input.tank),
        'specificHeat',
      ),
    ],
    notices: noticesOf(share, returned, returned - input.tank),
  }
}
