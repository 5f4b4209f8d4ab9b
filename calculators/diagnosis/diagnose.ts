import type { PlantState } from '../checks/types.ts'
import { judge, type Judgement } from './judge.ts'
import { nextCheck, type NextCheck } from './next-check.ts'
import type { Knowledge, KnownStates, Observation } from './types.ts'

/** All that can be said of what a person told. */
export interface Diagnosis extends Judgement {
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
  const judgement = judge(knowledge, observations)
  return { ...judgement, next: nextCheck(knowledge, judgement.ranking, observations, states, now) }
}
