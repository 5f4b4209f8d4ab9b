import type { CircuitState, NoState, OperatingState } from '../circuit/types.ts'
import type { World } from './course.ts'
import type { FaultAt } from './types.ts'

/** The circuit solved with these faults; `near` is a state like it, to start from. */
export type Solve = (
  state: OperatingState,
  faults: readonly FaultAt[],
  near: CircuitState | undefined,
) => CircuitState | NoState

/**
 * A circuit that is solved once for each state and set of faults, each time from the state in health.
 * @param solve solves the circuit [SI]
 * @returns the solved states, or why one does not come to rest
 * @source common practice
 */
export function shownBy(solve: Solve): World['show'] {
  const known = new Map<string, CircuitState | NoState>()
  const show = (state: OperatingState, faults: readonly FaultAt[]): CircuitState | NoState => {
    const key = [state, ...faults.map(({ fault, severity }) => `${fault} ${severity}`)].join()
    const before = known.get(key)
    if (before !== undefined) return before
    const health = faults.length === 0 ? undefined : show(state, [])
    const solved = solve(state, faults, health?.ok ? health : undefined)
    known.set(key, solved)
    return solved
  }
  return show
}
