import type { RankedGroup } from './groups.ts'
import type { Item } from './items.ts'
import type { Ranking } from './rank.ts'
import { FITS_WELL, NOTHING_FITS } from './unexplained.ts'

/** From this share on one thing is said to be so. */
const LIKELY = 0.5
/** From this share of its group on one cause of it is the one to be thought of. */
const NEARLY_ALL = 0.9

/**
 * The ranking in one sentence, never surer than it is.
 * @param ranking that was made
 * @param groups of its causes
 * @param doubts how many things were told that cannot be right
 * @param unexplained what no cause explains, or not together with the rest
 */
export function verdictOf(
  ranking: Ranking,
  groups: readonly RankedGroup[],
  doubts: number,
  unexplained: readonly Item[],
): string {
  const { items, unknown } = ranking
  if (doubts > 0)
    return 'Something that was told cannot be right. Answer the questions first; until then the order goes without it.'
  if (items.length === 0) return 'Nothing was told yet. The order is that of how often each cause is met.'
  if (unexplained.length === 1 && unknown >= FITS_WELL)
    return 'One thing that was told goes with no cause in the list. Look at it again; if it is a gauge, check its unit and compare it with another gauge.'
  if (unknown >= NOTHING_FITS)
    return 'Nothing here fits: no cause in the list explains all that was told. Look again at what is named here. If it stands, think of a cause that is not in the list.'
  if (unexplained.length > 1)
    return 'Some of what was told does not go together. Look again at what is named here before you trust the order.'
  const also =
    unexplained.length === 1 ? ' One thing that was told does not go with it: look at it again.' : ''
  return `${ofCauses(ranking, groups)}${also}`
}

function ofCauses({ healthy, causes, pairs }: Ranking, groups: readonly RankedGroup[]): string {
  if (healthy.share >= LIKELY) return 'What was told is what a sound plant shows.'
  const [first] = causes
  const [pair] = pairs
  const [group] = groups
  if (pair && pair.share >= LIKELY) return 'Two causes together explain it best.'
  if (first && first.share >= LIKELY && first.share >= NEARLY_ALL * (group?.share ?? 0))
    return 'One cause stands out. Confirm it before anything is taken apart.'
  if (group && group.share >= LIKELY)
    return 'It is one of a few causes that no reading so far tells apart. What does is named with them.'
  return 'Several causes are left. The next check is chosen to tell them apart.'
}
