import type { OperatingState } from '../circuit/types.ts'
import type { Item, NamedItem } from './items.ts'
import {
  expectationOf,
  likelihoodOf,
  likelihoodOfBoth,
  nodesOf,
  predictFault,
  predictHealth,
  type Expectation,
  type Prediction,
} from './predict.ts'
import type { Knowledge } from './types.ts'

/** How well one cause, or two, or none account for what was observed, with the severity marginalised. */
export interface Explanation {
  readonly faults: readonly string[]
  readonly logLikelihood: number
  /** Expected likelihood of each item, over the severities that are left. */
  readonly perItem: readonly number[]
  /** Predictions with the weight that what was observed leaves them; none for two causes. */
  readonly predictions: readonly { readonly prediction: Prediction; readonly weight: number }[]
  /** Cylinder at which it sits most likely; for faults of a single cylinder with exhaust temperatures given. */
  readonly cylinder?: number
}

/** Parts of each step between two severities: for one cause, and for each of two. */
const PARTS = 4
const PARTS_AT_EACH_CYLINDER = 2
const PARTS_OF_PAIR = 1

/** Logarithms: what is so far below the best is left out of sums. */
const FAR_BELOW = 16
const CHECKED_EVERY = 3

/** Below this share a row does not show in a sum any more. */
const WEIGHS_NOTHING = 1e-12

/** Far above the smallest number there is. */
const LEAST_PRODUCT = 1e-200

/** A weight below this share tells nothing any more. */
const NEGLIGIBLE = 0.002

/** The most that the items behind each one can add to a logarithm. */
function mostBehind(items: readonly Item[]): number[] {
  let sum = 0
  return items
    .toReversed()
    .map((item) => {
      const behind = sum
      // A reading is likeliest at its mean, with no other doubt than its instrument's; all others are shares.
      if (item.from === 'reading')
        sum += Math.log(1 / (item.instrument * Math.sqrt(2 * Math.PI)) + 1 / item.span)
      return behind
    })
    .toReversed()
}

/** Likelihood of each item, over the rows by their weights; what weighs nothing is passed over. */
function expectedLikelihoods(likelihoods: Float64Array, weights: readonly number[], wide: number): number[] {
  const sums = Array.from({ length: wide }, () => 0)
  weights.forEach((weight, row) => {
    if (weight < WEIGHS_NOTHING) return
    for (let column = 0; column < wide; column++)
      sums[column] = (sums[column] ?? 0) + weight * (likelihoods[row * wide + column] ?? 0)
  })
  return sums
}

/** Weighs severities against one another by what was observed. */
function weigh(
  faults: readonly string[],
  count: number,
  likelihoodAt: (row: number, column: number) => number,
  items: readonly Item[],
  least = -Infinity,
) {
  const wide = items.length
  const likelihoods = new Float64Array(count * wide)
  // What hangs on names alone is the same at every severity.
  const named = items.map((item) => (item.from === 'named' ? item.share(faults) : undefined))
  const logs = new Float64Array(count)
  const most = mostBehind(items)
  // What lies far below the best so far shows in no sum: it is given up as soon as nothing can bring it back.
  let best = least
  for (let row = 0; row < count; row++) {
    let log = 0
    // A logarithm for every few factors, before their product gets too small for a number.
    let product = 1
    for (let column = 0; column < wide; column++) {
      const likelihood = named[column] ?? likelihoodAt(row, column)
      likelihoods[row * wide + column] = likelihood
      product *= likelihood
      if (column % CHECKED_EVERY === 0 && log + Math.log(product) + (most[column] ?? 0) < best - FAR_BELOW) {
        product = 0
        break
      }
      if (product < LEAST_PRODUCT || product > 1 / LEAST_PRODUCT) {
        log += Math.log(product)
        product = 1
      }
    }
    const whole = log + Math.log(product)
    logs[row] = whole
    best = Math.max(best, whole)
  }
  const shares = Array.from(logs, (log) => Math.exp(log - best))
  const sum = shares.reduce((total, share) => total + share, 0)
  const weights = shares.map((share) => share / sum)
  return {
    faults,
    logLikelihood: best + Math.log(sum / count),
    weights,
    perItem: expectedLikelihoods(likelihoods, weights, wide),
  }
}

function explanation(
  faults: readonly string[],
  predictions: readonly Prediction[],
  items: readonly Item[],
  misread: number,
): Explanation & { readonly weights: readonly number[] } {
  const likelihoodAt = (row: number, column: number): number => {
    const item = items[column] as Exclude<Item, NamedItem>
    return likelihoodOf(item, expectationOf(item, predictions[row] as Prediction), misread)
  }
  const found = weigh(faults, predictions.length, likelihoodAt, items)
  return {
    ...found,
    predictions: predictions.flatMap((prediction, row) => {
      const weight = found.weights[row] ?? 0
      return weight > NEGLIGIBLE ? [{ prediction, weight }] : []
    }),
  }
}

