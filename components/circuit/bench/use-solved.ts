import { useMemo } from 'preact/hooks'
import type { CircuitState } from '../../../calculators/circuit/types.ts'
import type { Solved } from './solver.ts'
import type { Setting } from './types.ts'

export interface Answer {
  /** What it is the answer to. */
  readonly setting: Setting
  /** Both absent where the model has no answer for one of them: a half would mislead. */
  readonly now: CircuitState | undefined
  readonly health: CircuitState | undefined
  /** Why there is none. */
  readonly reason: string
}

/**
 * The circuit as it is set and in health, each solved once for a change. In health: in the same state, at the same
 * height, with the same fuel and temperatures, but a tank that is full enough, since a low one is a fault by itself.
 */
export function useSolved(solve: (setting: Setting) => Solved, setting: Setting, usualLevel: number): Answer {
  const now = useMemo(() => solve(setting), [solve, setting])
  const { state, fuel, tankTemperature, ambientTemperature, tankLevel, height } = setting
  const level = Math.max(tankLevel, usualLevel)
  const health = useMemo(
    () => solve({ state, fuel, tankTemperature, ambientTemperature, tankLevel: level, height, faults: {} }),
    [solve, state, fuel, tankTemperature, ambientTemperature, level, height],
  )
  return useMemo(() => {
    if (now.ok && health.ok) return { setting, now, health, reason: '' }
    const failed = now.ok ? health : now
    return { setting, now: undefined, health: undefined, reason: failed.ok ? '' : failed.reason }
  }, [setting, now, health])
}
