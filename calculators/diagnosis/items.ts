import type { CheckData } from '../checks/types.ts'
import { operatingStates, type OperatingState } from '../circuit/types.ts'
import { exhaustsInWords, readingInWords } from './in-words.ts'
import type { Knowledge, Observation, Signatures } from './types.ts'

interface Common {
  readonly observation: Observation
  /** What it is called, with the state: 'Return glass, priming'. */
  readonly label: string
}

export interface ReadingItem extends Common {
  readonly from: 'reading'
  readonly state: OperatingState
  /** Place among the readings of the state. */
  readonly place: number
  readonly value: number
  /** One standard deviation of the instrument. [SI] */
  readonly instrument: number
  /** One standard deviation among sound plants, a share of the value. */
  readonly spread: number
  /** From the least to the largest that any cause shows, and a little more. [SI] */
  readonly span: number
  /** Whether two causes together multiply its departures from health; else they add. */
  readonly multiplies: boolean
  /** Number of the cylinder whose it is. */
  readonly cylinder?: number
}

export interface GlassItem extends Common {
  readonly from: 'glass'
  readonly state: OperatingState
  readonly place: number
  /** What is there → the share of people who say what was said here. */
  readonly shares: Readonly<Record<string, number>>
  readonly count: number
}

export interface FeltItem extends Common {
  readonly from: 'felt'
  readonly state: OperatingState
  readonly place: number
  readonly passes: boolean
}

/** Something told or found, of which only the causes' names tell how likely it is. */
export interface NamedItem extends Common {
  readonly from: 'named'
  /** Share with these causes together; none are health. */
  readonly share: (faults: readonly string[]) => number
  readonly count: number
}

export type Item = ReadingItem | GlassItem | FeltItem | NamedItem

/** An accuracy is what an instrument may be off by at most: two standard deviations. Common practice. */
const DEVIATIONS_IN_ACCURACY = 2

/** Share of looks at a dirty or foreign glass that are told as something that nobody foresaw. */
const RARELY_SAID = 0.002

const titles: Readonly<Record<OperatingState, string>> = {
  priming: 'priming',
  idle: 'idle',
  part: 'part load',
  full: 'full load',
}

/** Shares of people who say this value, by what is there. */
export function saidShares(
  values: readonly string[],
  mistaken: Readonly<Record<string, Readonly<Record<string, number>>>>,
  said: string,
): Record<string, number> {
  return Object.fromEntries(
    values.map((there) => {
      const wrong = mistaken[there] ?? {}
      const right = 1 - Object.values(wrong).reduce((sum, share) => sum + share, 0)
      return [there, Math.max(RARELY_SAID, said === there ? right : (wrong[said] ?? 0))]
    }),
  )
}

const spans = new WeakMap<Signatures, Map<string, readonly [number, number]>>()

/** From the least to the largest that health or any cause shows. */
export function spanOf(
  { signatures }: Knowledge,
  state: OperatingState,
  place: number,
): readonly [number, number] {
  const known = spans.get(signatures) ?? new Map<string, readonly [number, number]>()
  spans.set(signatures, known)
  const key = `${state} ${place}`
  const span = known.get(key) ?? findSpan(signatures, state, place)
  known.set(key, span)
  return span
}

function findSpan(signatures: Signatures, state: OperatingState, place: number): [number, number] {
  let least = signatures.states[state].health.readings[place] ?? 0
  let largest = least
  for (const fault of Object.values(signatures.faults))
    for (const shown of fault[state]) {
      const value = shown.readings[place] ?? least
      if (value < least) least = value
      if (value > largest) largest = value
    }
  return [least, largest]
}

/** The cylinder that a reading is of: 'exhaust-7' → 7. */
const cylinderOf = (id: string): number | undefined => {
  const number = /^exhaust-(\d+)$/.exec(id)?.[1]
  return number === undefined ? undefined : Number(number)
}

/** The observable of an id: exhaust temperatures share one. */
export const observableId = (id: string): string => (cylinderOf(id) === undefined ? id : 'exhaust-*')

/** Standard deviation of the instrument, of sound plants and the span of all causes, for one reading of a state. */
export function measureOf(knowledge: Knowledge, state: OperatingState, place: number) {
  const key = knowledge.signatures.states[state].readings[place]
  const observable = knowledge.observables[observableId(key?.id ?? '')]
  const [least, largest] = spanOf(knowledge, state, place)
  const accuracy = key?.accuracy ?? 0
  return {
    instrument: accuracy / DEVIATIONS_IN_ACCURACY,
    spread: observable?.from === 'reading' ? observable.spread : 0,
    span: largest - least + 10 * accuracy,
  }
}

function readingItem(
  knowledge: Knowledge,
  observation: Observation,
  state: OperatingState,
): ReadingItem | undefined {
  const readings = knowledge.signatures.states[state].readings
  const place = readings.findIndex(({ id }) => id === observation.id)
  if (place < 0 || typeof observation.value !== 'number') return undefined
  const cylinder = cylinderOf(observation.id)
  const observable = knowledge.observables[observableId(observation.id)]
  return {
    from: 'reading',
    observation,
    label: `${readings[place]?.label ?? observation.id}, ${titles[state]}`,
    state,
    place,
    value: observation.value,
    ...measureOf(knowledge, state, place),
    multiplies: observable?.from === 'reading' && observable.together === 'multiply',
    ...(cylinder === undefined ? {} : { cylinder }),
  }
}

