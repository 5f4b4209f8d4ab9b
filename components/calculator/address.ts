import { clean, fewProblems, quote, saidTwice, siteKeys } from './address-entries.ts'
import type { Calculator } from '../../calculators/calculator/types.ts'
import { relevantInputs } from '../../calculators/calculator/relevant-inputs.ts'
import { plainText } from '../../calculators/quantity/number.ts'
import { carriesUnit, fieldFrom, isBare, meantIn, portableText, readIn } from './state.ts'
import type { FormState, QuantityField } from './state.ts'
import { accuracyField, offeredUnits } from './fields.ts'
import type { FieldSpec, FieldSpecs } from './fields.ts'
import { outputUnit } from './outputs.ts'
import { applyToTable, portableCells, withColumn } from './table-state.ts'
import type { TableState } from './table-state.ts'
import { cellTexts, columnText, tablesOf } from './tables.ts'

/** Form of the address. A link made today must be read rightly by every later edition. */
const VERSION = '1'
const VERSION_KEY = 'v'

/** Longer than any link the form can write, short enough that nothing on the page has to cope with more. */
const LONGEST_QUERY = 8000
export const LONGEST_TEXT = 200
/** A column carries the cells of all its rows. */
const LONGEST_COLUMN = 2000

/** Where a calculator stands among the calculators of its page, which decides whose a key of the address is. */
export interface Place {
  /** 'viscosity-at-temperature.', before each key when several calculators share the page. */
  readonly prefix: string
  readonly alone: boolean
  /** The first on the page also reads keys without a prefix: links made when it stood there alone. */
  readonly first: boolean
  /** Prefixes of the other calculators of the page. */
  readonly others: readonly string[]
}

/** The key without its prefix when it is meant for the calculator at this place. */
function ownKey(key: string, place: Place): string | undefined {
  if (key.startsWith(place.prefix)) return key.slice(place.prefix.length)
  if (!place.first || siteKeys.has(key)) return undefined
  return place.others.some((prefix) => key.startsWith(prefix)) ? undefined : key
}

/** A bare number as this form writes it: the number, one space, the unit's id. */
const isAsWritten = (number: QuantityField, text: string): boolean => text === portableText(number)

/** A field with the text of an address: a number in the maker's unit, or a text with its own unit as it was typed. */
function addressField(spec: FieldSpec, value: string, shown: string): QuantityField {
  const apart = fieldFrom(spec, value, { unit: shown, picked: false })
  if (apart.textUnit === shown && apart.text !== value && isAsWritten(apart, value)) return apart
  // A link shows the units of whoever made it.
  if (isAsWritten(apart, value)) return { ...apart, unit: apart.textUnit, picked: true }
  const text = value.trimEnd()
  return { text, textUnit: shown, unit: shown, picked: false, reading: readIn(spec, text, shown) }
}

/** The text for the address. A space at its end tells a typed '12 ft' from the number 12 of a field in ft. */
function addressText(spec: FieldSpec, field: QuantityField): string {
  if (isBare(field)) return portableText(field)
  const apart = fieldFrom(spec, field.text, { unit: field.unit, picked: false })
  return isBare(apart) && isAsWritten(apart, field.text) ? `${field.text} ` : field.text
}

/** What one key means: given its value, the state it leads to, or a sentence that says why not. */
type Reader = (state: FormState, value: string) => FormState | string

function unitReader(
  label: string,
  units: readonly string[],
  set: (state: FormState, unit: string) => FormState,
): Reader {
  return (state, value) =>
    units.includes(value)
      ? set(state, value)
      : `Unit of «${label}»: read ${quote(value)}; accepted: ${units.join(', ')}.`
}

/** A column holds the cells of all its rows; the first one that is met sets how many there are. */
function columnReaders(calculator: Calculator, start: FormState): [string, Reader][] {
  return Object.values(tablesOf(calculator)).flatMap((spec) =>
    Object.entries(spec.columns).flatMap(([column, { id: key, label, units }]): [string, Reader][] => {
      const changed = (state: FormState, change: (table: TableState) => TableState): FormState => {
        const table = state.tables[spec.id]
        return table ? { ...state, tables: { ...state.tables, [spec.id]: change(table) } } : state
      }
      return [
        [
          key,
          (state, value) => {
            const before = start.tables[spec.id]
            const now = state.tables[spec.id]
            const asAtStart =
              before !== undefined &&
              before.rows.length === now?.rows.length &&
              columnText(portableCells(before, column)) === value
            if (asAtStart) return state
            const untouched = state.tables[spec.id] === start.tables[spec.id]
            return changed(state, (table) => withColumn(table, column, cellTexts(value), untouched))
          },
        ],
        [
          `${key}.unit`,
          unitReader(label, units, (state, unit) =>
            changed(state, (table) =>
              applyToTable(table, { type: 'pickColumnUnit', table: spec.id, column, unit }),
            ),
          ),
        ],
      ]
    }),
  )
}

