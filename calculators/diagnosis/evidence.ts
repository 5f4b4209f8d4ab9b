import { severitiesOf, togetherOf } from './both.ts'
import { itemOf, type Item } from './items.ts'
import { likelihoodOf } from './predict.ts'
import type { Partner, Rows } from './rows.ts'
import type { Knowledge, Observation } from './types.ts'

/** Numbers in a row somewhere in a longer array. */
export interface Stretch {
  readonly data: Float64Array
  readonly from: number
}

/** What one observation says of causes; each is reckoned once and kept. */
export interface Evidence {
  readonly item: Item
  /** The most that its likelihood can be. */
  readonly most: number
  /** Logarithm of its likelihood in each row of the single causes. */
  readonly ofSingles: (rows: Rows) => Float64Array
  /** Likelihood for every other severity of two causes, those of the second running faster, as a share of the most. */
  readonly atAGlance: (one: Partner, other: Partner) => Stretch
  /** Logarithm of the likelihood for all severities of two causes. */
  readonly ofPair: (one: Partner, other: Partner) => Float64Array
}

/** Observations that are kept: more than a person makes, and few enough for a telephone. */
const KEPT = 100

/** More than a circuit has causes at cylinders. */
const MOST_PARTNERS = 4096

/** Pairs in one array: small ones are slow to make. */
const PAIRS_IN_ARRAY = 64

function ofSingles({ weights }: Knowledge, item: Item, { predictions, causes }: Rows): Float64Array {
  const column = new Float64Array(predictions.length)
  if (item.from === 'named') {
    column[0] = Math.log(item.share([]))
    for (const { fault, from, count } of causes)
      column.fill(Math.log(item.share([fault])), from, from + count)
    return column
  }
  predictions.forEach((prediction, row) => {
    column[row] = Math.log(likelihoodOf(item, prediction, weights.misread))
  })
  return column
}

/** A reading is likeliest at its mean, with no other doubt than its instrument's; all others are shares. */
const mostOf = (item: Item): number =>
  item.from === 'reading' ? 1 / (item.instrument * Math.sqrt(2 * Math.PI)) + 1 / item.span : 1

/** Keeps what a function of two causes gives. */
function remembered<Value>(make: (one: Partner, other: Partner) => Value) {
  const known = new Map<number, Value>()
  return (one: Partner, other: Partner): Value => {
    const key = MOST_PARTNERS * one.number + other.number
    const before = known.get(key)
    if (before !== undefined) return before
    const made = make(one, other)
    known.set(key, made)
    return made
  }
}

function evidenceOfItem(knowledge: Knowledge, item: Item): Evidence {
  const columns = new Map<Rows, Float64Array>()
  const together = togetherOf(knowledge, item)
  const most = mostOf(item)
  let data = new Float64Array(0)
  let filled = 0
  const stretch = (length: number): number => {
    if (filled + length > data.length) {
      data = new Float64Array(PAIRS_IN_ARRAY * length)
      filled = 0
    }
    filled += length
    return filled - length
  }
  return {
    item,
    most,
    ofSingles: (rows) => {
      const column = columns.get(rows) ?? ofSingles(knowledge, item, rows)
      columns.set(rows, column)
      return column
    },
    atAGlance: remembered((one, other) => {
      const length = severitiesOf(one, 2) * severitiesOf(other, 2)
      const from = stretch(length)
      together(one, other, 2, data, from)
      for (let row = from; row < from + length; row++) data[row] = (data[row] as number) / most
      return { data, from }
    }),
    ofPair: remembered((one, other) => {
      const column = new Float64Array(severitiesOf(one, 1) * severitiesOf(other, 1))
      together(one, other, 1, column, 0)
      return column.map(Math.log)
    }),
  }
}

const kept = new WeakMap<Knowledge, Map<string, Evidence | undefined>>()

/** The same for the same observation. */
const keyOf = ({ id, state, value }: Observation): string => `${id} ${state ?? ''} ${value}`

/**
 * What a person told, ready to be held against causes.
 * @param knowledge of the circuit
 * @param observations that were made; what the circuit cannot show is passed over
 * @returns one for each, in an order that does not hang on the order in which they were told, so that the same answers
 * give the same shares to the last digit
 */
export function evidenceOf(knowledge: Knowledge, observations: readonly Observation[]): Evidence[] {
  const known = kept.get(knowledge) ?? new Map<string, Evidence | undefined>()
  kept.set(knowledge, known)
  const ordered = observations
    .map((observation) => ({ observation, key: keyOf(observation) }))
    .toSorted((a, b) => (a.key < b.key ? -1 : 1))
  const evidence = ordered.flatMap(({ observation, key }) => {
    if (!known.has(key)) {
      const item = itemOf(knowledge, observation)
      known.set(key, item && evidenceOfItem(knowledge, item))
    }
    const found = known.get(key)
    // What was asked for last is forgotten last.
    known.delete(key)
    known.set(key, found)
    return found ?? []
  })
  for (const key of known.keys()) {
    if (known.size <= KEPT) break
    known.delete(key)
  }
  return evidence
}
