import { plantStates } from './types.ts'
import type { PlantState, StatesData } from './types.ts'

/**
 * Time to bring the plant from one state into another, through all that lie between. [min]
 * @param from state it is in [-]
 * @param to state wanted [-]
 * @param states what each step up and down costs [min]
 * @source common practice
 */
export function stateMinutes(from: PlantState, to: PlantState, states: StatesData): number {
  const [start, end] = [plantStates.indexOf(from), plantStates.indexOf(to)]
  if (start <= end) return sum(plantStates.slice(start + 1, end + 1).map((state) => states[state].up))
  return sum(plantStates.slice(end, start).map((state) => states[state].down))
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)
