import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { columnPressure, pressureAtTapping } from '../../hydraulics/hydrostatics.ts'
import { inletPressure, reseatingPressure, valveFlow } from '../../hydraulics/spring-valve.ts'
import { line } from '../working-line.ts'
import type { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Beyond this share of full flow the straight line of the override is a guess. */
const STRAIGHT_TO = 1.2
/** Built-up and standing back pressure above this share of the setting is much for a plain spring valve. */
const MUCH_BACK_PRESSURE = 0.1

function noticesOf(input: Values, flow: number): Notice[] {
  const notices: Notice[] = []
  if (Math.max(flow, input.flow) > STRAIGHT_TO * input.fullFlow)
    notices.push({
      grade: 'caution',
      text: 'That is beyond full flow. The spring is near the end of its travel there, and pressure rises faster than the straight line says.',
    })
  if (input.backPressure > MUCH_BACK_PRESSURE * input.cracking)
    notices.push({
      grade: 'caution',
      text: 'The pressure behind the valve is more than a tenth of its setting, and all of it appears on the gauge. Look at the return line before the valve.',
    })
  if (flow === 0)
    notices.push({
      grade: 'information',
      text: 'At that reading the valve has not opened: it passes nothing.',
    })
  return notices
}

/** What the gauge shows as the valve opens, at a flow and as it shuts; and the flow at a reading. */
export function compute(input: Values) {
  const valve = { cracking: input.cracking, override: input.override, fullFlow: input.fullFlow }
  const filled = input.filling === 'fuel' ? input.density : 0
  const column = columnPressure(filled, input.height)
  const inletAtFlow = inletPressure(valve, input.flow, input.backPressure)
  const inletAtReading = pressureAtTapping(input.reading, input.height, filled)
  const flowAtReading = valveFlow(valve, inletAtReading, input.backPressure)
  const inletAtReseat = reseatingPressure(valve, input.blowdown, input.backPressure)
  return {
    outputs: {
      readingAtFlow: inletAtFlow - column,
      readingAtCracking: input.cracking + input.backPressure - column,
      readingAtReseat: inletAtReseat - column,
      flowAtReading,
    },
    steps: [
      line(
        'Column in the gauge line',
        'Δp_c',
        filled > 0 ? 'ρ g h' : '0, the line is full of air',
        column,
        'pressureDifference',
      ),
      line('Inlet at first flow', 'p_i0', 'p_s + p_b', input.cracking + input.backPressure, 'gaugePressure'),
      line(
        'Override at the flow',
        'Δp_q',
        'Δp_o Q/Q_f',
        (input.override * input.flow) / input.fullFlow,
        'pressureDifference',
      ),
      line('Inlet at the flow', 'p_i', 'p_s + p_b + Δp_q', inletAtFlow, 'gaugePressure'),
      line('Inlet as it shuts', 'p_r', 'p_s (1 − b) + p_b', inletAtReseat, 'gaugePressure'),
      line('Inlet at the reading', 'p_i1', 'p_g + Δp_c', inletAtReading, 'gaugePressure'),
      line(
        'Flow at the reading',
        'Q₁',
        'Q_f (p_i1 − p_b − p_s)/Δp_o, not under 0',
        flowAtReading,
        'volumeFlow',
      ),
    ],
    notices: noticesOf(input, flowAtReading),
  }
}
