import type { CheckData } from '../checks/types.ts'
import type { OperatingState } from '../circuit/types.ts'
import { normalTail } from '../statistics/normal.ts'
import { findShare, measureOf, observableId, saidShares } from './items.ts'
import { feltOf, FELT_RIGHT, looksOf, meanOf, type Prediction } from './predict.ts'
import type { Knowledge } from './types.ts'

/** One thing that a check tells: shares of what it may say, with a cause at one severity. */
export type Feature = (prediction: Prediction) => number[]

/** Into so many steps a reading is divided, alone or with others of the same check. */
const STEPS = 12
const STEPS_WITH_OTHERS = 6

/** Of more readings than this, only how far the highest and the lowest stand off counts. */
const MANY = 2

function steps(mean: number, deviation: number, edges: readonly number[]): number[] {
  const above = edges.map((edge) => normalTail((edge - mean) / deviation))
  return [1, ...above].map((share, place) => share - (above[place] ?? 0))
}

/** Edges between steps, evenly over what the causes that are left may show. */
function edgesOf(means: readonly number[], deviation: number, count: number): number[] {
  const least = Math.min(...means) - deviation
  const width = Math.max(...means) + deviation - least
  return Array.from({ length: count - 1 }, (_, place) => least + (width * (place + 1)) / count)
}

function readingFeatures(
  knowledge: Knowledge,
  state: OperatingState,
  places: readonly number[],
  left: readonly Prediction[],
): Feature[] {
  const measures = places.map((place) => measureOf(knowledge, state, place))
  const meansOf = (prediction: Prediction) => places.map((place) => meanOf(prediction, state, place))
  const derived = (means: readonly number[]): number[] => {
    if (means.length <= MANY) return [...means]
    const sorted = means.toSorted((a, b) => a - b)
    const middle = sorted[Math.floor(sorted.length / 2)] ?? 0
    return [(sorted.at(-1) ?? 0) - middle, middle - (sorted[0] ?? 0)]
  }
  const all = left.map((prediction) => derived(meansOf(prediction)))
  const count = (all[0]?.length ?? 0) > 1 ? STEPS_WITH_OTHERS : STEPS
  return (all[0] ?? []).map((_, index): Feature => {
    const measure = measures[Math.min(index, measures.length - 1)] ?? { instrument: 1, spread: 0 }
    const typical = Math.max(
      ...left.map((prediction) => meansOf(prediction)[Math.min(index, places.length - 1)] ?? 0),
    )
    const deviation = Math.hypot(measure.instrument, measure.spread * typical)
    const edges = edgesOf(
      all.map((means) => means[index] ?? 0),
      deviation,
      count,
    )
    return (prediction) => steps(derived(meansOf(prediction))[index] ?? 0, deviation, edges)
  })
}

function glassFeature(knowledge: Knowledge, state: OperatingState, id: string): Feature[] {
  const observable = knowledge.observables[id]
  const place = knowledge.signatures.glasses.indexOf(id)
  if (observable?.from !== 'glass' || place < 0) return []
  const values = Object.keys(observable.values)
  const said = values.map((value) => saidShares(values, observable.mistaken, value))
  return [
    (prediction) => {
      const { one, other, share } = looksOf(prediction, state, place)
      return said.map((shares) => (1 - share) * (shares[one] ?? 0) + share * (shares[other] ?? 0))
    },
  ]
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
  check: CheckData,
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
    if (places.length > 0) features.push(...readingFeatures(knowledge, state, places, left))
    for (const part of check.feels)
      if (!done.has(`${check.id} ${state}`))
        features.push((prediction) => {
          const share = feltOf(prediction, state, signatures.felt.indexOf(part))
          const passes = FELT_RIGHT * share + (1 - FELT_RIGHT) * (1 - share)
          return [passes, 1 - passes]
        })
  }
  if (check.finds.length > 0 && !done.has(`${check.id} `)) {
    const values = [...check.finds.map((_, place) => `find-${place + 1}`), 'nothing']
    features.push(({ faults }) => values.map((value) => findShare(knowledge, check, value, faults)))
  }
  return features
}
