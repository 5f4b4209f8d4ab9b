import { relevantInputs, valueOf } from './relevant-inputs.ts'
import { outsideInWords, rangeInWords, refuse, refuseOutside } from './refusal.ts'
import type {
  Calculator,
  ChoiceInput,
  InputValue,
  Notice,
  QuantityInput,
  Refusal,
  TableInput,
} from './types.ts'

export type Values = Readonly<Record<string, InputValue>>
export type ShownUnits = Readonly<Record<string, string>>
type Refused = { readonly refusal: Refusal } | undefined

function checkQuantity(id: string, input: QuantityInput, value: InputValue, unit?: string): Refused {
  if (typeof value === 'number') return refuseOutside(id, input, value, input.physical, unit)
  return refuse(id, `${input.label} is not a number`, rangeInWords(input, input.physical, unit))
}

function checkChoice(id: string, input: ChoiceInput, value: InputValue): Refused {
  const values = input.options.map((option) => option.value)
  if (typeof value === 'string' && values.includes(value)) return undefined
  const read = typeof value === 'string' ? `«${value.slice(0, 40)}»` : 'not a choice'
  return refuse(id, `${input.label} is ${read}`, values.join(', '))
}

/** 'Exhaust temperatures, cylinder 3', counted from one. */
export function rowInWords(input: Pick<TableInput, 'label' | 'rowName'>, index: number): string {
  return `${input.label}, ${(input.rowName ?? 'Row').toLowerCase()} ${index + 1}`
}

function checkTable(id: string, input: TableInput, value: InputValue, shownUnits: ShownUnits): Refused {
  const { minimum, maximum } = input.rows
  const rows = minimum === maximum ? `${minimum} rows` : `${minimum} to ${maximum} rows`
  const ids = Object.keys(input.columns)
  if (!Array.isArray(value))
    return refuse(id, `${input.label} is not a table`, `${rows} of ${ids.join(', ')}`)
  if (value.length < minimum || value.length > maximum)
    return refuse(id, `${input.label} has ${value.length} rows`, rows)
  for (const [index, row] of value.entries()) {
    for (const [columnId, column] of Object.entries(input.columns)) {
      const cell = row && typeof row === 'object' && Object.hasOwn(row, columnId) ? row[columnId] : undefined
      const label = `${rowInWords(input, index)}: ${column.label}`
      const unit = shownUnits[`${id}.${columnId}`]
      if (typeof cell !== 'number')
        return refuse(id, `${label} is not a number`, rangeInWords(column, column.physical, unit))
      const refused = refuseOutside(id, { ...column, label }, cell, column.physical, unit)
      if (refused) return refused
    }
  }
  return undefined
}

function checkValue(
  calculator: Calculator,
  id: string,
  value: InputValue,
  shownUnits: ShownUnits = {},
): Refused {
  const input = calculator.inputs[id]
  if (input?.type === 'quantity') return checkQuantity(id, input, value, shownUnits[id])
  if (input?.type === 'choice') return checkChoice(id, input, value)
  return input ? checkTable(id, input, value, shownUnits) : undefined
}

/**
 * The values that `compute` gets: what was given where it counts, defaults elsewhere; or a refusal that names the
 * first input at fault.
 * @param values what was given [SI]
 * @param shownUnits units in which a refusal is worded [-], by input
 */
export function checkValues(
  calculator: Calculator,
  values: Values,
  shownUnits: ShownUnits = {},
): { readonly values: Record<string, InputValue> } | { readonly refusal: Refusal } {
  const ids = Object.keys(calculator.inputs)
  const unknown = Object.keys(values).find((id) => !Object.hasOwn(calculator.inputs, id))
  if (unknown !== undefined)
    return refuse('', `«${unknown.slice(0, 40)}» is not an input here`, ids.join(', '))
  const choices = ids.filter((id) => calculator.inputs[id]?.type === 'choice')
  // Choices first: they decide which of the others count.
  for (const id of choices) {
    const refused = checkValue(calculator, id, valueOf(calculator, values, id))
    if (refused) return refused
  }
  const relevant = relevantInputs(calculator, values)
  for (const id of relevant) {
    const refused = checkValue(calculator, id, valueOf(calculator, values, id), shownUnits)
    if (refused) return refused
  }
  const given = relevant.map((id) => [id, valueOf(calculator, values, id)] as const)
  const defaults = ids.map((id) => [id, valueOf(calculator, {}, id)] as const)
  return { values: Object.fromEntries([...defaults, ...given]) }
}

function validityNotice(
  input: Pick<QuantityInput, 'label' | 'kind' | 'units' | 'valid'>,
  value: number,
  unit?: string,
) {
  const outside = input.valid && outsideInWords(input, value, input.valid, unit)
  return outside === undefined
    ? []
    : [{ grade: 'caution', text: `${outside}: outside the range for which the method is stated.` } as const]
}

/** A notice for each value outside the range for which the method is stated. */
export function validityNotices(
  calculator: Calculator,
  values: Values,
  shownUnits: ShownUnits = {},
): Notice[] {
  return relevantInputs(calculator, values).flatMap((id) => {
    const input = calculator.inputs[id]
    const value = values[id]
    if (input?.type === 'quantity' && typeof value === 'number')
      return validityNotice(input, value, shownUnits[id])
    if (input?.type !== 'table' || !Array.isArray(value)) return []
    return value.flatMap((row, index) =>
      Object.entries(input.columns).flatMap(([columnId, column]) =>
        validityNotice(
          { ...column, label: `${rowInWords(input, index)}: ${column.label}` },
          row[columnId],
          shownUnits[`${id}.${columnId}`],
        ),
      ),
    )
  })
}
