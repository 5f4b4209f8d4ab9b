import { readCircuit } from '../../../calculators/circuit/read-model.ts'
import { solveCircuit } from '../../../calculators/circuit/solve-circuit.ts'
import type { CircuitState, NoState } from '../../../calculators/circuit/types.ts'
import { bendCircuit } from '../../../calculators/faults/bend-circuit.ts'
import { conditionsOf } from './setting.ts'
import type { BenchData, Setting } from './types.ts'

export type Solved = CircuitState | NoState

/** The model of a circuit, ready to be asked what a setting leads to. */
export function solverOf(data: BenchData): (setting: Setting) => Solved {
  const { circuit, setPoints, fuels, faults } = data
  const reading = readCircuit({
    circuit,
    setPoints,
    fuels: Object.fromEntries(fuels.map((fuel) => [fuel.id, fuel])),
  })
  if (!reading.ok) {
    const told = reading.problems.map(({ path, message }) => `${path.join('.')}: ${message}`)
    throw new Error(`The data of ${data.id} cannot be read:\n${told.join('\n')}`)
  }
  const { model } = reading
  return (setting) => {
    const conditions = conditionsOf(setting)
    const severe = faults.flatMap((fault) => {
      const severity = setting.faults[fault.id]
      return severity === undefined ? [] : [{ fault, severity }]
    })
    const bending = bendCircuit(model, data.id, severe, conditions, setPoints)
    if (!bending.ok) return bending
    // Always from the same start: from the state before, a setting could come to rest elsewhere than its address says.
    return solveCircuit(model, conditions, bending.bent)
  }
}
