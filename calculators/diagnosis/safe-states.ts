import { plantStates, type PlantState } from '../checks/types.ts'
import { placeOfFind } from './items.ts'
import type { Ranking } from './rank.ts'
import type { Knowledge, NotWith, Observation } from './types.ts'

/** From this share of causes on with which the engine is not run, it is not proposed. */
const UNSAFE_FROM = 0.1

/** The engine stands. */
export const STANDING: readonly PlantState[] = ['stopped', 'priming']

/** What was found by a check or told in words that forbids something. */
function forbiddenBy(
  { observables, checks }: Knowledge,
  notWith: NotWith,
  told: readonly Observation[],
): string | undefined {
  const grave = new Set([...notWith.faults, ...notWith.found])
  for (const { id, value } of told) {
    const check = checks.find((one) => one.id === id)
    const find = check?.finds[placeOfFind(value) ?? -1]
    if (check && find?.faults.some((fault) => grave.has(fault)))
      return `The reason is what was found: ${find.says}`
    const observable = observables[id]
    if (notWith.told[id]?.includes(String(value)) && observable && 'values' in observable)
      return `The reason is what was told. ${observable.label}: ${observable.values[String(value)] ?? value}`
  }
  return undefined
}

/** A reading that is higher than the plant allows, whether it is believed or not. */
function tooHigh({ highest, observables }: Knowledge, told: readonly Observation[]): string | undefined {
  const over = told.find(({ id, value }) => typeof value === 'number' && value > (highest[id] ?? Infinity))
  return (
    over && `The reason is a reading above what the plant allows: ${observables[over.id]?.label ?? over.id}.`
  )
}

/** A cause that may be there and forbids something. */
function forbiddenFor({ faults }: Knowledge, notWith: NotWith, { causes }: Ranking): string | undefined {
  const likely = causes.filter(({ fault }) => notWith.faults.includes(fault))
  const share = likely.reduce((sum, one) => sum + one.share, 0)
  if (share < UNSAFE_FROM) return undefined
  return `The reason is what may be the cause: ${faults.find(({ id }) => id === likely[0]?.fault)?.title ?? ''}.`
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
  const noPump = forbiddenBy(knowledge, doNotPrime, told) ?? forbiddenFor(knowledge, doNotPrime, ranking)
  if (noPump !== undefined)
    return {
      states: ['stopped'],
      doNotRun: `Stop the engine and the fuel pump, and run neither to learn more. ${noPump}`,
    }
  const noEngine =
    forbiddenBy(knowledge, doNotRun, told) ??
    tooHigh(knowledge, told) ??
    forbiddenFor(knowledge, doNotRun, ranking)
  return noEngine === undefined
    ? { states: plantStates }
    : { states: STANDING, doNotRun: `Stop the engine, and do not run it to learn more. ${noEngine}` }
}
