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
  const leftOut = items.map(() => 0)
  let leavingOut = 0
  for (const { share, perItem } of known) {
    const places = needed.flatMap((least, place) => ((perItem[place] ?? 0) < least ? [place] : []))
    for (const place of places) leftOut[place] = (leftOut[place] ?? 0) + share / whole
    if (places.length > 0) leavingOut += share / whole
  }
  const ordered = items
    .map((item, place) => ({ item, by: leftOut[place] ?? 0 }))
    .toSorted((a, b) => b.by - a.by)
  const goesWithNone = ordered.filter(({ by }) => by >= GOES_WITH_NONE)
  if (goesWithNone.length > 0) return goesWithNone.map(({ item }) => item)
  const asking = unknown >= FITS_WELL && leavingOut >= HARDLY_ANY_FITS
  const badly = asking ? ordered.filter(({ by }) => by >= NAMED_FROM) : []
  const named = badly.length === 0 && unknown >= NOTHING_FITS ? ordered.slice(0, AT_LEAST) : badly
  return named.map(({ item }) => item)
}
