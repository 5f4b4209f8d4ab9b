import type { PlantState } from '../../calculators/checks/types.ts'
import {
  reasonsOf,
  type Knowledge,
  type KnownStates,
  type Observation,
  type RankedGroup,
  type Ranking,
} from '../../calculators/diagnosis/index.ts'
import { judge } from '../../calculators/diagnosis/judge.ts'
import { nextCheck } from '../../calculators/diagnosis/next-check.ts'
import { keyOfObservation } from './keys.ts'
import type { FoundCauses, FoundGroup, FoundNext } from './types.ts'

/** So many groups tell their reasons; those behind are not opened. */
const WITH_REASONS = 12

/** Two causes together with a smaller share are not told of. */
const PAIR_FROM = 0.05
const SHOWN_PAIRS = 3

function foundGroup(ranking: Ranking, group: RankedGroup, place: number): FoundGroup {
  const [first] = group.causes
  return {
    share: group.share,
    causes: group.causes.map(({ fault, share, cylinder }) => ({
      fault,
      share,
      ...(cylinder === undefined ? {} : { cylinder }),
    })),
    reasons:
      first === undefined || place >= WITH_REASONS
        ? []
        : reasonsOf(ranking, first.alone).map(({ item, weight }) => ({
            key: keyOfObservation(item.observation),
            label: item.label,
            weight,
          })),
    separating: group.separating.map(({ id }) => id),
    apartIn: group.apartIn,
  }
}

/**
 * The causes of what was told, with shares that sum to one.
 * @param knowledge of the circuit
 * @param observations as they were told
 * @returns what the page shows, and the ranking from which the next check follows
 */
export function findCauses(
  knowledge: Knowledge,
  observations: readonly Observation[],
): { readonly ranking: Ranking; readonly causes: FoundCauses } {
  const { doubts, ranking, groups, unexplained, verdict } = judge(knowledge, observations)
  const causes: FoundCauses = {
    verdict,
    unexplained: unexplained.map(({ observation }) => keyOfObservation(observation)),
    doubts: doubts.map(({ observation, says, mayStand, limit, perhaps }) => ({
      key: keyOfObservation(observation),
      says,
      mayStand,
      ...(limit === undefined ? {} : { limit }),
      ...(perhaps === undefined ? {} : { perhaps }),
    })),
    groups: groups.map((group, place) => foundGroup(ranking, group, place)),
    healthy: ranking.healthy.share,
    unknown: ranking.unknown,
    pairs: ranking.pairs
      .filter(({ share }, place) => place < SHOWN_PAIRS && share >= PAIR_FROM)
      .map(({ faults, share }) => ({ faults, share })),
  }
  return { ranking, causes }
}

/**
 * The checks to be made next.
 * @param knowledge of the circuit
 * @param ranking of the causes so far
 * @param observations as they were told
 * @param states what it costs to bring the plant into a state [min]
 * @param now state of the plant
 */
export function findNext(
  knowledge: Knowledge,
  ranking: Ranking,
  observations: readonly Observation[],
  states: KnownStates,
  now: PlantState,
): FoundNext {
  const { proposals, doNotRun } = nextCheck(knowledge, ranking, observations, states, now)
  return {
    checks: proposals.map(({ check, state, minutes }) => ({ check: check.id, state, minutes })),
    ...(doNotRun === undefined ? {} : { doNotRun }),
  }
}
