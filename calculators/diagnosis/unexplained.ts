import type { Item } from './items.ts'
import { unknownLikelihood } from './predict.ts'
import type { Ranking } from './rank.ts'

/** From this share on nothing fits. */
export const NOTHING_FITS = 0.5
/** Below this share of what nobody thought of, all fits well enough. */
export const FITS_WELL = 0.15
/** An explanation leaves something out where what nobody thought of makes it so much likelier. */
const LIKELIER = 3
/** Something does not fit where so large a share of the explanations leave something out, each perhaps another thing. */
const HARDLY_ANY_FITS = 0.8
/** What so large a share of them leaves out goes with none, however well the rest fits. */
const GOES_WITH_NONE = 0.98
/** What is left out by a smaller share of them is not named. */
const NAMED_FROM = 0.25
/** Where all fits a little badly, so many are named: one alone does not contradict itself. */
const AT_LEAST = 2

/**
 * What no cause in the list explains, or not together with the rest.
 * @param ranking that was made
 * @returns the observations to be looked at again, the one that fits worst first; none where all fits well enough
 * @source common practice (from where on something does not fit)
 */
export function unexplainedOf({ items, causes, pairs, healthy, unknown }: Ranking): Item[] {
  const known = [healthy, ...causes.map(({ alone }) => alone), ...pairs]
  const whole = known.reduce((sum, { share }) => sum + share, 0)
  const needed = items.map((item, place) => unknownLikelihood(item, healthy.perItem[place] ?? 0) / LIKELIER)
  const explanations = known.map(({ share, perItem }) => ({
    share: share / whole,
    leavesOut: needed.flatMap((least, place) => ((perItem[place] ?? 0) < least ? [place] : [])),
  }))
  const shareOf = (leaves: (places: readonly number[]) => boolean): number =>
    explanations.reduce((sum, { share, leavesOut }) => (leaves(leavesOut) ? sum + share : sum), 0)
  const ordered = items
    .map((item, place) => ({ item, place, by: shareOf((places) => places.includes(place)) }))
    .toSorted((a, b) => b.by - a.by)
  const withNone = ordered.filter(({ by }) => by >= GOES_WITH_NONE)
  const rest = shareOf((places) => places.some((place) => withNone.every((one) => one.place !== place)))
  if (withNone.length > 0 && rest < HARDLY_ANY_FITS) return withNone.map(({ item }) => item)
  const asking = unknown >= FITS_WELL && shareOf((places) => places.length > 0) >= HARDLY_ANY_FITS
  const badly = asking ? ordered.filter(({ by }) => by >= NAMED_FROM) : withNone
  const named = badly.length === 0 && unknown >= NOTHING_FITS ? ordered.slice(0, AT_LEAST) : badly
  return named.map(({ item }) => item)
}
