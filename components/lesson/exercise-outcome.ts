import { wayOf } from '../../calculators/exercise/way.ts'
import { readProgress } from '../exercise/progress.ts'
import type { CircuitOffer, OwnProps } from '../exercise/types.ts'

/** What the record needs to know of an exercise. */
export type ExerciseFacts = Pick<OwnProps, 'number' | 'start' | 'hidden'>

export interface ExerciseOutcome {
  readonly end: 'solved' | 'given up' | 'begun'
  /** Minutes of the plant that were spent. */
  readonly minutes: number
  /** Causes named that were not right. */
  readonly wrongNames: number
}

/**
 * How an exercise stands by what the device kept of it. Undefined where nothing was done, or where what is kept does
 * not fit this edition's checks.
 */
export function outcomeOf(
  text: string | null,
  facts: ExerciseFacts,
  { checks, faults, stateMinutes }: Pick<CircuitOffer, 'checks' | 'faults' | 'stateMinutes'>,
): ExerciseOutcome | undefined {
  const progress = readProgress(text, { number: facts.number, hidden: facts.hidden, checks, faults })
  if (progress === undefined) return undefined
  const costs = {
    states: stateMinutes,
    checks: Object.fromEntries(checks.map(({ id, minutes }) => [id, minutes])),
  }
  // Only the minutes are asked for, so nothing of what the checks tell has to be known.
  const way = wayOf({ start: facts.start, masks: [], told: [], open: 0n }, costs, progress.acts)
  return {
    end: progress.end === undefined ? 'begun' : progress.end === 'given up' ? 'given up' : 'solved',
    minutes: way.at(-1)?.total ?? 0,
    wrongNames: progress.tries.length,
  }
}
