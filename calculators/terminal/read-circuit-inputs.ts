import { partKinds, type Parameter } from '../circuit/part-kinds.ts'
import type { CircuitModel } from '../circuit/model.ts'
import {
  operatingStates,
  type BentParameter,
  type Conditions,
  type OperatingState,
} from '../circuit/types.ts'
import type { KindId } from '../quantity/types.ts'
import { quoted } from './command.ts'
import { isRecord, readNumber, RefusedInput, typeOf } from './read-inputs.ts'

/** Conditions that are figures, with their kind and what stands for them where nothing is given. */
const figures = {
  tankTemperature: { kind: 'temperature', label: 'Temperature of the tank' },
  ambientTemperature: { kind: 'temperature', label: 'Temperature of the surroundings' },
  tankLevel: { kind: 'ratio', label: 'Level of the tank' },
  airPressure: { kind: 'absolutePressure', label: 'Pressure of the air' },
} as const satisfies Partial<Record<keyof Conditions, { kind: KindId; label: string }>>

/** A tank rather more than half full under the standard atmosphere. */
const usually = { tankLevel: 0.6, airPressure: 101_325 }

function readState(given: unknown): OperatingState {
  const state = operatingStates.find((one) => one === given)
  if (state) return state
  throw new RefusedInput(
    'state',
    given === undefined ? 'no state is given' : `${quoted(String(given))} is not a state`,
    operatingStates.join(', '),
  )
}

/**
 * Conditions out of what was given, the circuit's usual ones standing for the rest.
 * @param model of the circuit
 * @param state one of the four
 * @param given an object of fuel, temperatures, level and pressure of the air; figures in SI or with a unit
 * @throws RefusedInput
 */
export async function readConditions(
  model: CircuitModel,
  state: unknown,
  given: unknown = {},
): Promise<Conditions> {
  const accepted = ['fuel', ...Object.keys(figures)].join(', ')
  if (!isRecord(given))
    throw new RefusedInput('conditions', `conditions is ${typeOf(given)}`, `an object of ${accepted}`)
  const read: Partial<Record<keyof typeof figures, number>> = {}
  let { fuel } = model.usual
  for (const [id, value] of Object.entries(given)) {
    if (id === 'fuel') {
      if (typeof value !== 'string' || !Object.hasOwn(model.fuels, value))
        throw new RefusedInput(
          'conditions.fuel',
          `${quoted(String(value))} is no fuel of this circuit`,
          Object.keys(model.fuels).join(', '),
        )
      fuel = value
      continue
    }
    if (!Object.hasOwn(figures, id))
      throw new RefusedInput('conditions', `${quoted(id)} is not a condition`, accepted)
    const { kind, label } = figures[id as keyof typeof figures]
    read[id as keyof typeof figures] = await readNumber(`conditions.${id}`, label, value, kind)
  }
  const { tankTemperature, ambientTemperature } = model.usual
  return { state: readState(state), tankTemperature, ambientTemperature, ...usually, ...read, fuel }
}

/**
 * Parameters of parts that are given in place of the data's.
 * @param model of the circuit
 * @param given part → parameter → figure, or for what each cylinder has of its own cylinder → figure
 * @returns them in SI
 * @throws RefusedInput
 */
export async function readOverrides(model: CircuitModel, given: unknown = {}): Promise<BentParameter[]> {
  if (!isRecord(given))
    throw new RefusedInput('parts', `parts is ${typeOf(given)}`, 'an object: part → parameter → figure')
  const overrides: BentParameter[] = []
  for (const [id, parameters] of Object.entries(given)) {
    const part = model.parts.find((one) => one.id === id)
    if (!part)
      throw new RefusedInput(
        'parts',
        `${quoted(id)} is no part of this circuit`,
        model.parts.map((one) => one.id).join(', '),
      )
    if (!isRecord(parameters))
      throw new RefusedInput(
        `parts.${id}`,
        `${part.label} is ${typeOf(parameters)}`,
        'an object: parameter → figure',
      )
    const known: Readonly<Record<string, Parameter>> = partKinds[part.kind].parameters
    for (const [name, value] of Object.entries(parameters)) {
      const parameter = Object.hasOwn(known, name) ? known[name] : undefined
      if (!parameter)
        throw new RefusedInput(
          `parts.${id}`,
          `${quoted(name)} is no parameter of ${part.label}`,
          Object.keys(known).join(', '),
        )
      const field = `parts.${id}.${name}`
      const label = `${part.label}, ${parameter.label}`
      if (!isRecord(value)) {
        overrides.push({
          part: id,
          parameter: name,
          value: await readNumber(field, label, value, parameter.kind),
        })
        continue
      }
      for (const [cylinder, figure] of Object.entries(value))
        overrides.push({
          part: id,
          parameter: name,
          cylinder: Number(cylinder),
          value: await readNumber(`${field}.${cylinder}`, label, figure, parameter.kind),
        })
    }
  }
  return overrides
}
