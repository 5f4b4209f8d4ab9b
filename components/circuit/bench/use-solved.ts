import { useMemo } from 'preact/hooks'
import type { CircuitState } from '../../../calculators/circuit/types.ts'
import type { Solved } from './solver.ts'
import type { Setting } from './types.ts'

export interface Answer {
  /** Both absent where the model has no answer for one of them: a half would mislead. */
  readonly now: CircuitState | undefined
  readonly health: CircuitState | undefined
  /** Why there is none. */
  readonly reason: string
}

/** The circuit as it is set and, under the same conditions, in health; each solved once for a change. */
export function useSolved(solve: (setting: Setting) => Solved, setting: Setting): Answer {
  const now = useMemo(() => solve(setting), [solve, setting])
  const { state, fuel, tankTemperature, ambientTemperature, tankLevel } = setting
  const health = useMemo(
    () => solve({ state, fuel, tankTemperature, ambientTemperature, tankLevel, faults: {} }),
    [solve, state, fuel, tankTemperature, ambientTemperature, tankLevel],
  )
  if (now.ok && health.ok) return { now, health, reason: '' }
  const failed = now.ok ? health : now
  return { now: undefined, health: undefined, reason: failed.ok ? '' : failed.reason }
}
