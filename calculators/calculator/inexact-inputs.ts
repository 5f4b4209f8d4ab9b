import { relevantInputs } from './relevant-inputs.ts'
import type { Accuracy, Calculator, InputValue, Range, TableRow } from './types.ts'

type Values = Readonly<Record<string, InputValue>>
/** A copy of the checked values, its tables included, that may be written to. */
export type Draft = Record<string, InputValue>

/** One number that is not known exactly: an input, or a cell of a table. */
export interface Source {
  /** SI. */
  readonly value: number
  readonly halfWidth: number
  /** What is physically possible. */
  readonly range: Range
  readonly write: (draft: Draft, value: number) => void
}

function halfWidthOf(accuracy: Accuracy | undefined, value: number, override: number | undefined): number {
  if (override !== undefined) return override
  if (!accuracy) return 0
  return 'absolute' in accuracy ? accuracy.absolute : accuracy.relative * Math.abs(value)
}

/** The values with every row of every table copied, since draws write into them. */
export function draftOf(values: Values): Draft {
  return Object.fromEntries(
    Object.entries(values).map(([id, value]) => [
      id,
      Array.isArray(value) ? value.map((row) => ({ ...row })) : value,
    ]),
  )
}

function writeCell(draft: Draft, id: string, at: number, column: string, value: number): void {
  const row = (draft[id] as Record<string, number>[])[at]
  if (row) row[column] = value
}

/**
 * The numbers that are not known exactly, in the order of the declaration.
 * @param values checked values, complete [SI]
 * @param accuracies half-widths that replace the declared accuracies [SI], by input or 'table.column'
 */
export function sourcesOf(
  calculator: Calculator,
  values: Values,
  accuracies: Readonly<Record<string, number>>,
): Source[] {
  const sources = relevantInputs(calculator, values).flatMap((id): Source[] => {
    const input = calculator.inputs[id]
    const value = values[id]
    if (input?.type === 'quantity' && typeof value === 'number') {
      const halfWidth = halfWidthOf(input.accuracy, value, accuracies[id])
      const write: Source['write'] = (draft, moved) => void (draft[id] = moved)
      return [{ value, halfWidth, range: input.physical, write }]
    }
    if (input?.type !== 'table' || !Array.isArray(value)) return []
    const rows: readonly TableRow[] = value
    return Object.entries(input.columns).flatMap(([columnId, column]) =>
      rows.map((row, at): Source => {
        const cell = row[columnId] ?? 0
        return {
          value: cell,
          halfWidth: halfWidthOf(column.accuracy, cell, accuracies[`${id}.${columnId}`]),
          range: column.physical,
          write: (draft, moved) => writeCell(draft, id, at, columnId, moved),
        }
      }),
    )
  })
  return sources.filter((source) => source.halfWidth > 0)
}
