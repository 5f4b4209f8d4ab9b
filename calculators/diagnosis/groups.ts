import type { PlantState } from '../checks/types.ts'
import { operatingStates, type OperatingState } from '../circuit/types.ts'
import { alikeNow, apartIn } from './alike-now.ts'
import { placeOfFind, statesOf } from './items.ts'
import type { RankedCause, Ranking } from './rank.ts'
import { separating, twinsOf } from './twins.ts'
import type { Knowledge, KnownCheck } from './types.ts'

/**
 * Causes that no reading and no glass tells apart in the states in which anything was looked at, or a single one that
 * has none like it.
 */
export interface RankedGroup {
  /** The likeliest first; never none. */
  readonly causes: readonly RankedCause[]
  /** Of all of them together, 0 to 1. */
  readonly share: number
  /** Checks that find one of them and not another; none for a single cause. */
  readonly separating: readonly KnownCheck[]
  /** Other states in which glasses and gauges tell some of them apart, and which are safe; none for a single cause. */
  readonly apartIn: readonly OperatingState[]
}

/** Groups by what was looked at; where nothing was, by all that could be. */
function together(
  knowledge: Knowledge,
  { causes, items }: Ranking,
  looked: readonly OperatingState[],
): readonly (readonly RankedCause[])[] {
  if (items.some(({ from }) => from !== 'named')) return alikeNow(knowledge, causes, looked)
  const twins = twinsOf(knowledge)
  return [
    ...Map.groupBy(
      causes,
      ({ fault }) => twins.find((group) => group.includes(fault))?.join(' ') ?? fault,
    ).values(),
  ]
}

/** Parts of a group, once checks were made that find some of it and not others: by what each of them was to find. */
function byFinds(
  { checks }: Knowledge,
  { items }: Ranking,
  causes: readonly RankedCause[],
): (readonly RankedCause[])[] {
  const made = items.flatMap(({ observation: { id, value } }) => {
    const finds = checks.find((check) => check.id === id)?.finds ?? []
    return finds.length === 0 ? [] : [{ finds, found: placeOfFind(value) }]
  })
  const agrees = ({ fault }: RankedCause): string =>
    made
      .map(({ finds, found }) => {
        const place = finds.findIndex(({ faults }) => faults.includes(fault))
        // Nothing was found: what would have been found is on the one side, what nobody could find on the other.
        return String(found === undefined ? place >= 0 : place === found)
      })
      .join(' ')
  return [...Map.groupBy(causes, agrees).values()]
}

/**
 * The causes of a ranking with those together that no reading tells apart where anything was looked at.
 * @param knowledge of the circuit
 * @param ranking of its causes
 * @param safe states to which the plant may be brought to learn more
 * @returns every cause once, the likeliest group first
 * @source common practice (what counts as alike)
 */
export function groupsOf(knowledge: Knowledge, ranking: Ranking, safe: readonly PlantState[]): RankedGroup[] {
  const looked = statesOf(ranking.items)
  const others = operatingStates.filter((state) => safe.includes(state) && !looked.includes(state))
  return together(knowledge, ranking, looked)
    .flatMap((causes) => byFinds(knowledge, ranking, causes))
    .map((causes): RankedGroup => {
      const several = causes.length > 1
      const faults = causes.map(({ fault }) => fault)
      return {
        causes,
        share: causes.reduce((sum, { share }) => sum + share, 0),
        separating: several ? separating(knowledge, faults) : [],
        apartIn: several ? apartIn(knowledge, causes, others) : [],
      }
    })
    .toSorted((a, b) => b.share - a.share)
}