function readers(calculator: Calculator, specs: FieldSpecs, start: FormState): Map<string, Reader> {
  const found = new Map<string, Reader>()
  for (const spec of Object.values(specs)) {
    found.set(spec.id, (state, value) => {
      const before = start.fields[spec.id]
      // A value that is still that of the start follows the reader's units.
      if (before !== undefined && portableText(before) === value) return state
      const field = addressField(spec, value, state.fields[spec.id]?.unit ?? spec.usualUnit)
      return { ...state, fields: { ...state.fields, [spec.id]: field } }
    })
    found.set(
      `${spec.id}.unit`,
      unitReader(spec.label, spec.units, (state, unit) => {
        const field = state.fields[spec.id]
        if (field === undefined) return state
        const shown = isBare(field) ? { ...field, unit } : meantIn(spec, field, unit)
        return { ...state, fields: { ...state.fields, [spec.id]: { ...shown, picked: true } } }
      }),
    )
  }
  for (const [id, input] of Object.entries(calculator.inputs)) {
    if (input.type !== 'choice') continue
    const allowed = input.options.map((option) => option.value)
    found.set(id, (state, value) =>
      allowed.includes(value)
        ? { ...state, choices: { ...state.choices, [id]: value } }
        : `«${input.label}»: read ${quote(value)}; accepted: ${allowed.join(', ')}.`,
    )
  }
  for (const [key, reader] of columnReaders(calculator, start)) found.set(key, reader)
  for (const [id, output] of Object.entries(calculator.outputs)) {
    if (output.type !== 'quantity') continue
    found.set(
      `${id}.unit`,
      unitReader(output.label, offeredUnits(output), (state, unit) => ({
        ...state,
        outputUnits: { ...state.outputUnits, [id]: unit },
      })),
    )
  }
  found.set(VERSION_KEY, (state, value) =>
    value === VERSION
      ? state
      : `The address says it is of form ${quote(value)}; this edition reads form ${VERSION}. Check every input.`,
  )
  return found
}

export interface AddressReading {
  readonly state: FormState
  /** One sentence for each thing that could not be used; plain text. */
  readonly problems: readonly string[]
  /** Set where the whole query was too long to be looked at. */
  readonly unread?: true
}

/** Puts on top of `start` what the query string says, and names what it could not use. */
export function readAddress(
  calculator: Calculator,
  specs: FieldSpecs,
  start: FormState,
  query: string,
  place: Place,
): AddressReading {
  if (query.length > LONGEST_QUERY) {
    return {
      state: start,
      problems: [
        `The address holds ${query.length} characters after the question mark; accepted: at most ${LONGEST_QUERY}.`,
      ],
      unread: true,
    }
  }
  const known = readers(calculator, specs, start)
  const columns = columnKeys(calculator)
  const seen = new Set<string>()
  const problems: string[] = []
  // Values before units: a unit can only be shown for a value that is there.
  const entries = [...new URLSearchParams(query)].sort(
    ([a], [b]) => Number(a.endsWith('.unit')) - Number(b.endsWith('.unit')),
  )
  let state = start
  for (const [fullKey, value] of entries) {
    const key = ownKey(fullKey, place)
    if (key === undefined) continue
    const reader = known.get(key)
    if (reader === undefined) {
      problems.push(
        `Read ${quote(fullKey)}, which is no input here; accepted: ${[...known.keys()].filter((id) => !id.includes('.') || columns.has(id)).join(', ')}.`,
      )
    } else if (seen.has(key)) {
      problems.push(saidTwice(key))
    } else {
      seen.add(key)
      const longest = columns.has(key) ? LONGEST_COLUMN : LONGEST_TEXT
      const tooLong = value.length > longest
      if (tooLong) {
        problems.push(
          `${quote(key)}: read ${value.length} characters; accepted: at most ${longest}. It was left empty.`,
        )
      }
      const outcome = reader(state, tooLong ? '' : clean(value))
      if (typeof outcome === 'string') problems.push(outcome)
      else state = outcome
    }
  }
  return { state, problems: fewProblems(problems) }
}

function columnKeys(calculator: Calculator): Set<string> {
  const tables = Object.values(tablesOf(calculator))
  return new Set(tables.flatMap((spec) => Object.values(spec.columns).map((column) => column.id)))
}

