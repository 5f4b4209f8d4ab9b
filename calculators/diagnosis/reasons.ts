import type { Hypothesis, Ranking } from './rank.ts'
import type { Item } from './items.ts'

export interface Reason {
  readonly item: Item
  /** Logarithm of how much likelier it is with this cause than among all. */
  readonly weight: number
  readonly words:
    | 'speaks strongly for it'
    | 'speaks for it'
    | 'says little'
    | 'speaks against it'
    | 'speaks strongly against it'
}

/** Ten times and twice as likely. */
const STRONG = Math.log(10)
const SOME = Math.log(2)

function wordsOf(weight: number): Reason['words'] {
  if (weight >= STRONG) return 'speaks strongly for it'
  if (weight >= SOME) return 'speaks for it'
  if (weight > -SOME) return 'says little'
  return weight > -STRONG ? 'speaks against it' : 'speaks strongly against it'
}

/**
 * What each observation says of a cause: how much likelier it is with it, at the severities that are left, than among
 * all causes and health before anything was known.
 * @param ranking that was made
 * @param hypothesis one of its explanations
 * @returns a reason for each observation, the weightiest first
 */
export function reasonsOf({ items, usual }: Ranking, hypothesis: Hypothesis): Reason[] {
  return items
    .map((item, place): Reason => {
      const weight = Math.log(hypothesis.perItem[place] ?? 1) - Math.log(usual[place] ?? 1)
      return { item, weight, words: wordsOf(weight) }
    })
    .toSorted((a, b) => Math.abs(b.weight) - Math.abs(a.weight))
}
