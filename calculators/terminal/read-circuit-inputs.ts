import { told } from '../faults/told.ts'
import { acceptedRange, isWithin } from '../circuit/accepted.ts'
import { conditionFigures, refusedCondition } from '../circuit/condition-ranges.ts'
import type { CircuitModel } from '../circuit/model.ts'
import { parameterAt, parametersOf, type RefusedParameter } from '../circuit/parameters.ts'
import {
  operatingStates,
  type BentParameter,
  type Conditions,
  type FigureCondition,
  type OperatingState,
} from '../circuit/types.ts'
import { kindOf } from '../quantity/kinds.ts'
import type { KindId } from '../quantity/types.ts'
import { quoted } from './command.ts'
import { isRecord, readNumber, RefusedInput, typeOf } from './read-inputs.ts'

/** A figure as it was typed; a bare number is in SI. */
function typed(value: unknown, kind: KindId): string {
  const { siUnit } = kindOf(kind)
  return quoted(typeof value === 'number' && siUnit !== '1' ? `${value} ${siUnit}` : String(value))
}

function readState(state: unknown): OperatingState {
  const found = operatingStates.find((one) => one === state)
  if (found) return found
  throw new RefusedInput(
    'state',
    state === undefined ? 'no state is given' : `the state is ${told(state)}`,
    operatingStates.join(', '),
  )
}

/**
 * Conditions out of what was given, the circuit's usual ones standing for the rest.
 * @param model of the circuit
 * @param state one of the four
 * @param chosen an object of fuel, temperatures, level and pressure of the air; figures in SI or with a unit
 * @throws RefusedInput, also for what lies outside the ranges of the circuit
 */
export async function readConditions(
  model: CircuitModel,
  state: unknown,
  chosen: unknown = {},
): Promise<Conditions> {
  const ids = ['fuel', ...Object.keys(conditionFigures)].join(', ')
  if (!isRecord(chosen))
    throw new RefusedInput('conditions', `conditions is ${typeOf(chosen)}`, `an object of ${ids}`)
  const read: Partial<Record<FigureCondition, number>> = {}
  let { fuel } = model.usual
  for (const [id, value] of Object.entries(chosen)) {
    if (id === 'fuel') {
      if (typeof value !== 'string' || !Object.hasOwn(model.fuels, value))
        throw new RefusedInput(
          'conditions.fuel',
          `${told(value)} is no fuel of this circuit`,
          Object.keys(model.fuels).join(', '),
        )
      fuel = value
      continue
    }
    if (!Object.hasOwn(conditionFigures, id))
      throw new RefusedInput('conditions', `${quoted(id)} is not a condition`, ids)
    const { kind, label } = conditionFigures[id as FigureCondition]
    read[id as FigureCondition] = await readNumber(`conditions.${id}`, label, value, kind)
  }
  const conditions = { ...model.usual, state: readState(state), ...read, fuel }
  const wrong = refusedCondition(conditions, model.ranges, (id) =>
    Object.hasOwn(chosen, id) ? typed(chosen[id], conditionFigures[id].kind) : undefined,
  )
  if (wrong) throw new RefusedInput(`conditions.${wrong.condition}`, wrong.reason, wrong.accepted)
  return conditions
}

/**
 * Parameters of parts that are given in place of the data's.
 * @param model of the circuit
 * @param chosen part → parameter → figure, or for what each cylinder has of its own cylinder → figure
 * @returns them in SI
 * @throws RefusedInput
 */
export async function readOverrides(model: CircuitModel, chosen: unknown = {}): Promise<BentParameter[]> {
  if (!isRecord(chosen))
    throw new RefusedInput('parts', `parts is ${typeOf(chosen)}`, 'an object: part → parameter → figure')
  const overrides: BentParameter[] = []
  for (const [part, parameters] of Object.entries(chosen)) {
    const known = model.parts.find(({ id }) => id === part)
    if (!known)
      throw new RefusedInput(
        'parts',
        `${quoted(part)} is no part of this circuit`,
        model.parts.map(({ id }) => id).join(', '),
      )
    if (!isRecord(parameters))
      throw new RefusedInput(
        `parts.${part}`,
        `${known.label} is ${typeOf(parameters)}`,
        'an object: parameter → figure',
      )
    for (const [parameter, value] of Object.entries(parameters))
      overrides.push(...(await readParameter(model, part, parameter, value)))
  }
  const all = parametersOf(model, overrides)
  if (!all.ok) refuse(all.refused)
  return overrides
}

async function readParameter(
  model: CircuitModel,
  part: string,
  parameter: string,
  value: unknown,
): Promise<BentParameter[]> {
  if (!isRecord(value)) return [await readFigure(model, { part, parameter }, value)]
  const read: BentParameter[] = []
  for (const [cylinder, figure] of Object.entries(value)) {
    // An id such as '03' or '1e0' would name a cylinder a second time.
    if (!/^[1-9]\d*$/.test(cylinder))
      throw new RefusedInput(
        `parts.${part}.${parameter}.${cylinder.slice(0, 40)}`,
        `${quoted(cylinder)} is no cylinder`,
        `1 to ${model.cylinders}`,
      )
    read.push(await readFigure(model, { part, parameter, cylinder: Number(cylinder) }, figure))
  }
  return read
}

async function readFigure(
  model: CircuitModel,
  place: Omit<BentParameter, 'value'>,
  figure: unknown,
): Promise<BentParameter> {
  const found = parameterAt(model, place)
  if (!found.ok) refuse(found.refused)
  const { parameter, about } = found
  const field = fieldOf(place)
  const value = await readNumber(field, about, figure, parameter.kind)
  if (!isWithin(value, parameter))
    throw new RefusedInput(
      field,
      `${about}: ${typed(figure, parameter.kind)} is out of range`,
      acceptedRange(parameter),
    )
  return { ...place, value }
}

const fieldOf = ({ part, parameter, cylinder }: Omit<BentParameter, 'value'>): string =>
  ['parts', part, parameter.slice(0, 40), ...(cylinder === undefined ? [] : [cylinder])].join('.')

function refuse(refused: RefusedParameter): never {
  throw new RefusedInput(fieldOf(refused), refused.reason, refused.accepted)
}
