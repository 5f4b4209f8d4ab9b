import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { fullyRoughFactor } from '../../hydraulics/fittings.ts'
import { LAMINAR_TO, TURBULENT_FROM } from '../../hydraulics/friction.ts'
import { columnPressure } from '../../hydraulics/hydrostatics.ts'
import { lineFlow, type LineFlow } from '../../hydraulics/line.ts'
import { step } from '../step.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Below this Reynolds number a constant loss coefficient says too little; Hooper's own reason for a second one. */
const CONSTANT_LOSS_FROM = 1000
/** Common practice, no published source: what a fuel line should not pass. */
const FAST = 3
const ROUGHEST = 0.05

function noticesOf(input: Values, flow: LineFlow): Notice[] {
  const notices: Notice[] = []
  if (flow.reynolds > LAMINAR_TO && flow.reynolds < TURBULENT_FROM)
    notices.push({
      grade: 'caution',
      text: 'Between laminar and turbulent the flow changes from moment to moment and no factor is agreed. Take the drop as uncertain by about a third, upwards and downwards.',
    })
  if (flow.reynolds < CONSTANT_LOSS_FROM && input.method === 'equivalent-length')
    notices.push({
      grade: 'caution',
      text: 'In flow as slow as this, equivalent lengths give too little for the fittings. Use the two-K method.',
    })
  if (flow.velocity > FAST)
    notices.push({
      grade: 'caution',
      text: 'The fuel moves faster than 3 m/s. Usual lines are larger; on a suction side much larger.',
    })
  if (input.roughness > ROUGHEST * input.bore)
    notices.push({
      grade: 'caution',
      text: 'The wall is rougher than one twentieth of the bore, beyond the measurements behind the friction factor.',
    })
  return notices
}

/** Drop of the line by friction, and with its rise. */
export function compute(input: Values) {
  const { length, bore, roughness, method, fixedLoss, kinematicViscosity, density } = input
  const line = { length, bore, roughness, fittings: input, method, fixedLoss }
  const flow = lineFlow(line, input.flow, kinematicViscosity, density)
  const column = columnPressure(input.density, input.rise)
  const velocityPressure = (input.density * flow.velocity ** 2) / 2
  const regime: 'laminar' | 'between' | 'turbulent' =
    flow.reynolds <= LAMINAR_TO ? 'laminar' : flow.reynolds < TURBULENT_FROM ? 'between' : 'turbulent'
  return {
    outputs: {
      drop: flow.drop,
      total: flow.drop + column,
      velocity: flow.velocity,
      reynolds: flow.reynolds,
      factor: flow.factor,
      fittingsDrop: flow.drop - flow.pipeDrop,
      regime,
    },
    steps: [
      step('Velocity', 'v', '4Q / (π D²)', flow.velocity, 'velocity'),
      step('Reynolds number', 'Re', 'v D / ν', flow.reynolds, 'ratio'),
      step(
        'Friction factor',
        'f',
        regime === 'laminar' ? '64 / Re' : '1/√f = −2 log₁₀[ε/(3.7D) + 2.51/(Re √f)]',
        flow.factor,
        'ratio',
      ),
      ...(input.method === 'equivalent-length'
        ? [
            step(
              'Factor at full turbulence',
              'f_T',
              '0.25 / [log₁₀(ε_s / (3.7D))]², ε_s = 0.0018 in',
              fullyRoughFactor(input.bore),
              'ratio',
            ),
          ]
        : []),
      step(
        'Sum of loss coefficients',
        'ΣK',
        input.method === 'two-k' ? 'Σ n [K₁/Re + K∞ (1 + 1 in/D)] + ΣK₀' : 'Σ n (L/D) f_T + ΣK₀',
        flow.minorLosses,
        'ratio',
      ),
      step('Pressure of the velocity', 'q', 'ρ v² / 2', velocityPressure, 'pressureDifference'),
      step('Straight pipe', 'Δp_L', 'f (L/D) q', flow.pipeDrop, 'pressureDifference'),
      step('Fittings', 'Δp_K', 'ΣK q', flow.drop - flow.pipeDrop, 'pressureDifference'),
      step('Column', 'Δp_h', 'ρ g h', column, 'pressureDifference'),
    ],
    notices: noticesOf(input, flow),
  }
}