/**
 * Health as an explanation of its own.
 * @param knowledge of the circuit
 * @param items that were observed
 */
export function explainByHealth({ signatures, weights }: Knowledge, items: readonly Item[]): Explanation {
  return explanation([], [predictHealth(signatures)], items, weights.misread)
}

/** Which place shows what this place would, were the fault at another cylinder than that of the data. */
function swapCylinders({ signatures }: Knowledge, one: number, other: number) {
  const places = new Map<OperatingState, readonly [number, number]>()
  return (state: OperatingState, place: number): number => {
    let pair = places.get(state)
    if (!pair) {
      const find = (cylinder: number) =>
        signatures.states[state].readings.findIndex(({ id }) => id === `exhaust-${cylinder}`)
      pair = [find(one), find(other)]
      places.set(state, pair)
    }
    const [first, second] = pair
    return place === first ? second : place === second ? first : place
  }
}

/**
 * A single cause, at every severity, and at every cylinder where it is one cylinder's.
 * @param knowledge of the circuit
 * @param fault its id
 * @param items that were observed
 */
export function explainByOne(knowledge: Knowledge, fault: string, items: readonly Item[]): Explanation {
  const { signatures, weights } = knowledge
  const own = signatures.atCylinder[fault]
  const told = items.some((item) => item.from === 'reading' && item.cylinder !== undefined)
  const everywhere = own === undefined || !told
  const nodes = nodesOf(signatures.severities.length, everywhere ? PARTS : PARTS_AT_EACH_CYLINDER)
  if (everywhere) {
    const predictions = nodes.map((node) => predictFault(signatures, fault, node))
    return explanation([fault], predictions, items, weights.misread)
  }
  const cylinders = Array.from({ length: signatures.cylinders }, (_, index) => index + 1)
  const swaps = cylinders.map((cylinder) => swapCylinders(knowledge, own, cylinder))
  const predictions = swaps.flatMap((swap) =>
    nodes.map((node) => predictFault(signatures, fault, node, swap)),
  )
  const found = explanation([fault], predictions, items, weights.misread)
  const perCylinder = cylinders.map((_, index) =>
    found.weights
      .slice(index * nodes.length, (index + 1) * nodes.length)
      .reduce((sum, weight) => sum + weight, 0),
  )
  const largest = Math.max(...perCylinder)
  return largest > 0.5 ? { ...found, cylinder: perCylinder.indexOf(largest) + 1 } : found
}

/** What one cause of a pair lets one expect, at each tenth of its severities. */
export type Expected = readonly (readonly Expectation[])[]

/**
 * What a cause lets one expect of what was observed; one of a single cylinder at the most likely one.
 * @param knowledge of the circuit
 * @param alone the cause, explained alone
 * @param items that were observed
 */
export function expectedOf(knowledge: Knowledge, alone: Explanation, items: readonly Item[]): Expected {
  const { signatures } = knowledge
  const {
    faults: [fault = ''],
    cylinder,
  } = alone
  const own = signatures.atCylinder[fault]
  const swap =
    own !== undefined && cylinder !== undefined ? swapCylinders(knowledge, own, cylinder) : undefined
  return nodesOf(signatures.severities.length, PARTS_OF_PAIR).map((node) => {
    const prediction = predictFault(signatures, fault, node, swap)
    return items.map((item) => expectationOf(item, prediction))
  })
}

/** A cause of a pair. */
export interface Partner {
  readonly alone: Explanation
  readonly expected: Expected
}

/**
 * Two causes together.
 * @param knowledge of the circuit
 * @param one of them
 * @param other of them
 * @param items that were observed
 * @param every so many tenths of each severity are tried: 1, or 2 to find out quickly whether it is worth it
 * @param least logarithm of a likelihood far below which it need not be known
 */
export function explainByTwo(
  knowledge: Knowledge,
  one: Partner,
  other: Partner,
  items: readonly Item[],
  every: 1 | 2,
  least = -Infinity,
): Explanation {
  const { signatures, weights } = knowledge
  const health = predictHealth(signatures)
  const sound = items.map((item) => expectationOf(item, health))
  const some = (expected: Expected): Expected => expected.filter((_, place) => place % every === every - 1)
  const first = some(one.expected)
  const second = some(other.expected)
  const together = (row: number, column: number): number =>
    likelihoodOfBoth(
      items[column] as Exclude<Item, NamedItem>,
      sound[column] as Expectation,
      first[Math.floor(row / second.length)]?.[column] as Expectation,
      second[row % second.length]?.[column] as Expectation,
      weights.misread,
    )
  const faults = [...one.alone.faults, ...other.alone.faults]
  return { ...weigh(faults, first.length * second.length, together, items, least), predictions: [] }
}
