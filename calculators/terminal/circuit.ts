import { kindOf } from '../quantity/kinds.ts'
import { solveCircuit } from '../circuit/solve-circuit.ts'
import type { CircuitState, Conditions } from '../circuit/types.ts'
import { bendCircuit } from '../faults/bend-circuit.ts'
import { readFaults } from '../faults/read-faults.ts'
import type { Answer, Command } from './command.ts'
import { quoted, refused } from './command.ts'
import { allFaults } from './content.ts'
import { signatureSource } from './knowledge.ts'
import { readConditions, readOverrides } from './read-circuit-inputs.ts'
import { readObject, RefusedInput } from './read-inputs.ts'
import { whichCircuit } from './which-circuit.ts'

const FIELDS = ['plant', 'circuit', 'state', 'faults', 'conditions', 'parts']

/** Digits that a state at rest bears: its flows are found to a ten-millionth of the largest. */
const DIGITS = 7

/** All numbers with the digits that they bear. */
function rounded(value: unknown): unknown {
  if (typeof value === 'number') return Number(value.toPrecision(DIGITS))
  if (Array.isArray(value)) return value.map(rounded)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, rounded(one)]))
}

function printed(state: CircuitState, conditions: Conditions): unknown {
  const { readings, glasses, engine, parts, leaks, remarks, effort } = state
  return rounded({
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
  })
}

async function answerTo(text: string): Promise<Answer> {
  const given = readObject(text)
  const stray = Object.keys(given).find((key) => !FIELDS.includes(key))
  if (stray !== undefined)
    return refused(stray.slice(0, 40), `${quoted(stray)} is not a field`, FIELDS.join(', '))
  const id = whichCircuit(given)
  const { model, setPoints } = signatureSource(id)
  const conditions = await readConditions(model, given['state'], given['conditions'])
  const chosen = readFaults(given['faults'] === undefined ? {} : given['faults'], allFaults(), id)
  if (!chosen.ok) {
    const [first] = chosen.refusals
    return refused(first?.field ?? 'faults', first?.reason ?? '', first?.accepted ?? '')
  }
  const bending = bendCircuit(model, id, chosen.faults, conditions, setPoints)
  if (!bending.ok) return refused('faults', bending.reason, 'faults that go together')
  const overrides = await readOverrides(model, given['parts'])
  const { parameters, conditions: bentConditions } = bending.bent
  const state = solveCircuit(model, conditions, {
    parameters: [...parameters, ...overrides],
    conditions: bentConditions,
  })
  if (!state.ok) {
    const field = ['faults', 'parts', 'conditions'].find((one) => given[one] !== undefined) ?? 'state'
    return refused(field, state.reason, 'a state that the circuit comes to rest in')
  }
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
