import type { Notice, Refusal, ValuesOf } from '../../calculator/types.ts'
import {
  chokedDrop,
  criticalPressureRatio,
  CV_PER_KV,
  LARGEST_TRIM,
  TURBULENT_ABOVE,
  turbulentKv,
  valveReynolds,
  viscosityFactor,
} from '../../hydraulics/valve-coefficient.ts'
import { dropOfKv, flowOfKv, kvNeeded } from '../../hydraulics/valve-sizing.ts'
import { inWords } from '../words.ts'
import { line } from '../working-line.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** What is known of the valve once the asked quantity is found. */
interface Solved {
  readonly kv: number
  readonly flow: number
  readonly drop: number
  readonly choked: number
}

/** Under this correction the standard's own formulas are a wide guess. */
const DEEPLY_LAMINAR = 0.3

const trimOf = (input: Values) => ({ size: input.size, recovery: input.recovery, style: input.style })

function refusalOf(field: keyof typeof inputs, reason: string, accepted: string): { refusal: Refusal } {
  return { refusal: { field, reason, accepted } }
}

function solve(input: Values, choked: number): Solved | { refusal: Refusal } {
  const { density, kinematicViscosity, inletPressure } = input
  const trim = trimOf(input)
  const given = input.scale === 'kv' ? input.coefficient : input.coefficient / CV_PER_KV
  if (input.solve !== 'drop' && input.drop >= inletPressure)
    return refusalOf(
      'drop',
      `${inputs.drop.label} is ${inWords(input.drop, 'pressureDifference')}, no less than the absolute inlet pressure, ${inWords(inletPressure, 'absolutePressure')}`,
      'a drop that leaves the outlet above a perfect vacuum',
    )
  if (input.solve === 'drop') {
    const drop = dropOfKv(given, input.flow, density, kinematicViscosity, trim)
    if (drop < Math.min(choked, inletPressure)) return { kv: given, flow: input.flow, drop, choked }
    const most = flowOfKv(given, Math.min(choked, inletPressure), density, kinematicViscosity, trim)
    return refusalOf(
      'flow',
      `${inputs.flow.label} is ${inWords(input.flow, 'volumeFlow')}, more than this valve passes from that inlet pressure at any drop`,
      `less than ${inWords(most, 'volumeFlow')}, or a larger valve or a higher inlet pressure`,
    )
  }
  const effectiveDrop = Math.min(input.drop, choked)
  if (input.solve === 'flow') {
    const flow = flowOfKv(given, effectiveDrop, density, kinematicViscosity, trim)
    return { kv: given, flow, drop: input.drop, choked }
  }
  const kv = kvNeeded({ flow: input.flow, effectiveDrop, density, kinematicViscosity }, trim)
  return { kv, flow: input.flow, drop: input.drop, choked }
}

function noticesOf(input: Values, { kv, drop, choked }: Solved, factor: number): Notice[] {
  const notices: Notice[] = []
  if (drop >= choked)
    notices.push({
      grade: 'action',
      text: `From a drop of ${inWords(choked, 'pressureDifference')} on, fuel boils in the seat: more drop brings no more flow, and the seat wears.`,
    })
  if (kv / (input.size * 1000) ** 2 > LARGEST_TRIM)
    notices.push({
      grade: 'caution',
      text: 'The coefficient is larger than valves of that size have. Check size and figures; the viscosity correction is not stated there.',
    })
  if (factor < DEEPLY_LAMINAR)
    notices.push({
      grade: 'caution',
      text: 'Thick fuel takes most of the flow. So deep in laminar flow the correction is a guide only: measure.',
    })
  else if (factor < 0.995)
    notices.push({
      grade: 'information',
      text: `Viscosity leaves ${Math.round(factor * 100)} % of the flow that thin fuel would have. A coefficient measured with warm fuel does not hold when cold.`,
    })
  return notices
}

/** Coefficient, flow or drop of a valve, from the other two. */
export function compute(input: Values) {
  const ratio = criticalPressureRatio(
    Math.min(input.vapourPressure, input.criticalPressure),
    input.criticalPressure,
  )
  const choked = chokedDrop(input.inletPressure, input.vapourPressure, input.criticalPressure, input.recovery)
  if (input.vapourPressure >= input.criticalPressure || !(choked > 0))
    return refusalOf(
      'vapourPressure',
      `${inputs.vapourPressure.label} is ${inWords(input.vapourPressure, 'absolutePressure')}: at that the liquid boils before the valve`,
      'less than the inlet pressure and the critical pressure',
    )
  const solved = solve(input, choked)
  if ('refusal' in solved) return solved
  const { kv, flow, drop } = solved
  const reynolds = valveReynolds(flow, input.kinematicViscosity, kv, trimOf(input))
  const factor = viscosityFactor(reynolds, kv, trimOf(input))
  const regime =
    drop >= choked
      ? 'choked'
      : reynolds > TURBULENT_ABOVE
        ? 'turbulent'
        : factor < 0.995
          ? 'viscous'
          : 'turbulent'
  const effective = Math.min(drop, choked)
  return {
    outputs: {
      kv,
      cv: kv * CV_PER_KV,
      flow,
      drop,
      chokedDrop: choked,
      reynolds,
      factor,
      regime: regime as 'choked' | 'turbulent' | 'viscous',
    },
    steps: [
      line('Critical pressure ratio factor', 'F_F', '0.96 − 0.28 √(p_v/p_c)', ratio),
      line('Choked drop', 'Δp_ch', 'F_L² (p₁ − F_F p_v)', choked, 'pressureDifference'),
      line('Drop that counts', 'Δp_e', 'the lesser of Δp and Δp_ch', effective, 'pressureDifference'),
      line(
        'Kv if turbulent',
        'C_t',
        'Q/(0.1 √(Δp_e/(ρ/ρ₀))), m³/h and kPa',
        turbulentKv(flow, effective, input.density),
      ),
      line(
        'Valve Reynolds number',
        'Re_v',
        '0.0707 F_d Q/(ν √(C F_L)) (F_L² C²/(0.0016 d⁴) + 1)^¼',
        reynolds,
      ),
      line('Viscosity correction', 'F_R', 'formulas of full-size or reduced trim', factor),
      line('Kv', 'C', 'C_t/F_R', kv),
    ],
    notices: noticesOf(input, solved, factor),
  }
}
