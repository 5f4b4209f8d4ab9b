import { plantStates, type PlantState } from '../checks/types.ts'
import type { Ranking } from './rank.ts'
import type { Knowledge, NotWith, Observation } from './types.ts'

/** From this share of causes on with which the engine is not run, it is not proposed. */
const UNSAFE_FROM = 0.1

/** The engine stands. */
export const STANDING: readonly PlantState[] = ['stopped', 'priming']

/** Why something is not to be done, by what was told, in doubt or not, or by what may be the cause. */
function against(
  { faults, observables, checks }: Knowledge,
  notWith: NotWith,
  { causes }: Ranking,
  told: readonly Observation[],
): string | undefined {
  for (const { id, value } of told) {
    const check = checks.find((one) => one.id === id)
    const find = check?.finds[Number(String(value).replace('find-', '')) - 1]
    if (check && find?.faults.some((fault) => notWith.faults.includes(fault)))
      return `${check.label}: what was found forbids it.`
    if (notWith.told[id]?.includes(String(value)))
      return `${observables[id]?.label ?? id}: what was told forbids it.`
  }
  const likely = causes.filter(({ fault }) => notWith.faults.includes(fault))
  const share = likely.reduce((sum, one) => sum + one.share, 0)
  if (share < UNSAFE_FROM) return undefined
  return `${faults.find(({ id }) => id === likely[0]?.fault)?.title ?? ''}: this may be the cause.`
}

/**
 * In which states the plant may be brought to learn more, and why not in all.
 * @param knowledge of the circuit
 * @param ranking of the causes so far
 * @param told all that was told, what is in doubt too
 */
export function safeStates(
  knowledge: Knowledge,
  ranking: Ranking,
  told: readonly Observation[],
): { readonly states: readonly PlantState[]; readonly doNotRun?: string } {
  const { doNotRun, doNotPrime } = knowledge.weights
  const noPump = against(knowledge, doNotPrime, ranking, told)
  if (noPump !== undefined)
    return {
      states: ['stopped'],
      doNotRun: `Run neither the engine nor the fuel pump to learn more. ${noPump}`,
    }
  const noEngine = against(knowledge, doNotRun, ranking, told)
  return noEngine === undefined
    ? { states: plantStates }
    : { states: STANDING, doNotRun: `Do not run the engine to learn more. ${noEngine}` }
}
