import { refuse } from '../../calculator/refusal.ts'
import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { betaRatio, dirtRate, efficiencyOf } from '../../cleanliness/beta.ts'
import { FEWEST_SURE } from '../../cleanliness/iso-4406.ts'
import { step } from '../step.ts'
import type { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

/** ISO 16889 rates filters of an average β of 75 and more. [-] */
const RATED_FROM = 75

function noticesOf(beta: number, raw: number): Notice[] {
  const notices: Notice[] = []
  if (beta < 1)
    notices.push({
      grade: 'action',
      text: 'More particles after the filter than before it: samples exchanged, dirty bottle or sampling valve, or an element that sheds or is torn.',
    })
  if (raw < FEWEST_SURE)
    notices.push({
      grade: 'caution',
      text: `Fewer than ${FEWEST_SURE} particles were seen behind the filter: chance alone moves the ratio by a quarter and more. Count a larger volume.`,
    })
  if (beta >= RATED_FROM)
    notices.push({
      grade: 'information',
      text: 'At ratios this high a speck from the bottle or the valve decides. The laboratory test counts on line for that reason.',
    })
  notices.push({
    grade: 'information',
    text: 'A ratio belongs to its particle size; without the size it says nothing. Two samples from an engine are no multi-pass test: they show this filter today.',
  })
  return notices
}

/** What the counts say of the filter, and how long its element can take the dirt. */
export function compute(input: Values) {
  if (input.upstream === 0)
    return refuse(
      'upstream',
      'No particle was counted before the filter, so nothing can be said of what it stops',
      'a count above zero',
    )
  const beta = betaRatio(input.upstream, input.downstream)
  const efficiency = efficiencyOf(beta)
  const rate = dirtRate(input.serviceFlow, input.dirt, input.caughtShare)
  const raw = input.downstream * input.countedVolume
  return {
    outputs: {
      beta,
      efficiency,
      passed: 1 / beta,
      dirtRate: rate,
      life: input.capacity / rate,
      verdict:
        beta < 1
          ? ('sheds' as const)
          : beta < 2
            ? ('hardly' as const)
            : beta < RATED_FROM
              ? ('some' as const)
              : ('most' as const),
    },
    steps: [
      step('Ratio', 'β', 'N_u / N_d', beta, 'ratio'),
      step('Share that is stopped', 'E', '1 − 1/β', efficiency, 'ratio'),
      step('Particles seen behind the filter', 'n_d', 'N_d V_s', raw, 'ratio'),
      { ...step('Dirt taken up', 'ṁ', 'Q c e', rate, 'massFlow'), unit: 'g/h' },
      { ...step('Life', 't', 'm / ṁ', input.capacity / rate, 'time'), unit: 'h' },
    ],
    notices: noticesOf(beta, raw),
  }
}
