import type { OperatingState } from '../circuit/types.ts'
import { normalTail } from '../statistics/normal.ts'
import { findShare, measureOf, observableId, saidShares } from './items.ts'
import { deviationOf, feltOf, FELT_RIGHT, looksOf, meanOf, type Prediction } from './predict.ts'
import type { Knowledge, KnownCheck } from './types.ts'

/** One thing that a check tells: shares of what it may say, with a cause at one severity. */
export interface Feature {
  readonly shares: (prediction: Prediction) => readonly number[]
  /** Whether the severity is all the same to it. */
  readonly byName: boolean
}

/** Into so many steps a reading is divided, alone or with another of the same check. */
const STEPS = 12
const STEPS_WITH_ANOTHER = 6

/** Of more readings than this, only how far the highest and the lowest stand off counts. */
const MANY = 2

/** Where the tail of the normal distribution is tabled: steps in one deviation, and how far out. */
const FINE = 64
const FARTHEST = 8

const tails: number[] = []

/** Upper tail, from a table made at its first use: enough for shares that are estimates. */
function tailOf(z: number): number {
  if (tails.length === 0)
    for (let place = 0; place <= 2 * FARTHEST * FINE; place++) tails.push(normalTail(place / FINE - FARTHEST))
  const place = Math.round((z + FARTHEST) * FINE)
  return tails[Math.min(Math.max(place, 0), tails.length - 1)] as number
}

function steps(mean: number, deviation: number, edges: readonly number[]): number[] {
  let above = 1
  const shares = edges.map((edge) => {
    const next = tailOf((edge - mean) / deviation)
    const share = above - next
    above = next
    return share
  })
  shares.push(above)
  return shares
}

/** Edges between steps, evenly over what the causes that are left may show. */
function edgesOf(means: readonly number[], deviation: number, count: number): number[] {
  const least = means.reduce((lowest, mean) => Math.min(lowest, mean), Infinity) - deviation
  const largest = means.reduce((highest, mean) => Math.max(highest, mean), -Infinity) + deviation
  return Array.from({ length: count - 1 }, (_, place) => least + ((largest - least) * (place + 1)) / count)
}

/** Of a few readings each, of many how far the highest and the lowest stand off the middle. */
function derived(means: readonly number[]): readonly number[] {
  if (means.length <= MANY) return means
  const sorted = means.toSorted((a, b) => a - b)
  const middle = sorted[Math.floor(sorted.length / 2)] ?? 0
  return [(sorted.at(-1) ?? 0) - middle, middle - (sorted[0] ?? 0)]
}

function readingFeature(
  knowledge: Knowledge,
  state: OperatingState,
  places: readonly number[],
  left: readonly Prediction[],
): Feature {
  const meansOf = (prediction: Prediction) => places.map((place) => meanOf(prediction, state, place))
  const all = left.map(meansOf)
  const standing = all.map(derived)
  const count = standing.some(({ length }) => length > 1) ? STEPS_WITH_ANOTHER : STEPS
  const axes = (standing[0] ?? []).map((_, index) => {
    const place = Math.min(index, places.length - 1)
    const typical = all.reduce((largest, means) => Math.max(largest, means[place] ?? 0), 0)
    const deviation = deviationOf(measureOf(knowledge, state, places[place] ?? 0), typical)
    const means = standing.map((one) => one[index] ?? 0)
    return { deviation, edges: edgesOf(means, deviation, count) }
  })
  return {
    byName: false,
    shares: (prediction) => {
      const own = derived(meansOf(prediction))
      return together(axes.map(({ deviation, edges }, index) => steps(own[index] ?? 0, deviation, edges)))
    },
  }
}

/** Shares of every joint outcome of things that are independent. */
export const together = (shares: readonly (readonly number[])[]): readonly number[] =>
  shares.reduce(
    (all, ones) => (all.length === 1 ? ones : all.flatMap((share) => ones.map((one) => share * one))),
    [1],
  )

function glassFeature(knowledge: Knowledge, state: OperatingState, id: string): Feature[] {
  const observable = knowledge.observables[id]
  const place = knowledge.signatures.glasses.indexOf(id)
  if (observable?.from !== 'glass' || place < 0) return []
  const values = Object.keys(observable.values)
  const said = values.map((value) => saidShares(values, observable.mistaken, value))
  return [
    {
      byName: false,
      shares: (prediction) => {
        const { one, other, share } = looksOf(prediction, state, place)
        return said.map((shares) => (1 - share) * (shares[one] ?? 0) + share * (shares[other] ?? 0))
      },
    },
  ]
}

function feltFeature(place: number, state: OperatingState): Feature {
  return {
    byName: false,
    shares: (prediction) => {
      const share = feltOf(prediction, state, place)
      const passes = FELT_RIGHT * share + (1 - FELT_RIGHT) * (1 - share)
      return [passes, 1 - passes]
    },
  }
}

function findFeature(knowledge: Knowledge, check: KnownCheck): Feature {
  const values = [...check.finds.map((_, place) => `find-${place + 1}`), 'nothing']
  return {
    byName: true,
    shares: ({ faults }) => values.map((value) => findShare(knowledge, check, value, faults)),
  }
}

/**
 * What a check would tell in a state, apart from what was observed before.
 * @param knowledge of the circuit
 * @param check to be made
 * @param state in which; none where the plant stands
 * @param done ids with states that were observed: 'header-gauge full'
 * @param left predictions of the causes that are left
 * @returns its features, none where it tells nothing new
 */
export function featuresOf(
  knowledge: Knowledge,
  check: KnownCheck,
  state: OperatingState | undefined,
  done: ReadonlySet<string>,
  left: readonly Prediction[],
): Feature[] {
  const { signatures } = knowledge
  const features: Feature[] = []
  if (state !== undefined) {
    for (const id of check.glasses)
      if (!done.has(`${id} ${state}`)) features.push(...glassFeature(knowledge, state, id))
    const places = check.readings.flatMap((wanted) =>
      signatures.states[state].readings.flatMap(({ id }, place) =>
        observableId(id) === wanted && !done.has(`${id} ${state}`) ? [place] : [],
      ),
    )
    if (places.length > 0) features.push(readingFeature(knowledge, state, places, left))
    for (const part of check.feels)
      if (!done.has(`${check.id} ${state}`)) features.push(feltFeature(signatures.felt.indexOf(part), state))
  }
  if (check.finds.length > 0 && !done.has(`${check.id} `)) features.push(findFeature(knowledge, check))
  return features
}
