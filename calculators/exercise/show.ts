import type { CircuitState, NoState, OperatingState } from '../circuit/types.ts'
import type { World } from './course.ts'
import type { FaultAt } from './types.ts'

/**
 * A circuit that is solved once for each state and set of faults, however often it is asked for.
 * @param solve solves the circuit [SI]
 * @returns the solved states, or why one does not come to rest
 * @source common practice
 */
export function shownBy(
  solve: (state: OperatingState, faults: readonly FaultAt[]) => CircuitState | NoState,
): World['show'] {
  const known = new Map<string, CircuitState | NoState>()
  return (state, faults) => {
    const key = [state, ...faults.map(({ fault, severity }) => `${fault} ${severity}`)].join()
    const shown = known.get(key) ?? solve(state, faults)
    known.set(key, shown)
    return shown
  }
}
