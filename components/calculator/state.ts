import type { Calculator } from '../../calculators/calculator/types.ts'
import type { QuantityReading, UnitSystem } from '../../calculators/quantity/types.ts'
import { fieldsOf, unitFor } from './fields.ts'
import type { FieldSpec, FieldSpecs } from './fields.ts'
import { fieldFrom, readIn, shownAs } from './quantity-field.ts'
import type { QuantityField } from './quantity-field.ts'
import { applyToTable, followSystem, startTable } from './table-state.ts'
import type { TableAction, TableState } from './table-state.ts'
import { tablesOf } from './tables.ts'

export * from './quantity-field.ts'

export interface FormState {
  readonly system: UnitSystem
  readonly fields: Readonly<Record<string, QuantityField>>
  readonly choices: Readonly<Record<string, string>>
  readonly tables: Readonly<Record<string, TableState>>
  /** Only the units that the person picked for results. */
  readonly outputUnits: Readonly<Record<string, string>>
}

/**
 * Value of each field and choice as a text with its unit, and of each 'table.column' the texts of its cells: the
 * form before anybody touches it.
 */
export type Starting = Readonly<Record<string, string>>

export type Action =
  | { readonly type: 'type'; readonly field: string; readonly text: string }
  | {
      readonly type: 'read'
      readonly field: string
      readonly of: QuantityField
      readonly reading: QuantityReading
    }
  | { readonly type: 'pickUnit'; readonly field: string; readonly unit: string }
  | { readonly type: 'choose'; readonly input: string; readonly value: string }
  | { readonly type: 'pickOutputUnit'; readonly output: string; readonly unit: string }
  | { readonly type: 'follow'; readonly system: UnitSystem }
  | { readonly type: 'restore'; readonly state: FormState }
  | TableAction

export function startState(calculator: Calculator, starting: Starting, system: UnitSystem): FormState {
  const specs = fieldsOf(calculator)
  const fields = Object.fromEntries(
    Object.values(specs).map((spec) => [
      spec.id,
      fieldFrom(spec, starting[spec.id] ?? '', { unit: unitFor(spec, system), picked: false }),
    ]),
  )
  const choices = Object.fromEntries(
    Object.entries(calculator.inputs).flatMap(([id, input]) =>
      input.type === 'choice' ? [[id, starting[id] ?? input.default]] : [],
    ),
  )
  const tables = Object.fromEntries(
    Object.values(tablesOf(calculator)).map((spec) => [spec.id, startTable(spec, starting, system)]),
  )
  return { system, fields, choices, tables, outputUnits: {} }
}

function withField(state: FormState, id: string, change: (field: QuantityField) => QuantityField): FormState {
  const field = state.fields[id]
  return field === undefined ? state : { ...state, fields: { ...state.fields, [id]: change(field) } }
}

export function apply(specs: FieldSpecs, state: FormState, action: Action): FormState {
  const specOf = (id: string): FieldSpec => {
    const spec = specs[id]
    if (spec === undefined) throw new Error(`No field '${id}' in this calculator`)
    return spec
  }
  switch (action.type) {
    case 'type':
      return withField(state, action.field, (field) => ({
        ...field,
        text: action.text,
        textUnit: field.unit,
        reading: readIn(specOf(action.field), action.text, field.unit),
      }))
    case 'read':
      // An answer to a text that has been overtyped since is dropped.
      return withField(state, action.field, (field) =>
        field.text === action.of.text && field.textUnit === action.of.textUnit
          ? { ...field, reading: action.reading }
          : field,
      )
    case 'pickUnit':
      return withField(state, action.field, (field) =>
        shownAs(specOf(action.field), field, action.unit, true),
      )
    case 'choose':
      return { ...state, choices: { ...state.choices, [action.input]: action.value } }
    case 'pickOutputUnit':
      return { ...state, outputUnits: { ...state.outputUnits, [action.output]: action.unit } }
    case 'follow':
      return follow(specs, state, action.system)
    case 'restore':
      // It was built in the person's own units; the system held so far may still be that of the built page.
      return action.state
    default: {
      const table = state.tables[action.table]
      if (table === undefined) return state
      return { ...state, tables: { ...state.tables, [action.table]: applyToTable(table, action) } }
    }
  }
}

function follow(specs: FieldSpecs, state: FormState, system: UnitSystem): FormState {
  const fields = Object.fromEntries(
    Object.values(specs).flatMap((spec) => {
      const field = state.fields[spec.id]
      if (field === undefined) return []
      return [[spec.id, field.picked ? field : shownAs(spec, field, unitFor(spec, system), false)]]
    }),
  )
  const tables = Object.fromEntries(
    Object.entries(state.tables).map(([id, table]) => [id, followSystem(table, system)]),
  )
  return { ...state, system, fields, tables }
}

/** What typing a text into the field of this name means; a cell's name is 'table.row.column'. */
export function typedInto(name: string, text: string): Action {
  const [table = '', row, column] = name.split('.')
  return row === undefined || column === undefined
    ? { type: 'type', field: name, text }
    : { type: 'typeCell', table, row: Number(row), column, text }
}
