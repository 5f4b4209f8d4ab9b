import type { RankedGroup } from './groups.ts'
import type { Ranking } from './rank.ts'

/** From this share on one thing is said to be so. */
const LIKELY = 0.5

/**
 * The ranking in one sentence, never surer than it is.
 * @param ranking that was made
 * @param groups of its causes
 * @param doubts how many things were told that cannot be right
 */
export function verdictOf(
  { items, causes, pairs, healthy, unknown }: Ranking,
  groups: readonly RankedGroup[],
  doubts: number,
): string {
  if (doubts > 0)
    return 'Something that was told cannot be right: answer the questions first. The order below leaves it out.'
  if (items.length === 0) return 'Nothing was told yet: the order is only that of how often causes are met.'
  if (unknown >= LIKELY)
    return 'Nothing here fits: what was told agrees with no cause in the list. Check the readings, and think of others.'
  if (healthy.share >= LIKELY) return 'What was told is what a sound plant shows.'
  const [first] = causes
  const [pair] = pairs
  if (pair && pair.share >= LIKELY) return 'Two causes together account for it best.'
  if (first && first.share >= LIKELY)
    return 'One cause stands out; confirm it before anything is taken apart.'
  const [group] = groups
  if (group && group.share >= LIKELY)
    return 'It is one of a few causes that no reading tells apart; the checks beside them do.'
  return 'Several causes are left; the next check is chosen to tell them apart.'
}
