import type { CircuitState, GlassView, Reading } from '../circuit/types.ts'
import type { CheckData, CheckResult, FeltPart, SeenGlass, SeenReading } from './types.ts'

/** Least flow that a hand notices on a line by its warmth or its hum. [m³/s] Half a litre a minute. @source common practice */
const LEAST_FELT = 0.5e-3 / 60
/** Share of a view above which dirt is what one sees first. */
const DIRTY_FROM = 0.2

const isReading = (wanted: string, id: string): boolean =>
  wanted.endsWith('*') ? id.startsWith(wanted.slice(0, -1)) : wanted === id

function seenReading({ id, label, kind, value, accuracy, atStop }: Reading): SeenReading {
  return { id, label, kind, value, accuracy, ...(atStop === undefined ? {} : { atStop }) }
}

function labelOf(state: CircuitState, part: string): string {
  return state.parts.find((candidate) => candidate.id === part)?.label ?? part
}

function seenGlass(state: CircuitState, glass: GlassView): SeenGlass {
  return { ...glass, label: labelOf(state, glass.part), dirty: glass.dirt > DIRTY_FROM }
}

function felt(state: CircuitState, part: string): FeltPart[] {
  const found = state.parts.find((candidate) => candidate.id === part)
  return found ? [{ part, label: found.label, passes: Math.abs(found.flow) > LEAST_FELT }] : []
}

/** What the inspection says of these faults: every sentence that one of them calls for, else that it found none. */
function saysOf({ finds, otherwise }: CheckData, faults: readonly string[]): string[] {
  const found = finds.filter((find) => find.faults.some((fault) => faults.includes(fault)))
  if (found.length > 0) return found.map((find) => find.says)
  return otherwise === undefined ? [] : [otherwise]
}

/**
 * What a check tells: readings [SI] and glasses as the model shows them, and what an inspection finds of the faults.
 * @param check the check [-]
 * @param state the solved circuit [SI]; undefined while the plant is stopped, when only an inspection tells anything
 * @param faults ids of the faults that are there [-]
 * @source common practice
 */
export function perform(
  check: CheckData,
  state: CircuitState | undefined,
  faults: readonly string[],
): CheckResult {
  const says = saysOf(check, faults)
  if (state === undefined) return { readings: [], glasses: [], felt: [], says }
  return {
    readings: check.readings.flatMap((wanted) =>
      state.readings.filter(({ id }) => isReading(wanted, id)).map(seenReading),
    ),
    glasses: check.glasses.flatMap((wanted) =>
      state.glasses.filter(({ part }) => part === wanted).map((glass) => seenGlass(state, glass)),
    ),
    felt: check.feels.flatMap((part) => felt(state, part)),
    says,
  }
}
