import type { Notice, Step, ValuesOf } from '../../calculator/types.ts'
import { columnPressure, pressureAtTapping } from '../../hydraulics/hydrostatics.ts'
import { pipeFlow } from '../../hydraulics/pipe.ts'
import { springSetting } from '../../hydraulics/spring-valve.ts'
import { inWords } from '../words.ts'
import type { inputs } from './inputs.ts'
import { contributionsOf, gaugeNeeded, judge, type Contributions, type Verdict } from './uncertainty.ts'

export type Values = ValuesOf<typeof inputs>

/** Under this a gauge is hard to find: the advice to take a better one would be hollow. [Pa] */
const FINEST_GAUGE = 500

const EFFECT = {
  'back-pressure': {
    low: 'A weak setting lets the header pressure fall and gas come out of the hot fuel.',
    high: 'A strong setting raises the header pressure and brings the bypass valve nearer to opening.',
  },
  bypass: {
    low: 'A weak setting lets fuel round the secondary filters before they are loaded.',
    high: 'A strong setting leaves loaded filters without relief, and the pump relief valve has to open.',
  },
} as const

function lineLossOf(input: Values): number {
  if (input.state !== 'full-flow' || input.tapping !== 'along-the-line') return 0
  const { length, bore, roughness } = input
  return pipeFlow(
    { length, bore, roughness, minorLosses: 0 },
    input.flow,
    input.kinematicViscosity,
    input.density,
  ).drop
}

function noticesOf(input: Values, verdict: Verdict, deviation: number, parts: Contributions): Notice[] {
  const notices: Notice[] = []
  if (verdict === 'outside')
    notices.push({ grade: 'action', text: EFFECT[input.valve][deviation < 0 ? 'low' : 'high'] })
  if (verdict === 'cannotBeTold') {
    const needed = gaugeNeeded(deviation, parts, input.tolerance)
    notices.push({
      grade: 'caution',
      text:
        needed >= FINEST_GAUGE
          ? `With everything else as it is, a gauge good to ±${inWords(needed, 'pressureDifference')} would settle it.`
          : 'No better gauge alone would settle it: the setting lies at the edge of its tolerance, or the other figures are not known well enough.',
    })
  }
  const column = columnPressure(input.density, input.height)
  const other = input.line === 'fuel' ? 'air' : 'fuel'
  if (Math.abs(column) > parts.gauge / 2)
    notices.push({
      grade: 'information',
      text: `Be sure of what fills the gauge line: were it ${other}, the result would differ by ${inWords(Math.abs(column), 'pressureDifference')}.`,
    })
  return notices
}

/** The spring's setting from a gauge reading, and whether it is within tolerance as far as this gauge can tell. */
export function compute(input: Values) {
  const filled = input.line === 'fuel' ? input.density : 0
  const override = input.state === 'full-flow' ? input.override : 0
  const lineLoss = lineLossOf(input)
  const column = columnPressure(filled, input.height)
  const inletPressure = pressureAtTapping(input.reading, input.height, filled) - lineLoss
  const setting = springSetting(inletPressure, input.backPressure, override)
  const deviation = setting - input.wanted
  const parts = contributionsOf({
    gaugeAccuracy: input.gaugeAccuracy,
    backPressureAccuracy: input.backPressureAccuracy,
    pressurePerMetre: columnPressure(filled, 1),
    override,
    lineLoss,
  })
  const uncertainty = Math.hypot(
    parts.gauge,
    parts.backPressure,
    parts.height,
    parts.override,
    parts.lineLoss,
  )
  const verdict = judge(deviation, uncertainty, input.tolerance)
  const pressure = (label: string, symbol: string, rule: string, value: number, gauge = false): Step => ({
    label,
    symbol,
    rule,
    value,
    kind: gauge ? 'gaugePressure' : 'pressureDifference',
  })
  return {
    outputs: { setting, deviation, verdict, inletPressure, lineLoss },
    uncertainties: {
      setting: uncertainty,
      deviation: uncertainty,
      inletPressure: Math.hypot(parts.gauge, parts.height, parts.lineLoss),
      lineLoss: parts.lineLoss,
    },
    steps: [
      pressure(
        'Column in the gauge line',
        'Δp_c',
        filled > 0 ? 'ρ g h' : '0, the line is full of air',
        column,
      ),
      ...(lineLoss === 0
        ? []
        : [pressure('Loss between tapping and valve', 'Δp_L', 'f (L/D) ρ v²/2', lineLoss)]),
      pressure('Pressure at the valve inlet', 'p_i', 'p_g + Δp_c − Δp_L', inletPressure, true),
      pressure('Setting of the spring', 'p_s', 'p_i − p_b − Δp_o', setting, true),
      pressure('Deviation', 'd', 'p_s − p_w', deviation),
      pressure('From the gauge', 'u_g', 'as given', parts.gauge),
      pressure('From the back pressure', 'u_b', 'as given', parts.backPressure),
      pressure('From 0.05 m of height', 'u_h', 'ρ g × 0.05 m', parts.height),
      ...(override === 0 ? [] : [pressure('From the override', 'u_o', '20 % of it', parts.override)]),
      ...(lineLoss === 0 ? [] : [pressure('From the line loss', 'u_L', '15 % of it', parts.lineLoss)]),
      pressure('Together', 'u', '√(sum of squares)', uncertainty),
    ],
    notices: noticesOf(input, verdict, deviation, parts),
  }
}
