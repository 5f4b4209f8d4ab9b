import type { FaultData } from '../faults/types.ts'
import type { Answer, FaultAt, Hypothesis } from './types.ts'

/** How often a cause is met beside one of the next lower grade. An editorial estimate, no published source. */
const WEIGHTS = { common: 9, occasional: 3, rare: 1 } as const

/** A fault slighter than the first of these would hardly be reported. */
const SINGLE_LEVELS = [0.25, 0.5, 0.75, 1] as const
/** Pairs are many, so each fault of a pair is looked at in one range only. */
const PAIR_LEVELS = [0.4, 1] as const

export const sameFaults = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((fault) => b.includes(fault))

/** Every fault of the circuit as an answer by itself. @source common practice */
export function singleAnswers(faults: readonly FaultData[]): Answer[] {
  return faults.map(({ id, frequency }) => ({ faults: [id], weight: WEIGHTS[frequency] }))
}

/**
 * The pairs that one would think of: two faults of which one is common and neither rare, and the hidden pair
 * itself. Two rare things at once are nobody's first thought.
 * @param faults the faults of the circuit [-]
 * @param hidden ids of the hidden pair [-]
 * @source common practice
 */
export function pairAnswers(faults: readonly FaultData[], hidden: readonly string[]): Answer[] {
  const pairs = faults.flatMap((first, place) => faults.slice(place + 1).map((second) => [first, second]))
  return pairs.flatMap((pair) => {
    const ids = pair.map(({ id }) => id).sort()
    const grades = pair.map(({ frequency }) => frequency)
    const plausible = grades.includes('common') && !grades.includes('rare')
    if (!plausible && !sameFaults(ids, hidden)) return []
    return [{ faults: ids, weight: grades.reduce((product, grade) => product * WEIGHTS[grade], 1) }]
  })
}

/**
 * Each answer cut into ranges of severity. The hidden faults themselves are a corner of every range of their own
 * answer, so that no course of the model between two levels can rule the truth out.
 * @param answers the answers [-]
 * @param hidden the faults that are there [-], severity 0 to 1
 * @source common practice
 */
export function hypothesesOf(answers: readonly Answer[], hidden: readonly FaultAt[]): Hypothesis[] {
  const hiddenIds = hidden.map(({ fault }) => fault)
  return answers.flatMap(({ faults }, answer) => {
    const truth = sameFaults(faults, hiddenIds) ? [hidden] : []
    const [first, second] = faults
    if (first === undefined) return []
    if (second === undefined) {
      return SINGLE_LEVELS.slice(1).map((level, place) => ({
        answer,
        corners: [
          ...[SINGLE_LEVELS[place] ?? level, level].map((severity) => [{ fault: first, severity }]),
          ...truth,
        ],
      }))
    }
    const corners = PAIR_LEVELS.flatMap((a) =>
      PAIR_LEVELS.map((b) => [
        { fault: first, severity: a },
        { fault: second, severity: b },
      ]),
    )
    return [{ answer, corners: [...corners, ...truth] }]
  })
}
