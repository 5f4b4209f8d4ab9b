import type { PlantState } from '../checks/types.ts'
import { doubtsOf, type Doubt } from './doubts.ts'
import { groupsOf, type RankedGroup } from './groups.ts'
import type { Item } from './items.ts'
import { nextCheck, type NextCheck } from './next-check.ts'
import { rank, type Ranking } from './rank.ts'
import { unexplainedOf } from './unexplained.ts'
import { safeStates } from './safe-states.ts'
import type { Knowledge, KnownStates, Observation } from './types.ts'
import { verdictOf } from './verdict.ts'

/** All that can be said of what a person told. */
export interface Diagnosis {
  /** What cannot be right and is to be asked about; the ranking leaves it out. */
  readonly doubts: readonly Doubt[]
  readonly ranking: Ranking
  /** Every cause once, those together that no reading tells apart. */
  readonly groups: readonly RankedGroup[]
  /** What no cause in the list explains, or not together with the rest. */
  readonly unexplained: readonly Item[]
  readonly verdict: string
  readonly next: NextCheck
}

/**
 * From what a person told to the causes, and to the check to be made next.
 * @param knowledge of the circuit
 * @param observations as they were told, in any order
 * @param states what it costs to bring the plant into a state [min]
 * @param now state of the plant
 * @returns doubts, causes with their shares, a verdict and the next checks
 * @source common practice (weights and likelihoods are estimates; the rule is Bayes')
 */
export function diagnose(
  knowledge: Knowledge,
  observations: readonly Observation[],
  states: KnownStates,
  now: PlantState,
): Diagnosis {
  const { sound, doubts } = doubtsOf(knowledge, observations)
  const ranking = rank(knowledge, sound)
  const groups = groupsOf(knowledge, ranking, safeStates(knowledge, ranking, observations).states)
  const unexplained = unexplainedOf(ranking)
  return {
    doubts,
    ranking,
    groups,
    unexplained,
    verdict: verdictOf(ranking, groups, doubts.length, unexplained),
    next: nextCheck(knowledge, ranking, observations, states, now),
  }
}
