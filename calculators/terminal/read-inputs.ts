import { kindOf } from '../quantity/kinds.ts'
import { readQuantity } from '../quantity/read.ts'
import type { KindId } from '../quantity/types.ts'
import { relevantInputs, valueOf } from '../calculator/relevant-inputs.ts'
import type { Calculator, Input, InputValue, Refusal, TableRow } from '../calculator/types.ts'
import { quoted } from './command.ts'

/** Thrown while inputs are read, and turned into a refusal at the command's edge. */
export class RefusedInput extends Error {
  readonly refusal: Refusal

  constructor(field: string, reason: string, accepted: string) {
    super(reason)
    this.refusal = { field, reason, accepted }
  }
}

/** An accuracy is a difference: of temperatures without the scale's zero, of pressures without a reference. */
const DIFFERENCE_OF: Readonly<Partial<Record<KindId, KindId>>> = {
  temperature: 'temperatureDifference',
  gaugePressure: 'pressureDifference',
  absolutePressure: 'pressureDifference',
}

export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

export function typeOf(value: unknown): string {
  if (value === null) return 'null'
  return Array.isArray(value) ? 'an array' : typeof value === 'object' ? 'an object' : `a ${typeof value}`
}

/** The one JSON object of standard input. */
export function readObject(text: string): Readonly<Record<string, unknown>> {
  const accepted = 'one JSON object of inputs, such as {} for every default'
  if (text.trim() === '') throw new RefusedInput('', 'Standard input is empty', accepted)
  let parsed: unknown
  try {
    // Trimmed, because a shop PC's shell may put a byte order mark before what it hands over.
    parsed = JSON.parse(text.trim())
  } catch {
    throw new RefusedInput('', `${quoted(text.trim())} is not JSON`, accepted)
  }
  if (!isRecord(parsed)) throw new RefusedInput('', `Standard input holds ${typeOf(parsed)}`, accepted)
  return parsed
}

/** A number is in SI; a text may carry a unit or be arithmetic with units, and is in SI without one. */
export async function readNumber(
  field: string,
  label: string,
  value: unknown,
  kind: KindId,
): Promise<number> {
  return (await readWithUnit(field, label, value, kind)).si
}

/** The same with the unit in which it was told; a number alone tells of none. */
export async function readWithUnit(
  field: string,
  label: string,
  value: unknown,
  kind: KindId,
): Promise<{ readonly si: number; readonly unit?: string }> {
  if (typeof value === 'number') return { si: value }
  const { siUnit } = kindOf(kind)
  const number = `a number in ${siUnit === '1' ? 'SI' : siUnit}, or a text with a unit`
  if (typeof value !== 'string') throw new RefusedInput(field, `${label} is ${typeOf(value)}`, number)
  const reading = await readQuantity(value, kind, siUnit)
  if (!reading.ok) throw new RefusedInput(field, `${label}: ${reading.reason}`, reading.accepted)
  return { si: reading.si, unit: reading.unit }
}

async function readRow(id: string, input: Extract<Input, { type: 'table' }>, row: unknown, index: number) {
  const ids = Object.keys(input.columns)
  const label = `${input.label}, row ${index + 1}`
  if (!isRecord(row))
    throw new RefusedInput(id, `${label} is ${typeOf(row)}`, `an object of ${ids.join(', ')}`)
  const unknown = Object.keys(row).find((key) => !Object.hasOwn(input.columns, key))
  if (unknown !== undefined)
    throw new RefusedInput(id, `${label}: ${quoted(unknown)} is not a column`, ids.join(', '))
  const cells = Object.entries(input.columns).map(async ([columnId, column]): Promise<[string, number]> => {
    if (!Object.hasOwn(row, columnId))
      throw new RefusedInput(id, `${label} has no ${columnId}`, ids.join(', '))
    return [columnId, await readNumber(id, `${label}: ${column.label}`, row[columnId], column.kind)]
  })
  return Object.fromEntries(await Promise.all(cells)) as TableRow
}

async function readInput(id: string, input: Input, value: unknown): Promise<InputValue> {
  if (input.type === 'quantity') return readNumber(id, input.label, value, input.kind)
  if (input.type === 'choice') {
    if (typeof value === 'string') return value
    throw new RefusedInput(
      id,
      `${input.label} is ${typeOf(value)}`,
      input.options.map((option) => option.value).join(', '),
    )
  }
  if (!Array.isArray(value))
    throw new RefusedInput(id, `${input.label} is ${typeOf(value)}`, 'an array of objects, one a row')
  return Promise.all(value.map((row, index) => readRow(id, input, row, index)))
}

/**
 * Values in SI out of what was given.
 * @param given the object of standard input without `accuracies` [-]
 */
export async function readInputs(
  calculator: Calculator,
  given: Readonly<Record<string, unknown>>,
): Promise<Record<string, InputValue>> {
  const values: Array<[string, InputValue]> = []
  for (const [id, value] of Object.entries(given)) {
    const input = Object.hasOwn(calculator.inputs, id) ? calculator.inputs[id] : undefined
    if (!input)
      throw new RefusedInput(
        id.slice(0, 40),
        `${quoted(id)} is not an input of ${calculator.id}`,
        [...Object.keys(calculator.inputs), 'accuracies'].join(', '),
      )
    // One after the other, so that the first one at fault is the one that is named.
    values.push([id, await readInput(id, input, value)])
  }
  return Object.fromEntries(values)
}

function accuracyKind(calculator: Calculator, id: string): { kind: KindId; label: string } | undefined {
  const [inputId = '', columnId = ''] = id.split('.')
  const input = Object.hasOwn(calculator.inputs, inputId) ? calculator.inputs[inputId] : undefined
  const quantity =
    input?.type === 'table' && Object.hasOwn(input.columns, columnId) ? input.columns[columnId] : input
  if (!quantity || !('kind' in quantity)) return undefined
  return { kind: DIFFERENCE_OF[quantity.kind] ?? quantity.kind, label: `The accuracy of ${quantity.label}` }
}

/**
 * Half-widths in SI out of `accuracies`: numbers in SI, texts with a unit, or a share of the value such as '2 %'.
 * @param values the values that the shares refer to [SI]
 */
export async function readAccuracies(
  calculator: Calculator,
  given: unknown,
  values: Readonly<Record<string, InputValue>>,
): Promise<Record<string, number>> {
  if (given === undefined) return {}
  if (!isRecord(given))
    throw new RefusedInput('accuracies', `accuracies is ${typeOf(given)}`, 'an object: input to half-width')
  const read: Array<[string, number]> = []
  for (const [id, value] of Object.entries(given)) {
    const target = accuracyKind(calculator, id)
    if (!target)
      throw new RefusedInput(
        'accuracies',
        `${quoted(id)} is not a quantity among the inputs`,
        relevantInputs(calculator, values).join(', '),
      )
    const share =
      typeof value === 'string' && target.kind !== 'ratio' && /%\s*$/.test(value) && !id.includes('.')
    const number = await readNumber('accuracies', target.label, value, share ? 'ratio' : target.kind)
    if (share && !(number >= 0 && number <= 1))
      throw new RefusedInput(
        'accuracies',
        `${target.label}: ${quoted(String(value))} is ${number < 0 ? 'below zero' : 'more than the whole value'}`,
        '0 % to 100 %',
      )
    read.push([id, share ? number * Math.abs(Number(valueOf(calculator, values, id))) : number])
  }
  return Object.fromEntries(read)
}
