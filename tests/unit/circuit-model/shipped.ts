import { readCircuit, type CircuitSource } from '../../../calculators/circuit/read-model.ts'
import type { CircuitModel } from '../../../calculators/circuit/model.ts'
import { solveCircuit } from '../../../calculators/circuit/solve-circuit.ts'
import type {
  BentConditions,
  BentParameter,
  CircuitState,
  Conditions,
  NoState,
  OperatingState,
} from '../../../calculators/circuit/types.ts'
import { bendCircuit } from '../../../calculators/faults/bend-circuit.ts'
import { allFaults, allFuels, circuitFile, idsOf, plantFile } from '../../../calculators/terminal/content.ts'

export const circuitIds = idsOf('circuits')
export const faults = allFaults()

const sources = new Map<string, CircuitSource>()

/** Read once: hundreds of states are solved for each. */
export function sourceOf(id: string): CircuitSource {
  const known = sources.get(id)
  if (known) return known
  const circuit = circuitFile(id)
  const source = { circuit, setPoints: plantFile(circuit.plant).setPoints, fuels: allFuels() }
  sources.set(id, source)
  return source
}

const models = new Map<string, CircuitModel>()

export function modelOf(id: string): CircuitModel {
  const known = models.get(id)
  if (known) return known
  const reading = readCircuit(sourceOf(id))
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems, null, 2))
  models.set(id, reading.model)
  return reading.model
}

export function conditionsOf(
  model: CircuitModel,
  state: OperatingState,
  others: Partial<Conditions> = {},
): Conditions {
  return { ...model.usual, state, ...others }
}

export function rested(state: CircuitState | NoState): CircuitState {
  if (!state.ok) throw new Error(state.reason)
  return state
}

/** PQ-12 in a state with some parameters bent, in SI. */
export function pq12(
  state: OperatingState,
  parameters: readonly BentParameter[] = [],
  others: Partial<Conditions> = {},
  conditions: BentConditions = {},
): CircuitState {
  const model = modelOf('pq-12')
  return rested(solveCircuit(model, conditionsOf(model, state, others), { parameters, conditions }))
}

const solved = new Map<string, CircuitState | NoState>()

/** A circuit with faults of the data, id → severity, in its usual conditions. Solved once: several rules look at each. */
export function withFaults(
  id: string,
  state: OperatingState,
  severities: Readonly<Record<string, number>>,
): CircuitState | NoState {
  const key = JSON.stringify([id, state, severities])
  const known = solved.get(key) ?? solveWith(id, state, severities)
  solved.set(key, known)
  return known
}

function solveWith(
  id: string,
  state: OperatingState,
  severities: Readonly<Record<string, number>>,
): CircuitState | NoState {
  const model = modelOf(id)
  const conditions = conditionsOf(model, state)
  const chosen = Object.entries(severities).map(([fault, severity]) => {
    const found = faults.find((one) => one.id === fault)
    if (!found) throw new Error(`${fault} is no fault`)
    return { fault: found, severity }
  })
  const bending = bendCircuit(model, id, chosen, conditions, sourceOf(id).setPoints)
  if (!bending.ok) throw new Error(bending.reason)
  return solveCircuit(model, conditions, bending.bent)
}

export function reading(state: CircuitState, id: string): number {
  const found = state.readings.find((one) => one.id === id)
  if (!found) throw new Error(`no reading ${id}`)
  return found.value
}

export function flowOf(state: CircuitState, part: string): number {
  const found = state.parts.find((one) => one.id === part)
  if (!found) throw new Error(`no part ${part}`)
  return found.flow
}

export function glass(state: CircuitState, part: string) {
  const found = state.glasses.find((one) => one.part === part)
  if (!found) throw new Error(`no glass ${part}`)
  return found
}
