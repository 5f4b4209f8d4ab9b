import type { Notice, Refusal, ValuesOf } from '../../calculator/types.ts'
import { fuelDensity, heatContent } from '../../heat/petroleum-heat.ts'
import { heatTaken, massFlowOf, temperatureAfter } from '../../heat/stream.ts'
import { inWords } from '../words.ts'
import { line } from '../working-line.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Smaller rises than this vanish in the thermometers' own error. [K] */
const TOO_SMALL_A_RISE = 3

interface Load {
  /** Heat that one injector gives to the fuel passing through. [W] */
  readonly heat: number
  /** [K] */
  readonly outlet: number
  /** Fuel that passes on to the return, of all injectors. [kg/s] */
  readonly passing: number
}

function loadOf(input: Values, burnt: number, outletRead: number, heatGiven: number): Load {
  const passing = massFlowOf(input.headerFlow - burnt, input.density15, input.inlet)
  if (input.known === 'readings') {
    const heat = heatTaken(passing, input.inlet, outletRead, input.density15) / input.injectors
    return { heat, outlet: outletRead, passing }
  }
  const outlet = temperatureAfter(heatGiven * input.injectors, passing, input.inlet, input.density15)
  return { heat: heatGiven, outlet, passing }
}

function refusalFor(input: Values): Refusal | undefined {
  for (const field of ['burntAtFullLoad', 'burntAtIdle'] as const)
    if (input[field] >= input.headerFlow)
      return {
        field,
        reason: `${inputs[field].label} is ${inWords(input[field], 'volumeFlow')}, as much as flows into the header or more: nothing is left to cool with`,
        accepted: `less than ${inWords(input.headerFlow, 'volumeFlow')}`,
      }
  if (input.limit <= input.inlet)
    return {
      field: 'limit',
      reason: `${inputs.limit.label} is ${inWords(input.limit, 'temperature')}, not above the supply header`,
      accepted: `more than ${inWords(input.inlet, 'temperature')}`,
    }
  return undefined
}

function noticesOf(input: Values, full: Load, idle: Load): Notice[] {
  const notices: Notice[] = []
  if (full.outlet > input.limit)
    notices.push({
      grade: 'action',
      text: 'The return is hotter than it may be. Hot fuel is thin, lubricates less and gives up gas: look for too little flow before blaming the injectors.',
    })
  if (Math.min(full.outlet, idle.outlet) < input.inlet)
    notices.push({
      grade: 'action',
      text: 'The return header reads colder than the supply header, and injectors do not cool fuel. Hold both thermometers in one cup first.',
    })
  else if (input.known === 'readings' && full.outlet - input.inlet < TOO_SMALL_A_RISE)
    notices.push({
      grade: 'caution',
      text: 'So small a rise is mostly thermometer error. Use two that agree within half a degree in one cup.',
    })
  notices.push({
    grade: 'information',
    text: 'All heat is put to the fuel that returns. Part of it leaves with the injected fuel, so an injector gives off somewhat more than is shown.',
  })
  return notices
}

/** Heat an injector gives to the passing fuel at full load and at idle, the outlet temperatures and the flow needed. */
export function compute(input: Values) {
  const refusal = refusalFor(input)
  if (refusal) return { refusal }
  const full = loadOf(input, input.burntAtFullLoad, input.outletAtFullLoad, input.heatAtFullLoad)
  const idle = loadOf(input, input.burntAtIdle, input.outletAtIdle, input.heatAtIdle)
  const span = heatContent(input.density15, input.limit) - heatContent(input.density15, input.inlet)
  const passingNeeded = Math.max(0, full.heat * input.injectors) / span
  const flowNeeded = passingNeeded / fuelDensity(input.density15, input.inlet) + input.burntAtFullLoad
  return {
    outputs: {
      heatAtFullLoad: full.heat,
      heatAtIdle: idle.heat,
      outletAtFullLoad: full.outlet,
      outletAtIdle: idle.outlet,
      flowNeeded,
      inHand: input.headerFlow - flowNeeded,
    },
    steps: [
      line('Passing on at full load', 'ṁ', '(Q_h − Q_b) ρ(T₁)', full.passing, 'massFlow'),
      line('Passing on at idle', 'ṁ_i', '(Q_h − Q_i) ρ(T₁)', idle.passing, 'massFlow'),
      line(
        'Heat of all injectors at full load',
        'n P',
        'ṁ (h(T₂) − h(T₁))',
        full.heat * input.injectors,
        'power',
      ),
      line(
        'Heat of all injectors at idle',
        'n P_i',
        'ṁ_i (h(T_i) − h(T₁))',
        idle.heat * input.injectors,
        'power',
      ),
      line('Passing flow needed at full load', 'ṁ_n', 'n P/(h(T_max) − h(T₁))', passingNeeded, 'massFlow'),
      line('Header flow needed', 'Q_n', 'ṁ_n/ρ(T₁) + Q_b', flowNeeded, 'volumeFlow'),
    ],
    notices: noticesOf(input, full, idle),
  }
}
