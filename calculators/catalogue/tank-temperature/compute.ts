import { LOWEST_FLASH } from '../../heat/flash.ts'
import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { fuelDensity, specificHeat } from '../../heat/petroleum-heat.ts'
import { tankTemperature, wettedArea } from '../../heat/tank.ts'
import { formatIn } from '../../quantity/format.ts'
import { inWords } from '../words.ts'
import { step } from '../step.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** The suction pipe draws air before the tank is empty. */
const EMPTIEST = 0.05
const LOW_LEVEL = 0.25
/** The temperatures that the fields take end here too; the heat content is known to 204 °C only. [K] */
const HOTTEST = 800

function noticesOf(input: Values, final: number, left: number): Notice[] {
  const notices: Notice[] = []
  if (final > input.limit)
    notices.push({
      grade: 'action',
      text: 'The tank passes the highest temperature wanted. Fill up at half time, or look for what heats it: a weak return cooler, a heater left on, too much flow through hot headers.',
    })
  if (final >= LOWEST_FLASH)
    notices.push({
      grade: 'action',
      text: 'At or above 55 °C gas oil may stand at its flash point: the vapour in a vented tank can ignite. Reduce the heat or stop.',
    })
  if (left < LOW_LEVEL * input.startVolume)
    notices.push({
      grade: 'caution',
      text: 'Little fuel is left at the end. The same heat then warms a small mass, and the temperature climbs fastest near the end.',
    })
  return notices
}

/** Temperature of the tank at the end of a time, with what heats and cools it there. */
export function compute(input: Values) {
  const left = input.startVolume - input.burnt * input.time
  if (left < EMPTIEST * input.startVolume)
    return {
      refusal: {
        field: 'time',
        reason: `After ${formatIn(input.time, 'time', 'h', { digits: 3 })} the tank is empty, or nearly so`,
        accepted: `up to ${formatIn(((1 - EMPTIEST) * input.startVolume) / input.burnt, 'time', 'h', { digits: 3 })} with this volume and this burning`,
      },
    }
  const { length, width, heatTransfer, ambient } = input
  const tank = { length, width, heatTransfer, ambient, density15: input.density15 }
  const load = {
    startVolume: input.startVolume,
    startTemperature: input.start,
    burnt: input.burnt,
    heat: input.heat,
  }
  const final = tankTemperature(tank, load, input.time)
  if (!(final < HOTTEST))
    return {
      refusal: {
        field: 'heat',
        reason: `${inputs.heat.label} of ${inWords(input.heat, 'power')} would bring the tank past ${inWords(HOTTEST, 'temperature')}`,
        accepted: 'less heat, a shorter time or more fuel',
      },
    }
  const area = wettedArea(tank, left)
  const lossAtEnd = heatTransfer * area * (final - ambient)
  const rest = ambient + input.heat / (heatTransfer * area)
  return {
    outputs: {
      final,
      rise: final - input.start,
      verdict: final > input.limit ? ('tooWarm' as const) : ('inOrder' as const),
      left,
      lossAtEnd,
    },
    steps: [
      step(
        'Mass at the start',
        'm₀',
        'V₀ ρ(T₀)',
        input.startVolume * fuelDensity(input.density15, input.start),
        'mass',
      ),
      step(
        'Specific heat at the start',
        'c',
        '4186.8 (0.403 + 0.00081 t)/√d',
        specificHeat(input.density15, input.start),
        'specificHeat',
      ),
      step(
        'Wetted area at the start',
        'A₀',
        'a b + 2 (a + b) V₀/(a b)',
        wettedArea(tank, input.startVolume),
        'area',
      ),
      step('Fuel left', 'V', 'V₀ − Q_b t', left, 'volume'),
      step('Wetted area at the end', 'A', 'a b + 2 (a + b) V/(a b)', area, 'area'),
      step(
        'Temperature at the end',
        'T',
        'm c dT/dt = P − U A (T − T_a), in 200 steps',
        final,
        'temperature',
      ),
      step('Where it would come to rest at that level', 'T_∞', 'T_a + P/(U A)', rest, 'temperature'),
      step('Loss at the end', 'P_l', 'U A (T − T_a)', lossAtEnd, 'power'),
    ],
    notices: noticesOf(input, final, left),
  }
}
