import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { chanceOfDeparture, departureUncertainty, robustSet } from '../../engine/exhaust.ts'
import type { SetOfValues } from '../../engine/exhaust.ts'
import { medianAbsoluteDeviation } from '../../statistics/median.ts'
import { STANDS_OUT } from '../../statistics/outliers.ts'
import { step } from '../step.ts'
import { inWords } from '../words.ts'
import type { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

/** Up to so many cylinders the middle of the departures rests on two or three readings: common practice. */
const FEW = 6

export function temperaturesOf(input: Pick<Values, 'cylinders'>): number[] {
  return input.cylinders.map((row) => row['temperature'] ?? Number.NaN)
}

export function standsOut(set: SetOfValues): number[] {
  return set.modifiedZ.flatMap((z, at) => (Math.abs(z) > STANDS_OUT ? [at] : []))
}

function verdictOf(set: SetOfValues, input: Values) {
  const out = standsOut(set)
  const beyond = set.departures.some((departure) => Math.abs(departure) > input.permitted)
  if (out.length > 0) return beyond ? ('beyondLimit' as const) : ('standsOut' as const)
  return beyond ? ('allScatter' as const) : ('even' as const)
}

function aboutCylinder(set: SetOfValues, at: number): Notice {
  const departure = set.departures[at] ?? 0
  const size = inWords(Math.abs(departure), 'temperatureDifference')
  const meaning =
    departure < 0
      ? 'Colder: it burns less. A stuck or shut-off injector, a rack link, air in its fuel, low compression.'
      : 'Hotter: it burns more, or later. A dripping or late injector, a leaking exhaust valve, too much rack.'
  return {
    grade: 'caution',
    text: `Cylinder ${at + 1} stands out by ${size} (modified z ${(set.modifiedZ[at] ?? 0).toFixed(1).replace('-', '−')}). ${meaning} (Common practice, no published source.) Change its probe with a neighbour’s first: if the departure goes along, it is the probe.`,
  }
}

function noticesOf(set: SetOfValues, input: Values): Notice[] {
  const values = temperaturesOf(input)
  const notices = standsOut(set).map((at) => aboutCylinder(set, at))
  if (values.length <= FEW)
    notices.push({
      grade: 'caution',
      text: `With ${values.length} cylinders the spread rests on very few readings, and the modified z jumps. Compare with an earlier set of the same engine as well.`,
    })
  if (medianAbsoluteDeviation(values) === 0)
    notices.push({
      grade: 'information',
      text: 'More than half of the readings are equal, so the spread comes out as zero. The accuracy of the pyrometer was taken in its place.',
    })
  if (input.accuracy > input.permitted)
    notices.push({
      grade: 'action',
      text: 'The pyrometer is coarser than the permitted departure: with it the limit cannot be checked.',
    })
  return notices
}

/** Median, robust spread, the cylinder that departs most, and how sure that is. */
export function compute(input: Values) {
  const values = temperaturesOf(input)
  const set = robustSet(values, input.accuracy)
  const departure = set.departures[set.farthest] ?? 0
  const uncertainty = departureUncertainty(input.accuracy, values.length)
  const chance = chanceOfDeparture(departure, uncertainty, values.length)
  const score = set.modifiedZ[set.farthest] ?? 0
  return {
    outputs: {
      verdict: verdictOf(set, input),
      cylinder: set.farthest + 1,
      departure,
      score,
      chance,
      centre: set.centre,
      spread: set.sigma,
      range: Math.max(...values) - Math.min(...values),
    },
    steps: [
      step('Median of all cylinders', 'T̃', 'middle value', set.centre, 'temperature'),
      step(
        'Median absolute deviation',
        'MAD',
        'median of |T − T̃|',
        medianAbsoluteDeviation(values),
        'temperatureDifference',
      ),
      step('Robust standard deviation', 'σ', '1.4826 MAD', set.sigma, 'temperatureDifference'),
      step('Largest departure', 'ΔT', 'T − T̃', departure, 'temperatureDifference'),
      step(
        'Its modified z',
        'M',
        '0.6745 ΔT / MAD, with MAD no less than U / (1.96 × 1.4826)',
        score,
        'ratio',
      ),
      step(
        'How far the departure is uncertain',
        'U_ΔT',
        'U √(1 + π / 2n)',
        uncertainty,
        'temperatureDifference',
      ),
    ],
    notices: noticesOf(set, input),
  }
}
