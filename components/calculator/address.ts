import type { Calculator } from '../../calculators/calculator/types.ts'
import { fieldFrom, isBare, meantIn, portableText } from './state.ts'
import type { FormState } from './state.ts'
import { offeredUnits } from './fields.ts'
import type { FieldSpecs } from './fields.ts'
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
const LONGEST_QUOTE = 40
const MOST_PROBLEMS = 5

/** Keys that other parts of the site put into an address. */
const siteKeys = new Set(['q', 'highlight', 'pagefind-highlight'])

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

// Line ends, other control characters, and marks that turn the direction of reading and so could disguise a text.
const unprintable = /[\p{Cc}\u2028\u2029\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu

const clean = (text: string): string => text.replace(unprintable, ' ')

function quote(text: string): string {
  const shown = clean(text)
  return `«${shown.length > LONGEST_QUOTE ? `${shown.slice(0, LONGEST_QUOTE)}…` : shown}»`
}

/** The key without its prefix when it is meant for the calculator at this place. */
function ownKey(key: string, place: Place): string | undefined {
  if (key.startsWith(place.prefix)) return key.slice(place.prefix.length)
  if (!place.first || siteKeys.has(key)) return undefined
  return place.others.some((prefix) => key.startsWith(prefix)) ? undefined : key
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
      const shown = state.fields[spec.id]?.unit ?? spec.usualUnit
      const asWritten = fieldFrom(spec, value, { unit: shown, picked: false })
      // A link shows the units of whoever made it.
      const field =
        asWritten.textUnit === shown ? asWritten : { ...asWritten, unit: asWritten.textUnit, picked: true }
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
        `The address holds ${query.length} characters after the question mark; at most ${LONGEST_QUERY} are read, so none were.`,
      ],
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
      problems.push(`${quote(key)} stands in the address more than once; the first was taken.`)
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
  const more = problems.length - MOST_PROBLEMS
  return {
    state,
    problems:
      more > 0 ? [...problems.slice(0, MOST_PROBLEMS), `And ${more} more that could not be used.`] : problems,
  }
}

function columnKeys(calculator: Calculator): Set<string> {
  const tables = Object.values(tablesOf(calculator))
  return new Set(tables.flatMap((spec) => Object.values(spec.columns).map((column) => column.id)))
}

/** All columns of a table in which anything differs from the start, so that they are read as equally long. */
function tableDifferences(start: TableState | undefined, table: TableState): [string, string][] {
  const columns = Object.entries(table.spec.columns)
  const texts = columns.map(([column, { id }]) => [id, columnText(portableCells(table, column))] as const)
  const before = columns.map(([column]) => start && columnText(portableCells(start, column)))
  const changed = texts.some(([, text], at) => text !== before[at])
  const units = columns.flatMap(([column, { id }]): [string, string][] => {
    const shown = table.units[column]
    return shown?.picked ? [[`${id}.unit`, shown.unit]] : []
  })
  return [...(changed ? texts.map(([id, text]): [string, string] => [id, text]) : []), ...units]
}

/** What differs from the start, as keys (without prefix) and values. */
function differences(start: FormState, state: FormState): [string, string][] {
  const entries: [string, string][] = []
  for (const [id, field] of Object.entries(state.fields)) {
    const before = start.fields[id]
    const text = portableText(field)
    const changed = before === undefined || text !== portableText(before)
    if (changed) entries.push([id, text])
    // The numbers in an expression may be meant in the field's unit, which therefore goes along.
    if (changed && !isBare(field)) entries.push([`${id}.unit`, field.textUnit])
    else if (field.picked && field.unit !== field.textUnit) entries.push([`${id}.unit`, field.unit])
  }
  for (const [id, value] of Object.entries(state.choices)) {
    if (value !== start.choices[id]) entries.push([id, value])
  }
  for (const [id, table] of Object.entries(state.tables))
    entries.push(...tableDifferences(start.tables[id], table))
  for (const [id, unit] of Object.entries(state.outputUnits)) entries.push([`${id}.unit`, unit])
  return entries.length === 0 ? [] : [[VERSION_KEY, VERSION], ...entries]
}

/** The page's query string with this calculator's part brought up to date; other parts stay. */
export function writeAddress(
  calculator: Calculator,
  specs: FieldSpecs,
  start: FormState,
  state: FormState,
  query: string,
  place: Place,
): string {
  const known = readers(calculator, specs, start)
  const parameters = new URLSearchParams(query.length > LONGEST_QUERY ? '' : query)
  for (const fullKey of Array.from(parameters.keys())) {
    const key = ownKey(fullKey, place)
    if (key !== undefined && known.has(key)) parameters.delete(fullKey)
  }
  for (const [key, value] of differences(start, state)) {
    parameters.append(place.alone ? key : `${place.prefix}${key}`, value)
  }
  return parameters.toString()
}
