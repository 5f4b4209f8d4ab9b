import { doubtsOf, type Doubt } from './doubts.ts'
import { groupsOf, type RankedGroup } from './groups.ts'
import type { Item } from './items.ts'
import { rank, type Ranking } from './rank.ts'
import { safeStates } from './safe-states.ts'
import type { Knowledge, Observation } from './types.ts'
import { unexplainedOf } from './unexplained.ts'
import { verdictOf } from './verdict.ts'

/** What can be said of the causes. */
export interface Judgement {
  /** What cannot be right and is to be asked about; the ranking leaves it out. */
  readonly doubts: readonly Doubt[]
  readonly ranking: Ranking
  /** Every cause once, those together that no reading tells apart. */
  readonly groups: readonly RankedGroup[]
  /** What was told that no cause explains, or not together with the rest. */
  readonly unexplained: readonly Item[]
  readonly verdict: string
}

/**
 * From what a person told to the causes.
 * @param knowledge of the circuit
 * @param observations as they were told, in any order
 * @source common practice (weights and likelihoods are estimates; the rule is Bayes')
 */
export function judge(knowledge: Knowledge, observations: readonly Observation[]): Judgement {
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
  }
}
