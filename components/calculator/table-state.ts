import type { QuantityReading, UnitSystem } from '../../calculators/quantity/types.ts'
import type { FieldSpec } from './fields.ts'
import { unitFor } from './fields.ts'
import { fieldFrom, isBare, portableText, readIn, shownAs, shownText } from './quantity-field.ts'
import type { QuantityField } from './quantity-field.ts'
import { cellTexts } from './tables.ts'
import type { TableSpec } from './tables.ts'

export type Row = Readonly<Record<string, QuantityField>>

/** A table as it stands in the form: the unit of each column, and a quantity in each cell. */
export interface TableState {
  readonly spec: TableSpec
  readonly units: Readonly<Record<string, { readonly unit: string; readonly picked: boolean }>>
  readonly rows: readonly Row[]
}

export type TableAction =
  | {
      readonly type: 'typeCell'
      readonly table: string
      readonly row: number
      readonly column: string
      readonly text: string
    }
  | {
      readonly type: 'readCell'
      readonly table: string
      readonly row: number
      readonly column: string
      readonly of: QuantityField
      readonly reading: QuantityReading
    }
  | {
      readonly type: 'pickColumnUnit'
      readonly table: string
      readonly column: string
      readonly unit: string
    }
  | { readonly type: 'addRow'; readonly table: string }
  | { readonly type: 'removeRow'; readonly table: string; readonly row: number }
  /** Cells of a spreadsheet, put into the table from this cell on, to the right and down. */
  | {
      readonly type: 'fillCells'
      readonly table: string
      readonly row: number
      readonly column: string
      readonly cells: readonly (readonly string[])[]
    }
  | { readonly type: 'replaceRows'; readonly table: string; readonly cells: readonly (readonly string[])[] }

function cell(table: TableState, columnId: string, text: string): QuantityField {
  const spec = table.spec.columns[columnId] as FieldSpec
  return fieldFrom(spec, text, table.units[columnId] ?? { unit: spec.usualUnit, picked: false })
}

function emptyRow(table: TableState): Row {
  return Object.fromEntries(Object.keys(table.spec.columns).map((id) => [id, cell(table, id, '')]))
}

/** The table with as many rows as the longest of these columns, within the table's own limits. */
function tableFrom(
  spec: TableSpec,
  columns: Readonly<Record<string, string>>,
  units: TableState['units'],
): TableState {
  const empty: TableState = { spec, units, rows: [] }
  const texts = Object.entries(spec.columns).map(([id, { id: key }]): [string, string[]] => [
    id,
    cellTexts(columns[key] ?? ''),
  ])
  const longest = Math.max(...texts.map(([, cells]) => cells.length))
  const count = Math.min(spec.rows.maximum, Math.max(spec.rows.minimum, longest))
  const rows = Array.from({ length: count }, (_, at) =>
    Object.fromEntries(texts.map(([id, cells]) => [id, cell(empty, id, cells[at] ?? '')])),
  )
  return { ...empty, rows }
}

export function startTable(
  spec: TableSpec,
  starting: Readonly<Record<string, string>>,
  system: UnitSystem,
): TableState {
  const units = Object.entries(spec.columns).map(([id, column]) => [
    id,
    { unit: unitFor(column, system), picked: false },
  ])
  return tableFrom(spec, starting, Object.fromEntries(units) as TableState['units'])
}

function withCell(table: TableState, row: number, column: string, field: QuantityField): TableState {
  const old = table.rows[row]
  return old === undefined ? table : { ...table, rows: table.rows.with(row, { ...old, [column]: field }) }
}

/** Every cell of the column shown in this unit; what was not understood is read again in it. */
function inUnit(table: TableState, columnId: string, unit: string, picked: boolean): TableState {
  const spec = table.spec.columns[columnId]
  if (spec === undefined) return table
  const rows = table.rows.map((row) => {
    const field = row[columnId]
    return field === undefined ? row : { ...row, [columnId]: shownAs(spec, field, unit, picked) }
  })
  return { ...table, units: { ...table.units, [columnId]: { unit, picked } }, rows }
}

