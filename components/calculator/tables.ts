import type { Calculator, Range, TableInput } from '../../calculators/calculator/types.ts'
import { rowInWords } from '../../calculators/calculator/check-values.ts'
import type { FieldSpec } from './fields.ts'
import { quantitySpec } from './fields.ts'

/** A table of the form. */
export interface TableSpec {
  readonly id: string
  readonly label: string
  /** 'Cylinder'. */
  readonly rowName: string
  readonly rows: Range
  /** By column id; the id of a spec is 'table.column', as in the address. */
  readonly columns: Readonly<Record<string, FieldSpec>>
}

function tableSpec(id: string, input: TableInput): TableSpec {
  const columns = Object.entries(input.columns).map(([columnId, column]): [string, FieldSpec] => [
    columnId,
    { ...quantitySpec(columnKey(id, columnId), column), input: id },
  ])
  return {
    id,
    label: input.label,
    rowName: input.rowName ?? 'Row',
    rows: input.rows,
    columns: Object.fromEntries(columns),
  }
}

export function tablesOf(calculator: Calculator): Readonly<Record<string, TableSpec>> {
  return Object.fromEntries(
    Object.entries(calculator.inputs).flatMap(([id, input]) =>
      input.type === 'table' ? [[id, tableSpec(id, input)]] : [],
    ),
  )
}

export const columnKey = (table: string, column: string): string => `${table}.${column}`

/** Key of a cell's problem, and the name of its text field. */
export const cellKey = (table: string, row: number, column: string): string => `${table}.${row}.${column}`

/** 'Exhaust temperatures, cylinder 3: Temperature'. */
export function cellInWords(spec: TableSpec, row: number, column: string): string {
  return `${rowInWords(spec, row)}: ${spec.columns[column]?.label ?? column}`
}

/** Between the cells of a column in an address; no number, unit or sum contains it. An author may write ';'. */
const BETWEEN_CELLS = '_'
const BETWEEN_TEXTS = /[_;]/

export function cellTexts(column: string): string[] {
  return column.split(BETWEEN_TEXTS).map((text) => text.trim())
}

export function columnText(texts: readonly string[]): string {
  return texts.map((text) => text.replaceAll(/[_;]/g, ' ').trim()).join(BETWEEN_CELLS)
}
