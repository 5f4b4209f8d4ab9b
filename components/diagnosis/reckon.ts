import type { PlantState } from '../../calculators/checks/types.ts'
import {
  diagnose,
  reasonsOf,
  type Knowledge,
  type KnownStates,
  type Observation,
  type RankedGroup,
  type Ranking,
} from '../../calculators/diagnosis/index.ts'
import { keyOfObservation } from './keys.ts'
import type { Findings, FoundGroup } from './types.ts'

/** So many groups tell their reasons; those behind are not opened. */
const WITH_REASONS = 12

/** Two causes together with a smaller share are not told of. */
const PAIR_FROM = 0.05
const SHOWN_PAIRS = 3

/** Once a check has told the causes of a group apart, they are no group any more. */
function toldApart(group: RankedGroup, made: ReadonlySet<string>): RankedGroup[] {
  if (!group.separating.some(({ id }) => made.has(id))) return [group]
  return group.causes.map((cause) => ({ causes: [cause], share: cause.share, separating: [] }))
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
  }
}

/**
 * What the page shows of what was told: causes with shares that sum to one, and the next checks.
 * @param knowledge of the circuit
 * @param states what it costs to bring the plant into a state [min]
 * @param observations as they were told
 * @param now state of the plant
 */
export function reckon(
  knowledge: Knowledge,
  states: KnownStates,
  observations: readonly Observation[],
  now: PlantState,
): Findings {
  const { doubts, ranking, groups, verdict, next } = diagnose(knowledge, observations, states, now)
  const made = new Set(observations.map(({ id }) => id))
  return {
    verdict,
    doubts: doubts.map(({ observation, says, perhaps }) => ({
      key: keyOfObservation(observation),
      says,
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
    next: next.proposals.map(({ check, state, minutes }) => ({ check: check.id, state, minutes })),
    ...(next.doNotRun === undefined ? {} : { doNotRun: next.doNotRun }),
  }
}