function filled(table: TableState, from: number, column: string, cells: readonly (readonly string[])[]) {
  const ids = Object.keys(table.spec.columns)
  const first = Math.max(0, ids.indexOf(column))
  const count = Math.min(table.spec.rows.maximum, Math.max(table.rows.length, from + cells.length))
  const rows = Array.from({ length: count }, (_, at) => {
    const pasted = cells[at - from] ?? []
    const row = table.rows[at] ?? emptyRow(table)
    const changed = pasted
      .slice(0, ids.length - first)
      .map((text, place) => [ids[first + place], cell(table, ids[first + place] ?? '', text)])
    return { ...row, ...(Object.fromEntries(changed) as Row) }
  })
  return { ...table, rows }
}

export function followSystem(table: TableState, system: UnitSystem): TableState {
  return Object.entries(table.spec.columns).reduce(
    (done, [id, spec]) => (done.units[id]?.picked ? done : inUnit(done, id, unitFor(spec, system), false)),
    table,
  )
}

export function applyToTable(table: TableState, action: TableAction): TableState {
  switch (action.type) {
    case 'typeCell': {
      const field = table.rows[action.row]?.[action.column]
      const spec = table.spec.columns[action.column]
      if (field === undefined || spec === undefined) return table
      const typed = { ...field, text: action.text, textUnit: field.unit }
      return withCell(table, action.row, action.column, {
        ...typed,
        reading: readIn(spec, action.text, field.unit),
      })
    }
    case 'readCell': {
      const field = table.rows[action.row]?.[action.column]
      // An answer to a text that has been overtyped since, or has moved to another row, is dropped.
      const same = field?.text === action.of.text && field.textUnit === action.of.textUnit
      return field && same
        ? withCell(table, action.row, action.column, { ...field, reading: action.reading })
        : table
    }
    case 'pickColumnUnit':
      return inUnit(table, action.column, action.unit, true)
    case 'addRow':
      return table.rows.length < table.spec.rows.maximum
        ? { ...table, rows: [...table.rows, emptyRow(table)] }
        : table
    case 'removeRow':
      return table.rows.length > table.spec.rows.minimum
        ? { ...table, rows: table.rows.toSpliced(action.row, 1) }
        : table
    case 'fillCells':
      return filled(table, action.row, action.column, action.cells)
    case 'replaceRows': {
      const count = Math.max(table.spec.rows.minimum, Math.min(action.cells.length, table.spec.rows.maximum))
      const bare = { ...table, rows: Array.from({ length: count }, () => emptyRow(table)) }
      return filled(bare, 0, Object.keys(table.spec.columns)[0] ?? '', action.cells)
    }
  }
}

const isEmpty = (row: Row): boolean => Object.values(row).every((field) => field.text.trim() === '')

/** Rows that count: empty ones at the end do not. An empty one in between is a gap that only the person can close. */
export function rowsThatCount(table: TableState): readonly Row[] {
  return table.rows.slice(0, table.rows.findLastIndex((row) => !isEmpty(row)) + 1)
}

/** The cells of a column as texts that mean the same everywhere; an expression is meant in the column's unit. */
export function portableCells(table: TableState, columnId: string): string[] {
  const spec = table.spec.columns[columnId]
  return table.rows.map((row) => {
    const field = row[columnId]
    if (field === undefined || spec === undefined) return ''
    const moved = !isBare(field) && field.textUnit !== field.unit && field.reading !== 'waiting'
    return moved && field.reading.ok ? `${shownText(field, spec)} ${field.unit}` : portableText(field)
  })
}

/** The table with these cells in a column, shown in the unit in which the first of them is written. */
export function withColumn(
  table: TableState,
  columnId: string,
  texts: readonly string[],
  setsLength: boolean,
): TableState {
  const { rows: limits } = table.spec
  const longest = setsLength ? texts.length : Math.max(table.rows.length, texts.length)
  const count = Math.min(limits.maximum, Math.max(limits.minimum, longest))
  const rows = Array.from({ length: count }, (_, at) => ({
    ...(table.rows[at] ?? emptyRow(table)),
    [columnId]: cell(table, columnId, texts[at] ?? ''),
  }))
  const filledIn = { ...table, rows }
  const written = rows[0]?.[columnId]?.textUnit
  const shown = table.units[columnId]?.unit
  return written === undefined || written === shown ? filledIn : inUnit(filledIn, columnId, written, true)
}
