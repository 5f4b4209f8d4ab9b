import type { OperatingState } from '../circuit/types.ts'
import { worseValue } from './glass-value.ts'
import type { FeltItem, Item, NamedItem, ReadingItem } from './items.ts'
import type { Shown, Signatures } from './types.ts'

/** What a cause at one severity lets one expect. */
export interface Prediction {
  readonly faults: readonly string[]
  /** Mean, and the standard deviation that comes from not knowing the severity closer. [SI] */
  readonly reading: (state: OperatingState, place: number) => readonly [number, number]
  /** Values of the glass, each with its share. */
  readonly glass: (state: OperatingState, place: number) => readonly (readonly [string, number])[]
  /** Share with which the felt part passes fuel. */
  readonly felt: (state: OperatingState, place: number) => number
}

/** Share of hands that feel right. Common practice. */
const FELT_RIGHT = 0.95

/** How much of the smaller deviation of two causes may get lost or be added where both act: our estimate. */
const TOGETHER = 0.3

/** A uniform distribution's standard deviation is its half-width over this. */
const ROOT_OF_THREE = Math.sqrt(3)

export function predictHealth({ states }: Signatures): Prediction {
  return {
    faults: [],
    reading: (state, place) => [states[state].health.readings[place] ?? 0, 0],
    glass: (state, place) => [[states[state].health.glasses[place] ?? '', 1]],
    felt: (state, place) => (states[state].health.felt[place] ? 1 : 0),
  }
}

/** A severity between two of the signatures: the lower one's place, the share of the way, and what it stands for. */
export interface Node {
  readonly lower: number
  readonly along: number
  /** Half of the interval that it stands for, as a share of the step between the two. */
  readonly half: number
}

/**
 * Severities that stand for all of them, evenly from the first that could be noticed.
 * @param count of severities in the signatures
 * @param parts into which each step between two is divided
 */
export function nodesOf(count: number, parts: number): Node[] {
  const nodes = Array.from({ length: (count - 1) * parts }, (_, index) => ({
    lower: Math.floor(index / parts),
    along: ((index % parts) + 0.5) / parts,
    half: 0.5 / parts,
  }))
  return nodes.filter(({ lower, along }) => lower > 0 || along >= 0.5)
}

/**
 * A single fault at a severity.
 * @param signatures of the circuit
 * @param fault its id
 * @param node the severity
 * @param swap which place shows what is asked of another: for another cylinder than that of the data
 */
export function predictFault(
  signatures: Signatures,
  fault: string,
  node: Node,
  swap: (state: OperatingState, place: number) => number = (_, place) => place,
): Prediction {
  const { lower, along, half } = node
  const ends = (state: OperatingState): readonly [Shown, Shown] => {
    const { health } = signatures.states[state]
    const course = signatures.faults[fault]?.[state] ?? []
    return [course[lower] ?? health, course[lower + 1] ?? health]
  }
  return {
    faults: [fault],
    reading: (state, asked) => {
      const place = swap(state, asked)
      const [one, other] = ends(state)
      const start = one.readings[place] ?? 0
      const step = (other.readings[place] ?? 0) - start
      return [start + along * step, (half * Math.abs(step)) / ROOT_OF_THREE]
    },
    glass: (state, place) => {
      const [one, other] = ends(state)
      const [start = '', end = ''] = [one.glasses[place], other.glasses[place]]
      return start === end
        ? [[start, 1]]
        : [
            [start, 1 - along],
            [end, along],
          ]
    },
    felt: (state, place) => {
      const [one, other] = ends(state)
      return (one.felt[place] ? 1 - along : 0) + (other.felt[place] ? along : 0)
    },
  }
}

/** What a cause at one severity lets one expect of one item. */
export interface Expectation {
  /** Of a reading: its mean and the standard deviation of what is not known of it [SI]; of a felt part the share. */
  readonly mean: number
  readonly doubt: number
  /** Of a glass: what shows, and the share with which it does; the rest shows the other one. */
  readonly glass: string
  readonly share: number
  readonly otherGlass: string
}

