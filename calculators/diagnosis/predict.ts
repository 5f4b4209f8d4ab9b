import type { OperatingState } from '../circuit/types.ts'
import type { FeltItem, GlassItem, Item, ReadingItem } from './items.ts'
import type { Shown, Signatures } from './types.ts'

/** What a cause at one severity lets one expect: something between two of the signatures. */
export interface Prediction {
  readonly faults: readonly string[]
  readonly lower: Readonly<Record<OperatingState, Shown>>
  readonly upper: Readonly<Record<OperatingState, Shown>>
  /** Share of the way from the lower to the upper one. */
  readonly along: number
  /** Half of the interval that it stands for, as a share of that way. */
  readonly half: number
  /** Which place shows what is asked of another: for another cylinder than that of the data. */
  readonly swap?: (state: OperatingState, place: number) => number
}

/** Share of hands that feel right. Common practice. */
export const FELT_RIGHT = 0.95

/** So many deviations off, a normal distribution adds nothing to the floor of what is misread. */
const FAR_OFF = 9

/** A uniform distribution's standard deviation is its half-width over this. */
const ROOT_OF_THREE = Math.sqrt(3)
const ROOT_OF_TWO_PI = Math.sqrt(2 * Math.PI)

export function predictHealth({ states }: Signatures): Prediction {
  const health = {
    priming: states.priming.health,
    idle: states.idle.health,
    part: states.part.health,
    full: states.full.health,
  }
  return { faults: [], lower: health, upper: health, along: 0, half: 0 }
}

/** A severity between two of the signatures. */
export interface Node {
  /** Place of the lower one. */
  readonly lower: number
  readonly along: number
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
  swap?: Prediction['swap'],
): Prediction {
  const at = (place: number) => {
    const shown = (state: OperatingState): Shown =>
      signatures.faults[fault]?.[state][place] ?? signatures.states[state].health
    return { priming: shown('priming'), idle: shown('idle'), part: shown('part'), full: shown('full') }
  }
  return {
    faults: [fault],
    lower: at(node.lower),
    upper: at(node.lower + 1),
    along: node.along,
    half: node.half,
    ...(swap ? { swap } : {}),
  }
}

/** Standard deviation of a reading: the instrument's [SI], and that among sound plants as a share of the value. [SI] */
export const deviationOf = (
  { instrument, spread }: { readonly instrument: number; readonly spread: number },
  value: number,
): number => Math.hypot(instrument, spread * value)

/** Mean of a reading. [SI] */
export function meanOf(
  { lower, upper, along, swap }: Prediction,
  state: OperatingState,
  place: number,
): number {
  const at = swap ? swap(state, place) : place
  const start = lower[state].readings[at] ?? 0
  return start + along * ((upper[state].readings[at] ?? start) - start)
}

/** Standard deviation of a reading that comes from not knowing the severity closer. [SI] */
export function doubtOf(
  { lower, upper, half, swap }: Prediction,
  state: OperatingState,
  place: number,
): number {
  const at = swap ? swap(state, place) : place
  const start = lower[state].readings[at] ?? 0
  return (half * Math.abs((upper[state].readings[at] ?? start) - start)) / ROOT_OF_THREE
}

/** What a glass shows: one value, and another with the share with which it shows instead. */
export function looksOf(
  { lower, upper, along }: Prediction,
  state: OperatingState,
  place: number,
): { readonly one: string; readonly other: string; readonly share: number } {
  const one = lower[state].glasses[place] ?? ''
  const other = upper[state].glasses[place] ?? one
  return { one, other, share: one === other ? 0 : along }
}

/** What a glass shows more likely than not. */
export function lookOf(prediction: Prediction, state: OperatingState, place: number): string {
  const { one, other, share } = looksOf(prediction, state, place)
  return share > 0.5 ? other : one
}

/** Share with which a felt part passes fuel. */
export function feltOf({ lower, upper, along }: Prediction, state: OperatingState, place: number): number {
  return (lower[state].felt[place] ? 1 - along : 0) + (upper[state].felt[place] ? along : 0)
}

/** How likely what a hand felt is, where fuel passes with a share. */
export function feltLikelihood({ passes }: FeltItem, share: number): number {
  const says = FELT_RIGHT * share + (1 - FELT_RIGHT) * (1 - share)
  return passes ? says : 1 - says
}

/**
 * How likely a reading is.
 * @param item the reading
 * @param mean that is expected [SI]
 * @param doubt variance beside that of the instrument and of sound plants [SI²]
 * @param misread share of readings that may be anything
 * @returns a density, above 0 [1/SI]
 */
export function readingLikelihood(item: ReadingItem, mean: number, doubt: number, misread: number): number {
  const spread = item.spread * mean
  const variance = item.instrument * item.instrument + spread * spread + doubt
  const off = item.value - mean
  const squares = (off * off) / variance
  const floor = misread / item.span
  return squares > FAR_OFF * FAR_OFF
    ? floor
    : ((1 - misread) * Math.exp(-squares / 2)) / (ROOT_OF_TWO_PI * Math.sqrt(variance)) + floor
}

function glassLikelihood({ shares, state, place }: GlassItem, prediction: Prediction): number {
  const { one, other, share } = looksOf(prediction, state, place)
  return (1 - share) * (shares[one] ?? 0) + share * (shares[other] ?? 0)
}

/** An item of which the model tells how likely it is. */
export type ShownItem = ReadingItem | GlassItem | FeltItem

/**
 * How likely an observation is with a cause.
 * @param item what was observed, of which more than names tell
 * @param prediction of the cause at one severity
 * @param misread share of readings that may be anything
 * @returns a share, or for a reading a density [1/SI]; above 0
 */
export function likelihoodOf(item: ShownItem, prediction: Prediction, misread: number): number {
  const { state, place } = item
  if (item.from === 'reading')
    return readingLikelihood(
      item,
      meanOf(prediction, state, place),
      doubtOf(prediction, state, place) ** 2,
      misread,
    )
  if (item.from === 'felt') return feltLikelihood(item, feltOf(prediction, state, place))
  return glassLikelihood(item, prediction)
}

/** How likely an observation is where nobody knows the cause: half as in health, half anything. */
export function unknownLikelihood(item: Item, healthy: number): number {
  const anything = item.from === 'reading' ? 1 / item.span : item.from === 'felt' ? 0.5 : 1 / item.count
  return 0.5 * healthy + 0.5 * anything
}
