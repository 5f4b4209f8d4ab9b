import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { openingFlow } from '../../hydraulics/orifice-small.ts'
import { openingOf } from '../opening-inputs.ts'
import { step } from '../step.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

const DAY = 86_400

/** A drop is about 0.05 mL; a drop a minute wets, more than two a second run together. Common practice, no published source. */
const DROP = 5e-8
const WETS_BELOW = DROP / 60
const RUNS_FROM = 2 * DROP
/** Pressure from which a fine hole throws a mist that burns: common practice, no published source. */
const SPRAYS_FROM = 100e3
const VISCOUS = 0.5

function noticesOf(input: Values, viscousShare: number): Notice[] {
  const notices: Notice[] = []
  if (input.pressure >= SPRAYS_FROM)
    notices.push({
      grade: 'action',
      text: 'At this pressure a fine opening throws a jet or a mist that burns on a hot surface. Stop, let the pressure go, and never search with the hand.',
    })
  if (viscousShare > VISCOUS)
    notices.push({
      grade: 'information',
      text: 'Viscosity rules this leak: it goes with pressure and grows as the fuel warms. A leak that hides cold shows hot.',
    })
  if (input.shape === 'gap')
    notices.push({
      grade: 'caution',
      text: 'The leak goes with the third power of the gap, which is hardly ever known to a tenth, and a crack opens under load. Take the order of size, not the digits.',
    })
  return notices
}

const verdictOf = (flow: number) => (flow < WETS_BELOW ? 'wet' : flow < RUNS_FROM ? 'drops' : 'stream')

/** Flow through the opening and what it makes in a day. */
export function compute(input: Values) {
  const opening = openingOf(input)
  const dynamicViscosity = input.kinematicViscosity * input.density
  const { flow, viscousShare } = openingFlow(
    opening,
    input.coefficient,
    input.pressure,
    dynamicViscosity,
    input.density,
  )
  const ideal = opening.area * Math.sqrt((2 * input.pressure) / input.density)
  return {
    outputs: { flow, perDay: flow * DAY, verdict: verdictOf(flow), viscousShare },
    steps: [
      step('Area of the opening', 'A', input.shape === 'hole' ? 'π d² / 4' : 'b w', opening.area, 'area'),
      step('Dynamic viscosity', 'μ', 'ν ρ', dynamicViscosity, 'dynamicViscosity'),
      step('Flow without any friction', 'Q_i', 'A √(2p/ρ)', ideal, 'volumeFlow'),
      step(
        'Flow by viscosity alone',
        'Q_v',
        input.shape === 'hole' ? 'p / [μ (24/d³ + 128 t_w/(π d⁴))]' : 'p w b³ / (12 μ t_w)',
        input.pressure / (opening.resistance * dynamicViscosity),
        'volumeFlow',
      ),
      step('Flow', 'Q', 'the Q for which p = p Q/Q_v + (ρ/2) (Q/(C A))²', flow, 'volumeFlow'),
      step('Share of the pressure that viscosity takes', 's', 'Q / Q_v', viscousShare, 'ratio'),
    ],
    notices: noticesOf(input, viscousShare),
  } as const
}
