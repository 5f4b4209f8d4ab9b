import { STANDARD_ATMOSPHERE } from '../../calculators/quantity/convert.ts'
import { kinds, kindOf } from '../../calculators/quantity/kinds.ts'
import { readPlain } from '../../calculators/quantity/read.ts'
import type { KindId, QuantityReading, UnitSystem } from '../../calculators/quantity/types.ts'
import { unitsOffered } from './conversions.ts'

export interface Entry {
  /** As typed, kept to the letter. */
  readonly text: string
  /** Unit of a number that carries none. */
  readonly unit: string
  readonly reading: QuantityReading | 'waiting'
}

export interface ConverterState {
  readonly system: UnitSystem
  readonly kind: KindId
  readonly value: Entry
  /** Pressure of the air, for the step between gauge and absolute. */
  readonly barometer: Entry
  /** The person chose the unit, so that it no longer follows the unit system. */
  readonly picked: boolean
}

export type EntryName = 'value' | 'barometer'

export type ConverterAction =
  | { readonly type: 'kind'; readonly kind: KindId }
  | { readonly type: 'type'; readonly entry: EntryName; readonly text: string }
  | { readonly type: 'unit'; readonly unit: string }
  | {
      readonly type: 'read'
      readonly entry: EntryName
      readonly of: Entry
      readonly reading: QuantityReading
    }
  | { readonly type: 'follow'; readonly system: UnitSystem }
  | { readonly type: 'restore'; readonly state: ConverterState }

export const BAROMETER_KIND: KindId = 'absolutePressure'

/** An entry with what its text says, as far as that can be told at once. */
export function entryOf(text: string, kind: KindId, unit: string): Entry {
  const reading = readPlain(text, kind, unit)
  return { text, unit, reading: reading.ok === 'expression' ? 'waiting' : reading }
}

export function isKind(text: string): text is KindId {
  return Object.hasOwn(kinds, text)
}

const usualUnit = (kind: KindId, system: UnitSystem): string => kindOf(kind).preferred[system]

const standardBarometer = (): Entry => entryOf(String(STANDARD_ATMOSPHERE / 1000), BAROMETER_KIND, 'kPa')

/** The converter before anybody has touched it: 45 psi on a gauge, whatever the unit system. */
export function startState(system: UnitSystem): ConverterState {
  const kind: KindId = 'gaugePressure'
  return {
    system,
    kind,
    value: entryOf('45', kind, 'psi'),
    barometer: standardBarometer(),
    picked: true,
  }
}

export const entryKind = (state: ConverterState, entry: EntryName): KindId =>
  entry === 'value' ? state.kind : BAROMETER_KIND

/** The same text, meant in another unit if it carries none. */
function meantIn(state: ConverterState, unit: string, picked: boolean): ConverterState {
  return { ...state, value: entryOf(state.value.text, state.kind, unit), picked }
}

export function apply(state: ConverterState, action: ConverterAction): ConverterState {
  switch (action.type) {
    case 'kind':
      return meantIn({ ...state, kind: action.kind }, usualUnit(action.kind, state.system), false)
    case 'type': {
      const before = state[action.entry]
      return { ...state, [action.entry]: entryOf(action.text, entryKind(state, action.entry), before.unit) }
    }
    case 'unit':
      return unitsOffered(state.kind).includes(action.unit) ? meantIn(state, action.unit, true) : state
    case 'read': {
      const now = state[action.entry]
      // An answer to a text that has been overtyped since is dropped.
      const same = now.text === action.of.text && now.unit === action.of.unit && now.reading === 'waiting'
      return same ? { ...state, [action.entry]: { ...now, reading: action.reading } } : state
    }
    case 'follow': {
      const system = { ...state, system: action.system }
      return state.picked ? system : meantIn(system, usualUnit(state.kind, action.system), false)
    }
    case 'restore':
      return action.state
  }
}
