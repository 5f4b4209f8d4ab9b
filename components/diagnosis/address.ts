import { clean, quote, readEntries, siteEntries } from '../calculator/address-entries.ts'
import type { FieldSpecs } from '../calculator/fields.ts'
import { fieldFrom, portableText, type QuantityField } from '../calculator/state.ts'
import { plantStates } from '../../calculators/checks/types.ts'
import type { UnitSystem } from '../../calculators/quantity/types.ts'
import { isPlantState, LONGEST_NOTE, OTHER, startState, type FinderState } from './finder-state.ts'
import { askedOf } from './keys.ts'
import type { FinderOffer } from './types.ts'

/** Form of the address. A link made today must be read rightly by every later edition. */
const VERSION = 1

/** Longer than any address the page can write, short enough that nothing has to cope with more. */
const LONGEST_QUERY = 8000
const LONGEST_TEXT = 200

/** Key by which the address names the circuit; it is read before the form is there. */
export const CIRCUIT_KEY = 'circuit'

export interface AddressReading {
  readonly state: FinderState
  /** A sentence for each thing that could not be used. */
  readonly problems: readonly string[]
}

interface Reader {
  readonly offer: FinderOffer
  readonly specs: FieldSpecs
}

/** The state with one entry of the address in it, or a sentence that says why not. */
function readEntry(
  { offer, specs }: Reader,
  before: FinderState,
  key: string,
  value: string,
): FinderState | string {
  switch (key) {
    case 'v': {
      const version = Number(value)
      if (Number.isInteger(version) && version > 0 && version <= VERSION) return before
      return `The address is of form ${quote(value)}; this edition reads form ${VERSION}. What it says that is unknown here was left out: check every answer.`
    }
    case CIRCUIT_KEY:
      return value === offer.circuit
        ? before
        : `Circuit: read ${quote(value)}, which is none of this handbook; ${offer.title} is shown.`
    case 'now':
      return isPlantState(value)
        ? { ...before, now: value }
        : `State of the plant now: read ${quote(value)}; accepted: ${plantStates.join(', ')}.`
    case 'from':
      return Object.hasOwn(offer.starts, value)
        ? { ...before, from: value }
        : `Symptom to start from: read ${quote(value)}, which is no symptom that this circuit can start from.`
    case 'skip':
      return {
        ...before,
        skipped: value.split(' ').filter((check) => offer.checks.some(({ id }) => id === check)),
      }
    case 'sure':
      return { ...before, sure: value.split(' ').filter((one) => Object.hasOwn(specs, one)) }
    case 'found':
      return value === OTHER || offer.causes.some(({ id }) => id === value)
        ? { ...before, found: value }
        : `What was found: read ${quote(value)}, which is no cause of this circuit, or no longer by this name.`
    case 'note':
      return { ...before, note: clean(value).slice(0, LONGEST_NOTE) }
    default:
      return readAnswer({ offer, specs }, before, key, value)
  }
}

function readAnswer(
  { offer, specs }: Reader,
  before: FinderState,
  key: string,
  value: string,
): FinderState | string {
  const asked = askedOf(offer.questions).get(key)
  const spec = specs[key]
  if (asked === undefined && spec === undefined)
    return `Read ${quote(key)}, which cannot be told of this circuit, or no longer by this name. It was left out.`
  const label = asked?.question.label ?? spec?.label ?? key
  const values = asked?.question.values ?? {}
  if (Object.hasOwn(values, value)) return { ...before, said: { ...before.said, [key]: value } }
  if (spec === undefined)
    return `${label}: read ${quote(value)}; accepted: ${Object.keys(values).join(', ')}. It was left as not looked at.`
  if (value.length > LONGEST_TEXT)
    return `${label}: read ${value.length} characters; accepted: at most ${LONGEST_TEXT}. It was left empty.`
  const usual = before.gauges.fields[key]?.unit ?? spec.usualUnit
  const field = fieldFrom(spec, clean(value), { unit: usual, picked: false })
  // A link shows the units of whoever made it.
  const shown: QuantityField =
    field.textUnit === usual ? field : { ...field, unit: field.textUnit, picked: true }
  return {
    ...before,
    gauges: { ...before.gauges, fields: { ...before.gauges.fields, [key]: shown } },
  }
}

/**
 * What an address says. What cannot be used is named and left as not looked at: a link of an older edition, or one that
 * somebody changed by hand, still opens with the rest.
 * @param query the part of the address behind the question mark
 */
export function readAddress(
  offer: FinderOffer,
  specs: FieldSpecs,
  query: string,
  system: UnitSystem,
): AddressReading {
  return readEntries(query, LONGEST_QUERY, startState(specs, system), (before, key, value) =>
    readEntry({ offer, specs }, before, key, value),
  )
}

/** What the address says of a state: nothing for the form as it starts. */
function entriesOf(offer: FinderOffer, state: FinderState): [string, string][] {
  const keys = new Set([...askedOf(offer.questions).keys(), ...Object.keys(state.gauges.fields)])
  const answers = [...keys].flatMap((key): [string, string][] => {
    const value = state.said[key]
    if (value !== undefined) return [[key, value]]
    const field = state.gauges.fields[key]
    return field === undefined || field.text.trim() === '' ? [] : [[key, portableText(field)]]
  })
  const others: readonly (readonly [string, string])[] = [
    ['now', state.now === 'stopped' ? '' : state.now],
    ['from', state.from],
    ...answers,
    ['sure', state.sure.join(' ')],
    ['skip', state.skipped.join(' ')],
    ['found', state.found],
    ['note', state.note],
  ]
  return others.flatMap(([key, value]): [string, string][] => (value === '' ? [] : [[key, value]]))
}

/**
 * The query string that describes a state.
 * @param usual id of the circuit that needs no naming
 * @param query the page's own, of which the keys of other parts of the site are kept
 */
export function writeAddress(offer: FinderOffer, state: FinderState, usual: string, query = ''): string {
  const parameters = siteEntries(query, LONGEST_QUERY)
  const entries = entriesOf(offer, state)
  const other = offer.circuit !== usual
  if (entries.length > 0 || other) parameters.append('v', String(VERSION))
  if (other) parameters.append(CIRCUIT_KEY, offer.circuit)
  for (const [key, value] of entries) parameters.append(key, value)
  return parameters.toString()
}
