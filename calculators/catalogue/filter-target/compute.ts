import { refuse } from '../../calculator/refusal.ts'
import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { betaForOnePass, betaForTurns, turnsNeeded } from '../../cleanliness/beta.ts'
import { countsOf } from '../../cleanliness/iso-4406.ts'
import { formatNumber } from '../../quantity/format.ts'
import { step } from '../step.ts'
import { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

/** Makers state ratios up to 1000; beyond, no test tells filters apart. Common practice, no published source. */
const LARGEST_STATED = 1000

interface Size {
  readonly size: number
  readonly before: number
  readonly after: number
}

/** Upper ends on both sides: the dirtiest fuel of its code to the dirtiest that the target allows. */
function sizesOf(input: Values): readonly [Size, Size, Size] {
  const one = (size: number, now: string, wanted: string): Size => ({
    size,
    before: countsOf(Number(now)).upTo,
    after: countsOf(Number(wanted)).upTo,
  })
  return [
    one(4, input.now4, input.wanted4),
    one(6, input.now6, input.wanted6),
    one(14, input.now14, input.wanted14),
  ]
}

const disordered = (first: string, second: string, third: string) =>
  Number(second) > Number(first) || Number(third) > Number(second)

function noticesOf(input: Values, strictest: number): Notice[] {
  const notices: Notice[] = []
  if (
    disordered(input.now4, input.now6, input.now14) ||
    disordered(input.wanted4, input.wanted6, input.wanted14)
  )
    notices.push({
      grade: 'caution',
      text: 'A code never rises from left to right, since the smaller size includes the larger one. One of these numbers is wrong.',
    })
  if (strictest > LARGEST_STATED)
    notices.push({
      grade: 'action',
      text: `More than ${LARGEST_STATED} is asked: use two filters one after the other, or pass the fuel more often.`,
    })
  notices.push({
    grade: 'information',
    text: 'Ratios from the laboratory hold for steady flow and clean bottles. Vibration and starts give some of the dirt back, so ask for a margin. What falls into the tank after the filter counts too.',
  })
  return notices
}

/** The ratio that a filter must have at each size of the code. */
export function compute(input: Values) {
  const sizes = sizesOf(input)
  const least = Math.max(...sizes.map(({ before, after }) => turnsNeeded(before, after, 1)))
  if (input.passes === 'again' && input.turns <= least)
    return refuse(
      'turns',
      `${inputs.turns.label} are ${formatNumber(input.turns, 3)}, too few even for a filter that stops everything, since cleaned fuel mixes with the rest`,
      `more than ${formatNumber(least, 3)} turns`,
    )
  const betas = sizes.map(({ before, after }) =>
    input.passes === 'again' ? betaForTurns(before, after, input.turns) : betaForOnePass(before, after),
  )
  const [beta4 = Number.NaN, beta6 = Number.NaN, beta14 = Number.NaN] = betas
  const strictest = Math.max(...betas)
  const rule = input.passes === 'again' ? '1 / [1 − ln(N/N_t) / n]' : 'N / N_t'
  return {
    outputs: {
      beta4,
      beta6,
      beta14,
      leastTurns: least,
      verdict:
        strictest === 1
          ? ('none' as const)
          : strictest <= LARGEST_STATED
            ? ('possible' as const)
            : ('beyond' as const),
    },
    steps: sizes.flatMap(({ size, before, after }, index) => [
      step(`Now at most, ${size} µm(c)`, 'N', 'table of ISO 4406', before, 'particleConcentration'),
      step(`Wanted at most, ${size} µm(c)`, 'N_t', 'table of ISO 4406', after, 'particleConcentration'),
      step(`Beta needed at ${size} µm(c)`, 'β', rule, betas[index] ?? Number.NaN, 'ratio'),
    ]),
    notices: noticesOf(input, strictest),
  }
}
