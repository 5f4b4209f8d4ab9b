import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { LAMINAR_TO, TURBULENT_FROM } from '../../hydraulics/friction.ts'
import { airSolubility, gasReleased, liquidShare } from '../../hydraulics/gas.ts'
import { headAboveBoiling, suctionState, type SuctionState } from '../../hydraulics/suction.ts'
import { distillateVapourPressure } from '../../hydraulics/vapour.ts'
import { step } from '../step.ts'
import { suctionSideOf } from '../suction-inputs.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Common practice, no published source. */
const NEAR_LIMIT = 0.8
const FAST_SUCTION = 1.5
/** Density range of the solubility method; outside, its nearest end is taken. [kg/m³] */
const SOLUBILITY_DENSITY = { minimum: 630, maximum: 900 }

function noticesOf(input: Values, state: SuctionState, gas: number): Notice[] {
  const notices: Notice[] = []
  const { reynolds, velocity, drop } = state.flow
  if (reynolds > LAMINAR_TO && reynolds < TURBULENT_FROM)
    notices.push({
      grade: 'caution',
      text: 'The flow is between laminar and turbulent: take the drop of the pipe as uncertain by about a third.',
    })
  if (velocity > FAST_SUCTION)
    notices.push({
      grade: 'caution',
      text: 'The fuel moves faster than 1.5 m/s. Usual suction lines are larger than that.',
    })
  if (input.tankPressure < 0)
    notices.push({
      grade: 'caution',
      text: 'The tank is below the atmosphere. Free its vent before anything else.',
    })
  const parts = { lift: state.liftPressure, strainer: input.strainerDrop, line: drop }
  const largest = Math.max(parts.lift, parts.strainer, parts.line)
  if (largest > 0)
    notices.push({
      grade: 'information',
      text: `${largest === parts.strainer ? 'The strainer' : largest === parts.lift ? 'The lift' : 'The line with its fittings'} takes the largest part, ${inWords(largest, 'pressureDifference')}.`,
    })
  if (gas > 0)
    notices.push({
      grade: 'information',
      text: 'The gas is what comes out if the fuel was saturated with air in the tank and all of the excess is set free. In the seconds to the pump a part stays in the fuel, so this is the most.',
    })
  return notices
}

const verdictOf = (vacuum: number, limit: number, state: SuctionState, vapourPressure: number) => {
  if (state.inletPressure <= vapourPressure) return 'boils'
  if (vacuum > limit) return 'beyond'
  return vacuum > NEAR_LIMIT * limit ? 'near' : 'within'
}

/** Vacuum at the pump inlet, what it leaves to the limit, to boiling, and the gas that it sets free. */
export function compute(input: Values) {
  const { side, atmosphere } = suctionSideOf(input)
  const state = suctionState(side, input.flow, input.kinematicViscosity, input.density)
  if (!(state.inletPressure > 0)) {
    return {
      refusal: {
        field: 'lift',
        reason: `The suction side would need ${inWords(side.surfacePressure - state.inletPressure, 'pressureDifference')}, more than the ${inWords(side.surfacePressure, 'absolutePressure')} that stand on the fuel: the column breaks and the pump gets no solid fuel`,
        accepted: 'less lift, less flow, thinner fuel, a larger bore or a cleaner strainer',
      },
    }
  }
  const vacuum = atmosphere - state.inletPressure
  const vapourPressure =
    input.vapour === 'given' ? input.vapourPressure : distillateVapourPressure(input.temperature)
  const { minimum, maximum } = SOLUBILITY_DENSITY
  const solubility = airSolubility(input.temperature, Math.min(Math.max(input.density, minimum), maximum))
  const gas = gasReleased(solubility, side.surfacePressure, state.inletPressure)
  const head = headAboveBoiling(state, vapourPressure, input.density)
  return {
    outputs: {
      vacuum,
      verdict: verdictOf(vacuum, input.limit, state, vapourPressure),
      margin: input.limit - vacuum,
      gas,
      lost: 1 - liquidShare(gas),
      head,
      lineDrop: state.flow.drop,
      velocity: state.flow.velocity,
    },
    steps: [
      step(
        'Pressure of the atmosphere',
        'p_a',
        '101.325 kPa (1 − 2.25577·10⁻⁵ z)^5.25588',
        atmosphere,
        'absolutePressure',
      ),
      step('Velocity', 'v', '4Q / (π D²)', state.flow.velocity, 'velocity'),
      step('Reynolds number', 'Re', 'v D / ν', state.flow.reynolds, 'ratio'),
      step('Friction factor', 'f', '64/Re, or Colebrook–White', state.flow.factor, 'ratio'),
      step(
        'Sum of loss coefficients',
        'ΣK',
        'Σ n [K₁/Re + K∞ (1 + 1 in/D)] + ΣK₀',
        state.flow.minorLosses,
        'ratio',
      ),
      step('Pipe and fittings', 'Δp_L', '(f L/D + ΣK) ρ v²/2', state.flow.drop, 'pressureDifference'),
      step('Lift', 'Δp_h', 'ρ g h', state.liftPressure, 'pressureDifference'),
      step('Velocity pressure', 'q', 'ρ v² / 2', state.velocityPressure, 'pressureDifference'),
      step(
        'Pressure at the inlet',
        'p_i',
        'p_a + p_t − Δp_h − Δp_L − Δp_s − q',
        state.inletPressure,
        'absolutePressure',
      ),
      step(
        'Vapour pressure',
        'p_v',
        input.vapour === 'given' ? 'given' : 'exp(12.101 − 8907/T) psi, T in °R',
        vapourPressure,
        'absolutePressure',
      ),
      step('Air that a volume of fuel dissolves', 'L', 'ASTM D2779', solubility, 'ratio'),
      step('Gas set free', 'φ', 'L (p_a + p_t − p_i) / p_i', gas, 'ratio'),
      step('Head above boiling', 'NPSH', '(p_i + q − p_v) / (ρ g)', head, 'length'),
    ],
    notices: noticesOf(input, state, gas),
  } as const
}