/** All columns of a table, so that they are read as equally long, and the units that the cells do not say. */
function tableEntries(start: TableState | undefined, table: TableState): [string, string][] {
  return Object.entries(table.spec.columns).flatMap(([column, { id }]): [string, string][] => {
    const text = columnText(portableCells(table, column))
    const shown = table.units[column]
    const first = table.rows[0]?.[column]
    const changed = start === undefined || columnText(portableCells(start, column)) !== text
    // A changed column is shown in the unit of its first cell.
    const said = changed && first !== undefined && isBare(first) && first.textUnit === shown?.unit
    const unitless = table.rows.some((row) => {
      const cell = row[column]
      return cell !== undefined && cell.text.trim() !== '' && !isBare(cell) && !carriesUnit(cell)
    })
    const moved = shown?.picked === true && (changed || shown.unit !== start?.units[column]?.unit)
    return shown !== undefined && ((moved && !said) || unitless)
      ? [
          [id, text],
          [`${id}.unit`, shown.unit],
        ]
      : [[id, text]]
  })
}

/** The unit that the address has to state beside the text, if any. */
function unitBeside(before: QuantityField | undefined, field: QuantityField): string | undefined {
  if (before !== undefined && portableText(before) === portableText(field))
    return field.picked && field.unit !== before.unit ? field.unit : undefined
  if (isBare(field)) return field.unit === field.textUnit ? undefined : field.unit
  if (carriesUnit(field) || plainText(field.text) === '') return field.picked ? field.unit : undefined
  // The numbers in an expression are meant in the field's unit.
  return field.textUnit
}

function fieldEntries(spec: FieldSpec | undefined, start: FormState, state: FormState): [string, string][] {
  const field = spec && state.fields[spec.id]
  if (spec === undefined || field === undefined) return []
  const before = start.fields[spec.id]
  const unit = unitBeside(before, field)
  const same = before !== undefined && portableText(before) === portableText(field)
  const text = same ? portableText(field) : addressText(spec, field)
  return [[spec.id, text], ...(unit === undefined ? [] : [[`${spec.id}.unit`, unit] as [string, string]])]
}

const sameEntries = (a: readonly [string, string][], b: readonly [string, string][]): boolean =>
  a.length === b.length && a.every(([key, value], at) => key === b[at]?.[0] && value === b[at][1])

/** The inputs that play a part, and of the accuracies and units of results those that were changed. */
function entriesOf(calculator: Calculator, specs: FieldSpecs, start: FormState, state: FormState) {
  const inputs = relevantInputs(calculator, state.choices).flatMap((id): [string, string][] => {
    const choice = state.choices[id]
    if (choice !== undefined) return [[id, choice]]
    const table = state.tables[id]
    if (table !== undefined) return tableEntries(start.tables[id], table)
    const accuracy = specs[accuracyField(id)]
    const spread = fieldEntries(accuracy, start, state)
    const changed = accuracy !== undefined && !sameEntries(spread, fieldEntries(accuracy, start, start))
    return [...fieldEntries(specs[id], start, state), ...(changed ? spread : [])]
  })
  const units = Object.entries(state.outputUnits).flatMap(([id, unit]): [string, string][] => {
    const output = calculator.outputs[id]
    const usual =
      output?.type === 'quantity' ? outputUnit(id, output, { ...state, outputUnits: {} }) : undefined
    return unit === usual ? [] : [[`${id}.unit`, unit]]
  })
  return [...inputs, ...units]
}

/** What the address says, as keys (without prefix) and values; nothing for the form as it starts, unless `whole`. */
function addressEntries(
  calculator: Calculator,
  specs: FieldSpecs,
  start: FormState,
  state: FormState,
  whole: boolean,
): [string, string][] {
  const entries = entriesOf(calculator, specs, start, state)
  if (!whole && sameEntries(entries, entriesOf(calculator, specs, start, start))) return []
  return [[VERSION_KEY, VERSION], ...entries]
}

/**
 * The page's query string with this calculator's part brought up to date; other parts stay. Once anything differs
 * from the start, and always when `whole` is set, it holds all inputs that play a part: the values at the start
 * may be others in a later edition.
 */
export function writeAddress(
  calculator: Calculator,
  specs: FieldSpecs,
  start: FormState,
  state: FormState,
  query: string,
  place: Place,
  whole = false,
): string {
  const known = readers(calculator, specs, start)
  const parameters = new URLSearchParams(query.length > LONGEST_QUERY ? '' : query)
  for (const fullKey of Array.from(parameters.keys())) {
    const key = ownKey(fullKey, place)
    if (key !== undefined && known.has(key)) parameters.delete(fullKey)
  }
  for (const [key, value] of addressEntries(calculator, specs, start, state, whole)) {
    parameters.append(place.alone ? key : `${place.prefix}${key}`, value)
  }
  return parameters.toString()
}
