import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { airThroughHole, airThroughOpening, airVolume, CRITICAL_RATIO } from '../../hydraulics/air-flow.ts'
import { openingOf } from '../opening-inputs.ts'
import { step } from '../step.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** What a glass shows, and where a pump begins to lose its suction: common practice, no published source. */
const SINGLE_BUBBLES = 0.001
const FOAM = 0.02
const LOST = 0.3
/** From here on viscosity rules the flow of air: common practice, no published source. */
const VISCOUS = 0.5

function noticesOf(input: Values, choked: boolean, viscousShare: number): Notice[] {
  const notices: Notice[] = []
  if (choked)
    notices.push({
      grade: 'information',
      text: 'The air moves at the speed of sound in the hole: more vacuum draws no more mass.',
    })
  if (viscousShare > VISCOUS)
    notices.push({
      grade: 'information',
      text: 'In so fine an opening the air creeps along the walls: less comes through than its area promises.',
    })
  if (input.shape === 'gap')
    notices.push({
      grade: 'caution',
      text: 'The width of the gap is hardly ever known, and a film of fuel can close it. Take the order of size, not the digits.',
    })
  notices.push({
    grade: 'information',
    text: 'Under pressure the air is small or dissolved and the header looks well; behind the back-pressure valve it grows again. So the glass shows more than the injectors feel.',
  })
  return notices
}

const verdictOf = (atGlass: number, atPump: number) =>
  atPump >= LOST ? 'lost' : atGlass >= FOAM ? 'foam' : atGlass >= SINGLE_BUBBLES ? 'bubbles' : 'single'

/** Air through the opening, and its share of what passes pump and glass. */
export function compute(input: Values) {
  const inside = input.atmosphere - input.vacuum
  if (!(inside > 0)) {
    return {
      refusal: {
        field: 'vacuum',
        reason: `${inputs.vacuum.label} is ${inWords(input.vacuum, 'pressureDifference')}, as much as the air outside has or more`,
        accepted: `less than ${inWords(input.atmosphere, 'pressureDifference')}`,
      },
    }
  }
  const glass = input.atmosphere + input.glassPressure
  if (!(glass > 0)) {
    return {
      refusal: {
        field: 'glassPressure',
        reason: `${inputs.glassPressure.label} is ${inWords(input.glassPressure, 'gaugePressure')}, which leaves nothing of the air outside`,
        accepted: `above ${inWords(-input.atmosphere, 'gaugePressure')}`,
      },
    }
  }
  const opening = openingOf(input)
  const flowOfAir = [input.coefficient, input.atmosphere, inside, input.temperature] as const
  const fast = airThroughHole(opening.area, ...flowOfAir)
  const { mass, viscousShare } = airThroughOpening(opening, ...flowOfAir)
  const freeAir = airVolume(mass, input.atmosphere, input.temperature)
  const atPump = airVolume(mass, inside, input.temperature)
  const atGlass = airVolume(mass, glass, input.temperature)
  const pumpShare = atPump / (atPump + input.flow)
  const glassShare = atGlass / (atGlass + input.flow)
  return {
    outputs: { glassShare, verdict: verdictOf(glassShare, pumpShare), pumpShare, freeAir, atGlass, mass },
    steps: [
      step('Area of the opening', 'A', input.shape === 'hole' ? 'π d² / 4' : 'b w', opening.area, 'area'),
      step(
        'Pressure inside over outside',
        'r',
        '(p_a − V) / p_a, not below 0.528',
        Math.max(inside / input.atmosphere, CRITICAL_RATIO),
        'ratio',
      ),
      step(
        'Air without creeping',
        'ṁ_i',
        'C A p_a √{2γ/[(γ − 1) R T] (r^(2/γ) − r^((γ+1)/γ))}',
        fast,
        'massFlow',
      ),
      step('Air drawn in', 'ṁ', 'the ṁ for which ṁ/ṁ_v + (ṁ/ṁ_i)² = 1', mass, 'massFlow'),
      step('Share of the pressure that viscosity takes', 's', 'ṁ / ṁ_v', viscousShare, 'ratio'),
      step('As free air', 'Q_a', 'ṁ R T / p_a', freeAir, 'volumeFlow'),
      step('At the pump inlet', 'Q_i', 'ṁ R T / (p_a − V)', atPump, 'volumeFlow'),
      step('At the glass', 'Q_g', 'ṁ R T / (p_a + p_g)', atGlass, 'volumeFlow'),
      step('Share at the glass', 'φ_g', 'Q_g / (Q_g + Q)', glassShare, 'ratio'),
    ],
    notices: noticesOf(input, inside / input.atmosphere <= CRITICAL_RATIO, viscousShare),
  } as const
}