/** A gauge or all exhausts, told in words: what the model shows of it, with the severity marginalised. */
function wordItem(knowledge: Knowledge, observation: Observation, state: OperatingState): Item | undefined {
  const { signatures, observables, weights } = knowledge
  const readings = signatures.states[state].readings
  const exhausts = observables[observation.id]?.from === 'exhausts'
  const places = readings.flatMap(({ id }, place) =>
    (exhausts ? cylinderOf(id) !== undefined : id === observation.id) ? [place] : [],
  )
  const [place] = places
  const words: readonly string[] = exhausts ? ['colder', 'alike', 'hotter'] : ['lower', 'usual', 'higher']
  const word = words.indexOf(String(observation.value))
  if (place === undefined || word < 0) return undefined
  const measure = measureOf(knowledge, state, place)
  const shares = exhausts
    ? exhaustsInWords(signatures, state, places, measure, weights.misread)
    : readingInWords(signatures, state, place, measure, weights.misread)
  const label = exhausts ? observables[observation.id]?.label : readings[place]?.label
  return {
    from: 'named',
    observation,
    label: `${label ?? observation.id}, ${titles[state]}`,
    share: (faults) => shares(faults)[word] ?? 0,
    count: words.length,
  }
}

function checkItem(knowledge: Knowledge, observation: Observation): Item | undefined {
  const { id, state, value } = observation
  const check = knowledge.checks.find((one) => one.id === id)
  if (!check) return undefined
  const [part] = check.feels
  if (part !== undefined && state !== undefined)
    return {
      from: 'felt',
      observation,
      label: `${check.label}, ${titles[state]}`,
      state,
      place: knowledge.signatures.felt.indexOf(part),
      passes: value === 'passes',
    }
  return {
    from: 'named',
    observation,
    label: check.label,
    share: (faults) => findShare(knowledge, check, String(value), faults),
    count: check.finds.length + 1,
  }
}

/** Which of a check's finds was told, from 0; none where nothing was found, or no find was told. */
export function placeOfFind(value: Observation['value']): number | undefined {
  const number = /^find-(\d+)$/.exec(String(value))?.[1]
  return number === undefined ? undefined : Number(number) - 1
}

/** Share of inspections that say this find, where these causes are there. */
export function findShare(
  { weights }: Knowledge,
  { finds }: CheckData,
  value: string,
  faults: readonly string[],
): number {
  const there = finds.map((find) => find.faults.some((fault) => faults.includes(fault)))
  const right = there.filter(Boolean).length
  const { finds: found, falseAlarm } = weights.inspection
  if (value === 'nothing') return right > 0 ? 1 - found - falseAlarm : 1 - falseAlarm
  if (there[placeOfFind(value) ?? -1]) return found / right
  return falseAlarm / Math.max(1, finds.length - right)
}

function toldItem({ observables, told }: Knowledge, observation: Observation): NamedItem | undefined {
  const observable = observables[observation.id]
  const shares = told[observation.id]
  if (observable?.from !== 'told' || !shares) return undefined
  const value = String(observation.value)
  const otherwise = shares.otherwise[value] ?? 0
  return {
    from: 'named',
    observation,
    label: observable.label,
    // Two causes that both touch it each shift it by their own factor.
    share: (faults) =>
      Math.min(
        1,
        faults.reduce((share, fault) => {
          const given = shares.given.find((one) => one.faults.includes(fault))
          return given ? (share * (given.shares[value] ?? 0)) / otherwise : share
        }, otherwise),
      ),
    count: Object.keys(observable.values).length,
  }
}

/**
 * What a person told, ready to be held against causes.
 * @param knowledge of the circuit
 * @param observation that was made
 * @returns the item; undefined where the circuit cannot show it
 */
export function itemOf(knowledge: Knowledge, observation: Observation): Item | undefined {
  const { signatures, observables } = knowledge
  const { id, state, value } = observation
  const observable = observables[observableId(id)]
  if (observable?.from === 'told') return toldItem(knowledge, observation)
  if (observable === undefined) return checkItem(knowledge, observation)
  if (state === undefined) return undefined
  if (observable.from === 'exhausts' || (observable.from === 'reading' && typeof value === 'string'))
    return wordItem(knowledge, observation, state)
  if (observable.from === 'reading') return readingItem(knowledge, observation, state)
  const place = signatures.glasses.indexOf(id)
  if (place < 0) return undefined
  const values = Object.keys(observable.values)
  return {
    from: 'glass',
    observation,
    label: `${observable.label}, ${titles[state]}`,
    state,
    place,
    shares: saidShares(values, observable.mistaken, String(value)),
    count: values.length,
  }
}

/**
 * The states of the plant in which anything was seen, read or felt.
 * @param items that were told
 * @returns at least one: all of them where nothing was looked at
 */
export function statesOf(items: readonly Item[]): readonly OperatingState[] {
  const looked = operatingStates.filter((state) =>
    items.some((item) => item.from !== 'named' && item.state === state),
  )
  return looked.length > 0 ? looked : operatingStates
}
