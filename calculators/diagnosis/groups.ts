import type { RankedCause, Ranking } from './rank.ts'
import { separating, twinsOf } from './twins.ts'
import type { Knowledge, KnownCheck } from './types.ts'

/** Causes that no reading and no glass tells apart, or a single one that has none like it. */
export interface RankedGroup {
  /** The likeliest first; never none. */
  readonly causes: readonly RankedCause[]
  /** Of all of them together, 0 to 1. */
  readonly share: number
  /** Checks that find one of them and not another; none for a single cause. */
  readonly separating: readonly KnownCheck[]
}

/**
 * The causes of a ranking with those together that no reading tells apart.
 * @param knowledge of the circuit
 * @param ranking of its causes
 * @returns every cause once, the likeliest group first
 * @source common practice (what counts as alike)
 */
export function groupsOf(knowledge: Knowledge, { causes }: Ranking): RankedGroup[] {
  const twins = twinsOf(knowledge)
  const key = ({ fault }: RankedCause): string =>
    twins.find((group) => group.includes(fault))?.join(' ') ?? fault
  return [...Map.groupBy(causes, key).values()]
    .map((alike): RankedGroup => ({
      causes: alike,
      share: alike.reduce((sum, { share }) => sum + share, 0),
      separating:
        alike.length > 1
          ? separating(
              knowledge,
              alike.map(({ fault }) => fault),
            )
          : [],
    }))
    .toSorted((a, b) => b.share - a.share)
}
