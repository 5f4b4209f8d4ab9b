import { isCalibrated, setCalibration } from './calibration.ts'
import { comeToRest } from './come-to-rest.ts'
import { inletNodes } from './governor.ts'
import type { CircuitModel } from './model.ts'
import { readState } from './read-state.ts'
import { situationOf, type Bent } from './situation.ts'
import { startIn } from './starts.ts'
import type { CircuitState, Conditions, NoState } from './types.ts'

/** The full rack hangs a little on the temperature that it leads to. */
const CALIBRATIONS = 2

/** A spring valve counts as open from this share of its full flow. [-] */
const OPEN_FROM = 0.02

/** Finds what full load in health shows; where that has no state, the first guess stands. */
function calibrate(model: CircuitModel): void {
  const conditions: Conditions = { state: 'full', ...model.usual }
  for (let time = 0; time < CALIBRATIONS; time++) {
    const read = situationOf(model, conditions, { parameters: [], conditions: {} })
    if (!read.ok) return
    const { situation } = read
    const rest = comeToRest(situation, undefined)
    if ('ok' in rest) return
    const nodes = inletNodes(situation)
    const density =
      nodes.reduce((sum, node) => sum + situation.fluid.density(rest.fields.temperature[node] ?? 0), 0) /
      nodes.length
    const openValves = new Set(
      model.links.flatMap(({ role, part }, place) =>
        role === 'spring-valve' &&
        (rest.fields.flow[place] ?? 0) > OPEN_FROM * (model.parts[part]?.values.fullFlow ?? 0)
          ? [place]
          : [],
      ),
    )
    setCalibration(model, { density, openValves, fields: rest.fields })
  }
}

/**
 * The state in which a circuit comes to rest: pressures, flows, temperatures and gas that all agree.
 * @param model from readCircuit
 * @param conditions what surrounds it
 * @param bent what faults do to parts and conditions; nothing in health
 * @returns the state, or why there is none
 * @source as stated at each law; the coupling is ours
 */
export function solveCircuit(
  model: CircuitModel,
  conditions: Conditions,
  bent: Bent = { parameters: [], conditions: {} },
): CircuitState | NoState {
  if (!isCalibrated(model)) calibrate(model)
  const read = situationOf(model, conditions, bent)
  if (!read.ok) return read
  const rest = comeToRest(read.situation, startIn(model, conditions.state))
  return 'ok' in rest ? rest : readState(read.situation, rest)
}
