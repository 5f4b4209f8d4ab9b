import { worseValue } from './glass-value.ts'
import type { FeltItem, GlassItem, Item, ReadingItem } from './items.ts'
import {
  doubtOf,
  feltLikelihood,
  feltOf,
  lookOf,
  meanOf,
  predictHealth,
  readingLikelihood,
  type Prediction,
} from './predict.ts'
import type { Partner } from './rows.ts'
import type { Knowledge } from './types.ts'

/** How much of the smaller deviation of two causes may get lost or be added where both act: our estimate. */
const TOGETHER = 0.3

/** What one of two causes lets one expect of an observation, at each of its severities. */
interface Expected {
  /** Of a reading its mean [SI], of a felt part the share with which it passes fuel. */
  readonly means: Float64Array
  /** Of a reading the variance that comes from not knowing the severity closer. [SI²] */
  readonly doubts: Float64Array
  /** Of a glass what shows more likely than not. */
  readonly looks: readonly string[]
}

/** Likelihoods of each severity of one cause with each of the other, those of the other running faster. */
type Fill = (one: Expected, other: Expected, into: Float64Array, from: number) => void

function fillReading(item: ReadingItem, health: number, misread: number): Fill {
  const multiplies = item.multiplies && health > item.instrument
  return (one, other, into, from) => {
    let row = from
    for (let first = 0; first < one.means.length; first++) {
      const departure = (one.means[first] as number) - health
      const doubt = one.doubts[first] as number
      for (let second = 0; second < other.means.length; second++) {
        const mean = other.means[second] as number
        // Nothing is multiplied where health shows nothing.
        const both = multiplies ? (mean * (one.means[first] as number)) / health : mean + departure
        const smaller = TOGETHER * Math.min(Math.abs(departure), Math.abs(mean - health))
        // An instrument does not show less than nothing.
        into[row++] = readingLikelihood(
          item,
          Math.max(0, both),
          doubt + (other.doubts[second] as number) + smaller * smaller,
          misread,
        )
      }
    }
  }
}

function fillGlass({ shares }: GlassItem, health: string): Fill {
  return (one, other, into, from) => {
    let row = from
    for (const first of one.looks)
      for (const second of other.looks) into[row++] = shares[worseValue(first, second, health)] ?? 0
  }
}

function fillFelt(item: FeltItem): Fill {
  return (one, other, into, from) => {
    let row = from
    for (const first of one.means)
      for (const second of other.means) into[row++] = feltLikelihood(item, Math.max(first, second))
  }
}

function expectedOf(item: Exclude<Item, { from: 'named' }>, predictions: readonly Prediction[]): Expected {
  const { state, place } = item
  const none = new Float64Array(0)
  if (item.from === 'glass')
    return { means: none, doubts: none, looks: predictions.map((one) => lookOf(one, state, place)) }
  if (item.from === 'felt')
    return {
      means: Float64Array.from(predictions, (one) => feltOf(one, state, place)),
      doubts: none,
      looks: [],
    }
  return {
    means: Float64Array.from(predictions, (one) => meanOf(one, state, place)),
    doubts: Float64Array.from(predictions, (one) => doubtOf(one, state, place) ** 2),
    looks: [],
  }
}

function fillOf(item: Exclude<Item, { from: 'named' }>, health: Prediction, misread: number): Fill {
  const { state, place } = item
  if (item.from === 'reading') return fillReading(item, meanOf(health, state, place), misread)
  return item.from === 'glass' ? fillGlass(item, lookOf(health, state, place)) : fillFelt(item)
}

/**
 * How likely an observation is with two causes together, without solving the circuit for them: the departures of
 * pressures and temperatures from health add up, flows, drops and power are multiplied, with a doubt that grows with the smaller of the two; a glass shows the worse look. Where
 * one cause hides the other – a starved pump behind a shut valve – the truth is elsewhere, and the doubt only covers a
 * part of it.
 * @param knowledge of the circuit
 * @param item what was observed
 * @returns a function that writes likelihoods of two causes for each pair of their severities, of each every so many,
 * from a place on; those of the second cause run faster
 * @source common practice (superposition of small departures)
 */
export function togetherOf(
  { signatures, weights }: Knowledge,
  item: Item,
): (one: Partner, other: Partner, every: 1 | 2, into: Float64Array, from: number) => void {
  if (item.from === 'named')
    return (one, other, every, into, from) => {
      const rows = severitiesOf(one, every) * severitiesOf(other, every)
      into.fill(item.share([one.fault, other.fault]), from, from + rows)
    }
  const fill = fillOf(item, predictHealth(signatures), weights.misread)
  const known = new Map<number, Expected>()
  const expected = ({ number, predictions }: Partner, every: 1 | 2): Expected => {
    const key = 2 * number + every - 1
    const before = known.get(key)
    if (before) return before
    const made = expectedOf(
      item,
      predictions.filter((_, place) => place % every === every - 1),
    )
    known.set(key, made)
    return made
  }
  return (one, other, every, into, from) => {
    fill(expected(one, every), expected(other, every), into, from)
  }
}

/** How many severities of a partner are tried. */
export const severitiesOf = ({ predictions }: Partner, every: 1 | 2): number =>
  Math.floor(predictions.length / every)
