import { calibrationOf } from './calibration.ts'
import { comeToRest } from './come-to-rest.ts'
import type { Fields } from './fields.ts'
import type { CircuitModel } from './model.ts'
import { situationOf } from './situation.ts'
import type { OperatingState } from './types.ts'

const starts = new WeakMap<CircuitModel, Map<OperatingState, Fields>>()

/**
 * Fields from which a state begins: those of the same state in health and in its usual conditions. They hang on the
 * circuit and the state alone, and never on what was solved before: near an empty tank or a starving pump there is more
 * than one rest, and the same address must always show the same.
 * @param model of the circuit, calibrated
 * @param state of the engine
 * @returns the fields, to be copied; those of full load where the state does not come to rest, none where that does not
 */
export function startIn(model: CircuitModel, state: OperatingState): Fields | undefined {
  const atFull = calibrationOf(model).fields
  if (atFull === undefined || state === 'full') return atFull
  const known = starts.get(model) ?? new Map<OperatingState, Fields>()
  starts.set(model, known)
  const before = known.get(state)
  if (before) return before
  const read = situationOf(model, { state, ...model.usual }, { parameters: [], conditions: {} })
  const rest = read.ok ? comeToRest(read.situation, atFull) : read
  const fields = 'ok' in rest ? atFull : rest.fields
  known.set(state, fields)
  return fields
}
