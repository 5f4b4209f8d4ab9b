import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { largestLift, smallestBore, suctionState } from '../../hydraulics/suction.ts'
import { step } from '../step.ts'
import { suctionSideOf } from '../suction-inputs.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** Common practice, no published source: room for a strainer that fills between services, as a share of the limit. */
const ROOM_FOR_STRAINER = 0.3

function noticesOf(vacuum: number, limit: number, lift: number): Notice[] {
  const notices: Notice[] = [
    {
      grade: 'information',
      text: 'Compute with the coldest fuel and the strainer as it is just before service. A line that just meets the limit with a clean strainer does not meet it in a month.',
    },
  ]
  if (vacuum <= limit && limit - vacuum < ROOM_FOR_STRAINER * limit)
    notices.push({
      grade: 'caution',
      text: 'Less than three tenths of the limit are left for a strainer that fills.',
    })
  if (lift < 0)
    notices.push({
      grade: 'action',
      text: `With this bore the pump must stand at least ${inWords(-lift, 'length')} below the surface of the fuel.`,
    })
  return notices
}

/** Largest lift with the line as it is, and smallest bore with the lift as it is. */
export function compute(input: Values) {
  const { side, atmosphere } = suctionSideOf(input)
  const least = atmosphere - input.limit
  const { flow, kinematicViscosity, density } = input
  const state = suctionState(side, flow, kinematicViscosity, density)
  const lift = largestLift(side, flow, kinematicViscosity, density, least)
  const bore = smallestBore(side, flow, kinematicViscosity, density, least)
  if (bore === undefined) {
    const fixed = state.liftPressure + input.strainerDrop - input.tankPressure
    if (fixed < input.limit)
      return {
        refusal: {
          field: 'flow',
          reason: 'No bore could be found for this flow',
          accepted: 'a flow nearer to that of the worked example',
        },
      }
    return {
      refusal: {
        field: 'lift',
        reason: `Lift, strainer and tank pressure alone make ${inWords(fixed, 'pressureDifference')} of vacuum, so no bore keeps to the limit of ${inWords(input.limit, 'pressureDifference')}`,
        accepted: 'less lift, a smaller drop of the strainer or a higher limit',
      },
    }
  }
  const vacuum = atmosphere - state.inletPressure
  const verdict: 'enough' | 'short' = vacuum <= input.limit ? 'enough' : 'short'
  return {
    outputs: { largestLift: lift, smallestBore: bore, vacuum, verdict },
    steps: [
      step(
        'Pressure of the atmosphere',
        'p_a',
        '101.325 kPa (1 − 2.25577·10⁻⁵ z)^5.25588',
        atmosphere,
        'absolutePressure',
      ),
      step('Lowest pressure allowed at the inlet', 'p_min', 'p_a − V_max', least, 'absolutePressure'),
      step('Velocity with this bore', 'v', '4Q / (π D²)', state.flow.velocity, 'velocity'),
      step(
        'Pipe and fittings with this bore',
        'Δp_L',
        '(f L/D + ΣK) ρ v²/2',
        state.flow.drop,
        'pressureDifference',
      ),
      step('Velocity pressure with this bore', 'q', 'ρ v² / 2', state.velocityPressure, 'pressureDifference'),
      step('Largest lift', 'h_max', '(p_a + p_t − p_min − Δp_L − Δp_s − q) / (ρ g)', lift, 'length'),
      step(
        'Left for line and velocity at this lift',
        'Δp_free',
        'p_a + p_t − p_min − ρ g h − Δp_s',
        side.surfacePressure - least - state.liftPressure - input.strainerDrop,
        'pressureDifference',
      ),
      step('Smallest bore', 'D_min', 'the D for which Δp_L + q = Δp_free, solved', bore, 'length'),
    ],
    notices: noticesOf(vacuum, input.limit, lift),
  }
}
