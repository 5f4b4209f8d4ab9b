import type { PlantState } from '../../calculators/checks/types.ts'
import { doubtsOf } from '../../calculators/diagnosis/doubts.ts'
import { groupsOf } from '../../calculators/diagnosis/groups.ts'
import {
  reasonsOf,
  type Knowledge,
  type KnownStates,
  type Observation,
  type RankedGroup,
  type Ranking,
} from '../../calculators/diagnosis/index.ts'
import { nextCheck } from '../../calculators/diagnosis/next-check.ts'
import { rank } from '../../calculators/diagnosis/rank.ts'
import { safeStates } from '../../calculators/diagnosis/safe-states.ts'
import { unexplainedOf } from '../../calculators/diagnosis/unexplained.ts'
import { verdictOf } from '../../calculators/diagnosis/verdict.ts'
import { keyOfObservation } from './keys.ts'
import type { FoundCauses, FoundGroup, FoundNext } from './types.ts'

/** So many groups tell their reasons; those behind are not opened. */
const WITH_REASONS = 12

/** Two causes together with a smaller share are not told of. */
const PAIR_FROM = 0.05
const SHOWN_PAIRS = 3

/** Whether the doubt goes when the person says that the reading is right. */
function mayStand(knowledge: Knowledge, observations: readonly Observation[], doubted: Observation): boolean {
  const confirmed = observations.map((one) => (one === doubted ? { ...one, sure: true } : one))
  return doubtsOf(knowledge, confirmed).sound.some(
    (one) => keyOfObservation(one) === keyOfObservation(doubted),
  )
}

/** Once a check has told the causes of a group apart, they are no group any more. */
function toldApart(group: RankedGroup, made: ReadonlySet<string>): RankedGroup[] {
  if (!group.separating.some(({ id }) => made.has(id))) return [group]
  return group.causes.map((cause) => ({ causes: [cause], share: cause.share, separating: [], apartIn: [] }))
}

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
  const { sound, doubts } = doubtsOf(knowledge, observations)
  const ranking = rank(knowledge, sound)
  const groups = groupsOf(knowledge, ranking, safeStates(knowledge, ranking, observations).states)
  const unexplained = unexplainedOf(ranking)
  const made = new Set(observations.map(({ id }) => id))
  const causes: FoundCauses = {
    verdict: verdictOf(ranking, groups, doubts.length, unexplained),
    unexplained: unexplained.map(({ observation }) => keyOfObservation(observation)),
    doubts: doubts.map(({ observation, says, limit, perhaps }) => ({
      key: keyOfObservation(observation),
      says,
      mayStand: mayStand(knowledge, observations, observation),
      ...(limit === undefined ? {} : { limit }),
      ...(perhaps === undefined ? {} : { perhaps }),
    })),
    groups: groups
      .flatMap((group) => toldApart(group, made))
      .toSorted((a, b) => b.share - a.share)
      .map((group, place) => foundGroup(ranking, group, place)),
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