const nothing: Expectation = { mean: 0, doubt: 0, glass: '', share: 1, otherGlass: '' }

/** What a prediction says of an item; of what only names tell it says nothing. */
export function expectationOf(item: Item, prediction: Prediction): Expectation {
  switch (item.from) {
    case 'reading': {
      const [mean, doubt] = prediction.reading(item.state, item.place)
      return { mean, doubt, glass: '', share: 1, otherGlass: '' }
    }
    case 'glass': {
      const [[glass, share] = ['', 1], other] = prediction.glass(item.state, item.place)
      return { mean: 0, doubt: 0, glass, share, otherGlass: other?.[0] ?? glass }
    }
    case 'felt':
      return { ...nothing, mean: prediction.felt(item.state, item.place) }
    case 'named':
      return nothing
  }
}

const likelier = ({ glass, share, otherGlass }: Expectation): string => (share >= 0.5 ? glass : otherGlass)

/**
 * How likely an observation is with two causes together, without solving the circuit for them: the departures of the
 * readings from health add up, with a doubt that grows with the smaller of the two; a glass shows the worse look. Where
 * one cause hides the other – a starved pump behind a shut valve – the truth is elsewhere, and the doubt only covers a
 * part of it.
 * @param item what was observed, of which more than names tell
 * @param health what is expected in health
 * @param one of the first cause
 * @param other of the second
 * @param misread share of readings that may be anything
 * @returns as likelihoodOf
 * @source common practice (superposition of small departures)
 */
export function likelihoodOfBoth(
  item: Exclude<Item, NamedItem>,
  health: Expectation,
  one: Expectation,
  other: Expectation,
  misread: number,
): number {
  if (item.from === 'felt') return feltLikelihood(item, Math.max(one.mean, other.mean))
  if (item.from === 'glass') return item.shares[worseValue(likelier(one), likelier(other), health.glass)] ?? 0
  const smaller = Math.min(Math.abs(one.mean - health.mean), Math.abs(other.mean - health.mean))
  const doubt = Math.sqrt(one.doubt ** 2 + other.doubt ** 2 + (TOGETHER * smaller) ** 2)
  // An instrument does not show less than nothing.
  return readingLikelihood(item, Math.max(0, one.mean + other.mean - health.mean), doubt, misread)
}

function feltLikelihood({ passes }: FeltItem, share: number): number {
  const says = FELT_RIGHT * share + (1 - FELT_RIGHT) * (1 - share)
  return passes ? says : 1 - says
}

function readingLikelihood(item: ReadingItem, mean: number, doubt: number, misread: number): number {
  const spread = item.spread * mean
  const variance = item.instrument * item.instrument + spread * spread + doubt * doubt
  const off = item.value - mean
  const density = Math.exp((-off * off) / (2 * variance)) / Math.sqrt(2 * Math.PI * variance)
  return (1 - misread) * density + misread / item.span
}

/**
 * How likely an observation is with a cause.
 * @param item what was observed, of which more than names tell
 * @param expected of the cause at one severity
 * @param misread share of readings that may be anything
 * @returns a share, or for a reading a density [1/SI]; above 0
 */
export function likelihoodOf(item: Exclude<Item, NamedItem>, expected: Expectation, misread: number): number {
  if (item.from === 'reading') return readingLikelihood(item, expected.mean, expected.doubt, misread)
  if (item.from === 'felt') return feltLikelihood(item, expected.mean)
  return (
    expected.share * (item.shares[expected.glass] ?? 0) +
    (1 - expected.share) * (item.shares[expected.otherGlass] ?? 0)
  )
}

/** How likely an observation is where nobody knows the cause: half as in health, half anything. */
export function unknownLikelihood(item: Item, healthy: number): number {
  const anything = item.from === 'reading' ? 1 / item.span : item.from === 'felt' ? 0.5 : 1 / item.count
  return 0.5 * healthy + 0.5 * anything
}
