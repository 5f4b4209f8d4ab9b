import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { COVERAGE, robustSet } from '../../engine/exhaust.ts'
import type { SetOfValues } from '../../engine/exhaust.ts'
import { medianAbsoluteDeviation, SIGMA_PER_MAD } from '../../statistics/median.ts'
import { STANDS_OUT } from '../../statistics/outliers.ts'
import { step } from '../step.ts'
import { inWords } from '../words.ts'
import type { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

const FEW = 6
/** More than this of a common change, and the two runs were hardly made at one load: common practice. [K] */
const LARGE_COMMON = 20

/** The change of each cylinder, as a set: its centre is what all cylinders did together. */
export function changesOf(input: Pick<Values, 'cylinders' | 'repeatability'>): SetOfValues {
  const changes = input.cylinders.map((row) => (row['after'] ?? Number.NaN) - (row['before'] ?? Number.NaN))
  return robustSet(changes, Math.SQRT2 * input.repeatability)
}

export function realOnes(set: SetOfValues): number[] {
  return set.modifiedZ.flatMap((z, at) => (Math.abs(z) > STANDS_OUT ? [at] : []))
}

/** The smallest relative change that counts as real. [K] */
export function threshold(set: SetOfValues, input: Pick<Values, 'repeatability'>): number {
  return STANDS_OUT * Math.max(set.sigma, (Math.SQRT2 * input.repeatability) / COVERAGE)
}

function noticesOf(set: SetOfValues): Notice[] {
  const real = realOnes(set)
  const notices: Notice[] = real.map((at) => {
    const change = set.departures[at] ?? 0
    return {
      grade: 'information',
      text: `Cylinder ${at + 1} became ${inWords(Math.abs(change), 'temperatureDifference')} ${change < 0 ? 'colder' : 'hotter'} than the others did.`,
    }
  })
  if (Math.abs(set.centre) > LARGE_COMMON)
    notices.push({
      grade: 'caution',
      text: `All cylinders together changed by ${inWords(set.centre, 'temperatureDifference')}. The two runs were not made at the same load or in the same air; differences between cylinders grow with load too.`,
    })
  if (real.length * 2 >= set.departures.length)
    notices.push({
      grade: 'caution',
      text: 'Half of the cylinders or more changed: then the median is no longer what the untouched ones did.',
    })
  if (set.departures.length <= FEW)
    notices.push({
      grade: 'caution',
      text: `With ${set.departures.length} cylinders the common change rests on very few readings.`,
    })
  return notices
}

/** Which cylinders changed against the others, by more than probe and run-to-run scatter make. */
export function compute(input: Values) {
  const set = changesOf(input)
  const column = (id: 'before' | 'after') => input.cylinders.map((row) => row[id] ?? Number.NaN)
  const spread = (values: readonly number[]) => SIGMA_PER_MAD * medianAbsoluteDeviation(values)
  const real = realOnes(set).length
  const change = set.departures[set.farthest] ?? 0
  const score = set.modifiedZ[set.farthest] ?? 0
  return {
    outputs: {
      verdict: real > 0 ? ('some' as const) : ('none' as const),
      real,
      cylinder: set.farthest + 1,
      change,
      score,
      smallest: threshold(set, input),
      common: set.centre,
      spreadBefore: spread(column('before')),
      spreadAfter: spread(column('after')),
    },
    steps: [
      step('What all cylinders did together', 'δ̃', 'median of T₂ − T₁', set.centre, 'temperatureDifference'),
      step(
        'Scatter of the changes',
        'σ_δ',
        '1.4826 median of |T₂ − T₁ − δ̃|',
        set.sigma,
        'temperatureDifference',
      ),
      step(
        'Scatter that the probe alone makes',
        'σ_r',
        '√2 U_r / 1.96',
        (Math.SQRT2 * input.repeatability) / COVERAGE,
        'temperatureDifference',
      ),
      step('Largest change against the others', 'Δ', 'T₂ − T₁ − δ̃', change, 'temperatureDifference'),
      step('Its modified z', 'M', 'Δ over the larger of σ_δ and σ_r', score, 'ratio'),
    ],
    notices: noticesOf(set),
  }
}
