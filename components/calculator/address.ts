import type { Calculator } from '../../calculators/calculator/types.ts'
import { fieldFrom, isBare, meantIn, portableText } from './state.ts'
import type { FormState } from './state.ts'
import { offeredUnits } from './fields.ts'
import type { FieldSpecs } from './fields.ts'

/** Form of the address. A link made today must be read rightly by every later edition. */
const VERSION = '1'
const VERSION_KEY = 'v'

/** Longer than any link the form can write, short enough that nothing on the page has to cope with more. */
const LONGEST_QUERY = 4000
export const LONGEST_TEXT = 200
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

function readers(calculator: Calculator, specs: FieldSpecs): Map<string, Reader> {
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
  const known = readers(calculator, specs)
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
        `Read ${quote(fullKey)}, which is no input here; accepted: ${[...known.keys()].filter((id) => !id.includes('.')).join(', ')}.`,
      )
    } else if (seen.has(key)) {
      problems.push(`${quote(key)} stands in the address more than once; the first was taken.`)
    } else {
      seen.add(key)
      const tooLong = value.length > LONGEST_TEXT
      if (tooLong) {
        problems.push(
          `${quote(key)}: read ${value.length} characters; accepted: at most ${LONGEST_TEXT}. It was left empty.`,
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
  const known = readers(calculator, specs)
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
