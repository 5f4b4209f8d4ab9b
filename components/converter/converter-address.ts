import { plainText, readNumber } from '../../calculators/quantity/number.ts'
import { kinds } from '../../calculators/quantity/kinds.ts'
import type { UnitSystem } from '../../calculators/quantity/types.ts'
import { clean, quote, siteKeys } from '../calculator/address-entries.ts'
import { unitsOffered } from './conversions.ts'
import { BAROMETER_KIND, entryOf, isKind, startState } from './converter-state.ts'
import type { ConverterState, Entry } from './converter-state.ts'

/** Form of the address. A link made today must be read rightly by every later edition. */
const VERSION = '1'
const LONGEST_QUERY = 2000
const LONGEST_TEXT = 200
const KEYS = ['v', 'kind', 'value', 'unit', 'barometer'] as const
export interface AddressReading {
  readonly state: ConverterState
  /** One sentence for each thing that could not be used; plain text. */
  readonly problems: readonly string[]
}

/** What the page's query string says, and what of it could not be used. */
export function readAddress(query: string, system: UnitSystem): AddressReading {
  const start = startState(system)
  if (query.length > LONGEST_QUERY) {
    const problem = `The address holds ${query.length} characters after the question mark; accepted: at most ${LONGEST_QUERY}. None of it was used.`
    return { state: start, problems: [problem] }
  }
  const given = new URLSearchParams(query)
  const problems: string[] = []
  for (const key of new Set(given.keys()))
    if (!KEYS.some((known) => known === key) && !siteKeys.has(key))
      problems.push(`Read ${quote(key)}, which means nothing here; accepted: ${KEYS.slice(1).join(', ')}.`)
  const text = (key: string): string | undefined => {
    const value = given.get(key)
    if (value === null) return undefined
    if (value.length <= LONGEST_TEXT) return clean(value)
    problems.push(`${quote(key)}: read ${value.length} characters; accepted: at most ${LONGEST_TEXT}.`)
    return undefined
  }
  const version = text('v')
  if (version !== undefined && version !== VERSION)
    problems.push(
      `The address says it is of form ${quote(version)}; this edition reads form ${VERSION}. Check the value.`,
    )
  let { kind } = start
  const wantedKind = text('kind')
  if (wantedKind !== undefined) {
    if (isKind(wantedKind)) kind = wantedKind
    else problems.push(`Kind: read ${quote(wantedKind)}; accepted: ${Object.keys(kinds).join(', ')}.`)
  }
  const wantedUnit = text('unit')
  const wantedValue = text('value')
  const asAtStart = kind === start.kind && wantedValue === undefined
  let unit = asAtStart ? start.value.unit : kinds[kind].preferred[system]
  let picked = asAtStart
  if (wantedUnit !== undefined && unitsOffered(kind).includes(wantedUnit)) {
    unit = wantedUnit
    picked = true
  } else if (wantedUnit !== undefined)
    problems.push(`Unit: read ${quote(wantedUnit)}; accepted: ${unitsOffered(kind).join(', ')}.`)
  const value = entryOf(wantedValue ?? start.value.text, kind, unit)
  const barometerText = text('barometer')
  const barometer =
    barometerText === undefined
      ? start.barometer
      : entryOf(barometerText, BAROMETER_KIND, start.barometer.unit)
  return { state: { ...start, kind, value, barometer, picked }, problems: problems.slice(0, 5) }
}

/** Whether the text needs its unit beside it to mean the same elsewhere. */
function needsUnit({ text }: Entry): boolean {
  const number = readNumber(plainText(text))
  return !(number.ok === true && number.rest !== '')
}

/** The page's query string with this state in it; empty at the start. Other parts' keys stay. */
export function writeAddress(state: ConverterState, query: string): string {
  const start = startState(state.system)
  const parameters = new URLSearchParams(query.length > LONGEST_QUERY ? '' : query)
  for (const key of KEYS) parameters.delete(key)
  const entries: [string, string][] = []
  if (state.kind !== start.kind) entries.push(['kind', state.kind])
  const { text, unit } = state.value
  if (state.kind !== start.kind || text !== start.value.text || unit !== start.value.unit) {
    entries.push(['value', state.value.text])
    if (needsUnit(state.value)) entries.push(['unit', state.value.unit])
  }
  if (state.barometer.text !== start.barometer.text) entries.push(['barometer', state.barometer.text])
  if (entries.length > 0) parameters.append('v', VERSION)
  for (const [key, value] of entries) parameters.append(key, value)
  return parameters.toString()
}
