import { stateMinutes } from '../checks/state-minutes.ts'
import type { StatesData } from '../checks/types.ts'
import { openAnswers } from './open-answers.ts'
import type { Act, Knowledge, WayStep } from './types.ts'

/** What things cost. */
export interface Costs {
  /** Working time of each check, by its id. [min] */
  readonly checks: Readonly<Record<string, number>>
  readonly states: StatesData
}

/**
 * A way told step by step: minutes, running minutes, which answers each step ruled out and which it left.
 * @param knowledge what every move tells [-]
 * @param costs what each step costs [min]
 * @param acts what was done, in its order [-]
 * @source common practice
 */
export function wayOf(knowledge: Knowledge, costs: Costs, acts: readonly Act[]): WayStep[] {
  let { open, start: state } = knowledge
  let total = 0
  return acts.map((act) => {
    const told = knowledge.told.find((move) => move.state === act.state && move.check === act.check)
    const before = openAnswers(open, knowledge.masks)
    open &= told?.leaves ?? open
    const after = openAnswers(open, knowledge.masks)
    const work = act.check === undefined ? 0 : (costs.checks[act.check] ?? 0)
    const minutes = stateMinutes(state, act.state, costs.states) + work
    state = act.state
    total += minutes
    return { act, minutes, total, ruledOut: before.filter((place) => !after.includes(place)), open: after }
  })
}
