import { readCircuit } from '../../../calculators/circuit/read-model.ts'
import type { CircuitModel } from '../../../calculators/circuit/model.ts'
import type { SetPoint } from '../../../calculators/circuit/read-figures.ts'
import { solveCircuit } from '../../../calculators/circuit/solve-circuit.ts'
import {
  operatingStates,
  type CircuitState,
  type Conditions,
  type GlassView,
  type OperatingState,
} from '../../../calculators/circuit/types.ts'
import { bendCircuit } from '../../../calculators/faults/bend-circuit.ts'
import { allFaults, allFuels, circuitFile, idsOf, plantFile } from '../../../calculators/terminal/content.ts'

export const faults = allFaults()
export const circuitIds = idsOf('circuits')

interface Bench {
  readonly model: CircuitModel
  readonly setPoints: Readonly<Record<string, SetPoint>>
}

const benches = new Map<string, Bench>()

function benchOf(id: string): Bench {
  const known = benches.get(id)
  if (known) return known
  const circuit = circuitFile(id)
  const { setPoints } = plantFile(circuit.plant)
  const reading = readCircuit({ circuit, setPoints, fuels: allFuels() })
  if (!reading.ok)
    throw new Error(reading.problems.map(({ path, message }) => `${path.join('.')}: ${message}`).join('\n'))
  const bench = { model: reading.model, setPoints }
  benches.set(id, bench)
  return bench
}

/** Faults with their severities, by id; none in health. */
export type Given = Readonly<Record<string, number>>

/** What a circuit shows from a cold start, with its usual fuel and a tank a little over half full. */
export function shown(circuit: string, state: OperatingState, given: Given = {}): CircuitState {
  const { model, setPoints } = benchOf(circuit)
  const { fuel, tankTemperature, ambientTemperature } = model.usual
  const conditions: Conditions = {
    state,
    fuel,
    tankTemperature,
    ambientTemperature,
    tankLevel: 0.6,
    airPressure: 101_325,
  }
  const severe = Object.entries(given).map(([id, severity]) => {
    const fault = faults.find((one) => one.id === id)
    if (!fault) throw new Error(`«${id}» is no fault`)
    return { fault, severity }
  })
  const bending = bendCircuit(model, circuit, severe, conditions, setPoints)
  if (!bending.ok) throw new Error(bending.reason)
  const solved = solveCircuit(model, conditions, bending.bent)
  if (!solved.ok) throw new Error(`${circuit}, ${state}, ${JSON.stringify(given)}: ${solved.reason}`)
  return solved
}

const healthy = new Map<string, CircuitState>()

export function inHealth(circuit: string, state: OperatingState): CircuitState {
  const key = `${circuit} ${state}`
  const known = healthy.get(key) ?? shown(circuit, state)
  healthy.set(key, known)
  return known
}

/** What differs from health by more than the instrument may be off, or what an eye sees, in any state. */
export function signs(circuit: string, given: Given): string[] {
  return operatingStates.flatMap((state) => {
    const health = inHealth(circuit, state)
    const now = shown(circuit, state, given)
    const readings = now.readings.filter(({ id, value, accuracy }) => {
      const usual = health.readings.find((one) => one.id === id)
      return !usual || Math.abs(value - usual.value) > Math.max(accuracy, usual.accuracy)
    })
    const glasses = now.glasses.filter(({ part, words }) => glassOf(health, part).words !== words)
    const remarks = now.remarks.filter(({ text }) => !health.remarks.some((usual) => usual.text === text))
    return [
      ...readings.map(({ id }) => `${state}: ${id}`),
      ...glasses.map(({ part, words }) => `${state}: ${part} ${words}`),
      ...remarks.map(({ text }) => `${state}: ${text}`),
    ]
  })
}

export function glassOf(state: CircuitState, part: string): GlassView {
  const glass = state.glasses.find((one) => one.part === part)
  if (!glass) throw new Error(`There is no glass «${part}».`)
  return glass
}
