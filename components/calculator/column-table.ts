import type { Calculator, Output } from '../../calculators/calculator/types.ts'
import { formatIn } from '../../calculators/quantity/format.ts'
import type { KindId } from '../../calculators/quantity/types.ts'
import { fromSI, unitOf } from '../../calculators/quantity/units.ts'
import type { ColumnResult, ColumnRow } from './column-data.ts'
import { csvCell } from './export.ts'
import type { FieldSpec } from './fields.ts'
import { outputUnit } from './outputs.ts'
import type { FormState } from './state.ts'

/** A column of the table: what stands in it, for reading and for computing on. */
export interface TableColumn {
  readonly id: string
  readonly label: string
  /** '' where there is none. */
  readonly unit: string
  readonly shown: (row: ColumnRow) => string
  readonly exact: (row: ColumnRow) => string
}

/** Past these, digits are rounding errors of the unit conversion. */
const EXPORT_DIGITS = 12

const exactIn = (si: number, kind: KindId, unit: string): string =>
  String(Number(fromSI(si, unit, kind).toPrecision(EXPORT_DIGITS)))

/** The number alone, as the head of the column names its unit. */
const bareIn = (si: number, kind: KindId, unit: string): string =>
  formatIn(si, kind, unit).replace(/\u00a0[^\u00a0]*$/u, '')

function outputColumn(id: string, output: Output, state: FormState): TableColumn {
  if (output.type === 'verdict') {
    const words = (row: ColumnRow) => output.options[String(row.outputs[id])]?.label ?? ''
    return { id, label: output.label, unit: '', shown: words, exact: words }
  }
  const unit = outputUnit(id, output, state)
  const value = (row: ColumnRow) => Number(row.outputs[id])
  return {
    id,
    label: output.label,
    unit: unitOf(unit).symbol,
    shown: (row) => bareIn(value(row), output.kind, unit),
    exact: (row) => exactIn(value(row), output.kind, unit),
  }
}

/** The column's input and every output, each in the unit in which the form shows it. */
export function tableColumns(
  calculator: Calculator,
  spec: FieldSpec,
  unit: string,
  state: FormState,
): readonly TableColumn[] {
  const input: TableColumn = {
    id: spec.id,
    label: spec.label,
    unit: unitOf(unit).symbol,
    shown: (row) => bareIn(row.si, spec.kind, unit),
    exact: (row) => exactIn(row.si, spec.kind, unit),
  }
  const outputs = Object.entries(calculator.outputs).map(([id, output]) => outputColumn(id, output, state))
  return [input, ...outputs]
}

export const headOf = ({ label, unit }: TableColumn): string => (unit === '' ? label : `${label}, ${unit}`)

/**
 * The table as text: a row for each line that held something, bad ones with what stood there and why it was not
 * used. Nothing in it runs as a formula.
 */
export function columnText(
  columns: readonly TableColumn[],
  result: ColumnResult,
  separator: ',' | '\t',
): string {
  const good = result.rows.map((row) => ({
    line: row.line,
    cells: [String(row.line), ...columns.map((column) => column.exact(row)), ''],
  }))
  const bad = result.bad.map(({ line, text, sentence }) => ({
    line,
    cells: [String(line), text, ...columns.slice(1).map(() => ''), sentence],
  }))
  const cell = (content: string): string =>
    separator === ',' ? csvCell(content) : csvCell(content.replaceAll(/[\t\r\n]/g, ' '))
  const lines = [...good, ...bad].sort((a, b) => a.line - b.line).map(({ cells }) => cells)
  return [['line', ...columns.map(headOf), 'remark'], ...lines]
    .map((cells) => `${cells.map(cell).join(separator)}\r\n`)
    .join('')
}

/** The same as a file: spreadsheets take the mark at its start as a sign of UTF-8. */
export const columnCSV = (columns: readonly TableColumn[], result: ColumnResult): string =>
  `\ufeff${columnText(columns, result, ',')}`
