import { kindOf } from '../quantity/kinds.ts'
import { readCircuit } from '../circuit/read-model.ts'
import type { CircuitModel } from '../circuit/model.ts'
import { solveCircuit } from '../circuit/solve-circuit.ts'
import type { CircuitState, Conditions } from '../circuit/types.ts'
import { bendCircuit } from '../faults/bend-circuit.ts'
import { readFaults } from '../faults/read-faults.ts'
import type { Answer, Command } from './command.ts'
import { quoted, refused } from './command.ts'
import { allFaults, allFuels, circuitFile, idsOf, plantFile } from './content.ts'
import { readConditions, readOverrides } from './read-circuit-inputs.ts'
import { readObject, RefusedInput } from './read-inputs.ts'

const FIELDS = ['plant', 'circuit', 'state', 'faults', 'conditions', 'parts']

/** The circuit that was asked for: by its own id, or by that of a plant. */
function circuitId(given: Readonly<Record<string, unknown>>): string {
  const { plant, circuit } = given
  const choose = (field: 'plant' | 'circuit', value: unknown): string => {
    const known = idsOf(`${field}s`)
    if (typeof value === 'string' && known.includes(value)) return value
    throw new RefusedInput(field, `${quoted(String(value))} is not a ${field}`, known.join(', '))
  }
  if (circuit !== undefined && plant !== undefined)
    throw new RefusedInput('plant', 'both a plant and a circuit are given', 'one of the two')
  if (circuit !== undefined) return choose('circuit', circuit)
  if (plant !== undefined) return plantFile(choose('plant', plant)).circuit
  throw new RefusedInput('circuit', 'neither a plant nor a circuit is given', idsOf('circuits').join(', '))
}

function modelOf(id: string): CircuitModel {
  const circuit = circuitFile(id)
  const reading = readCircuit({
    circuit,
    setPoints: plantFile(circuit.plant).setPoints,
    fuels: allFuels(),
  })
  if (reading.ok) return reading.model
  const [first] = reading.problems
  throw new RefusedInput(
    `circuits/${id}`,
    `${first?.path.join('.')}: ${first?.message}`,
    'a circuit without problems',
  )
}

function printed(state: CircuitState, conditions: Conditions): unknown {
  const { readings, glasses, engine, parts, leaks, remarks, effort } = state
  return {
    conditions,
    readings: readings.map(({ id, label, kind, value, accuracy, atStop }) => ({
      id,
      label,
      value,
      unit: kindOf(kind).siUnit,
      accuracy,
      ...(atStop ? { atStop } : {}),
    })),
    glasses,
    engine,
    parts,
    leaks,
    remarks,
    effort,
  }
}

async function answerTo(text: string): Promise<Answer> {
  const given = readObject(text)
  const stray = Object.keys(given).find((key) => !FIELDS.includes(key))
  if (stray !== undefined)
    return refused(stray.slice(0, 40), `${quoted(stray)} is not a field`, FIELDS.join(', '))
  const id = circuitId(given)
  const model = modelOf(id)
  const conditions = await readConditions(model, given['state'], given['conditions'])
  const chosen = readFaults(given['faults'] ?? {}, allFaults(), id)
  if (!chosen.ok) {
    const [first] = chosen.refusals
    return refused(first?.field ?? 'faults', first?.reason ?? '', first?.accepted ?? '')
  }
  const { setPoints } = plantFile(circuitFile(id).plant)
  const bending = bendCircuit(model, id, chosen.faults, conditions, setPoints)
  if (!bending.ok) return refused('faults', bending.reason, 'faults that go together')
  const overrides = await readOverrides(model, given['parts'])
  const { parameters, conditions: bentConditions } = bending.bent
  const state = solveCircuit(model, conditions, {
    parameters: [...parameters, ...overrides],
    conditions: bentConditions,
  })
  if (!state.ok) return refused('', state.reason, 'a state that the circuit comes to rest in')
  return { json: printed(state, state.conditions) }
}

export const circuit: Command = {
  name: 'circuit',
  usage: '',
  summary: 'reads plant or circuit, state, faults and overrides as JSON and prints what the circuit shows',
  run: async (words, standardInput) => {
    if (words.length > 0) return refused('', '`circuit` takes nothing behind it', 'circuit')
    try {
      return await answerTo(await standardInput())
    } catch (error) {
      if (error instanceof RefusedInput) return { refusal: error.refusal }
      throw error
    }
  },
}
