import { draftOf, sourcesOf } from './inexact-inputs.ts'
import type { Draft, Source } from './inexact-inputs.ts'
import { mulberry32, standardNormal } from './random.ts'
import type { Calculator, InputValue } from './types.ts'

/** For pages: what the ± behind a result means. */
export const UNCERTAINTY_IN_WORDS =
  'The accuracy of each input is taken as the half-width of an interval that holds the true value in about 95 % ' +
  'of cases, and the inputs as independent; the ± of a result is the same kind of interval, by root sum of ' +
  'squares of what each input alone moves it, or, where the method is strongly curved, by a Monte Carlo run of ' +
  'fixed seed. It says nothing about how well the method itself describes a real fuel or filter.'

export const UNCERTAINTY_UNKNOWN =
  'No uncertainty can be given: the method has no result at both ends of an accuracy'

/** From this share of the first-order effect on, the second-order one is no longer left out. A tenth of a ± is not seen in its digits. */
const CURVED_SHARE = 0.1
/** Below this share of the value a ± is never seen, and its curvature is often nothing but rounding. */
const UNSEEN_SHARE = 1e-6
/**
 * The half-width of so many draws of a smooth result is good to about 3 %. Beside a kink, where few of the draws
 * make the tail, it is rougher, and half as many were seen to move it by half.
 */
const DRAWS = 2000
/** Any number would do; it stays fixed so that the same inputs give the same result. */
const SEED = 341
/** More refused draws than this, and what is left no longer stands for the whole. */
const MOST_REFUSED_SHARE = 0.05
/** Half-width of a 95 % interval in standard deviations of a normal distribution. */
const COVERAGE = 1.96
const TAIL = 0.025

export interface Uncertainty {
  readonly value?: number
  readonly method?: 'first order' | 'Monte Carlo'
  /** Why there is none. */
  readonly note?: string
  /** In place of all these while the draws are still to come: a rough ±, good for how many digits to show. */
  readonly pending?: number
}

/** Whether the many draws are made now, or only the few runs that first order needs. */
export type Draws = 'now' | 'later'

type Values = Readonly<Record<string, InputValue>>
type Outputs = Readonly<Record<string, number | string>>
/** Outputs by id, or undefined where the method refuses. It is asked only for values that are physically possible. */
export type Evaluate = (values: Values) => Outputs | undefined

/** A result with one source moved up and one with it moved down by its half-width. */
type Pair = readonly [above: Outputs | undefined, below: Outputs | undefined]

export interface Surroundings {
  readonly values: Values
  readonly sources: readonly Source[]
  readonly neighbours: readonly Pair[]
}

const possible = ({ range }: Source, value: number) => value >= range.minimum && value <= range.maximum

/**
 * What the method gives with each input moved by its accuracy, up and down.
 * @param values checked values, complete [SI]
 * @param accuracies half-widths that replace the declared accuracies [SI], by input or 'table.column'
 * @param evaluate outputs at other values, undefined where refused
 */
export function surroundingsOf(
  calculator: Calculator,
  values: Values,
  accuracies: Readonly<Record<string, number>>,
  evaluate: Evaluate,
): Surroundings {
  const sources = sourcesOf(calculator, values, accuracies)
  const at = (source: Source, value: number): Outputs | undefined => {
    if (!possible(source, value)) return undefined
    const draft = draftOf(values)
    source.write(draft, value)
    return evaluate(draft)
  }
  const neighbours = sources.map((source): Pair => [
    at(source, source.value + source.halfWidth),
    at(source, source.value - source.halfWidth),
  ])
  return { values, sources, neighbours }
}

const numberIn = (outputs: Outputs | undefined, id: string): number | undefined => {
  const value = outputs?.[id]
  return typeof value === 'number' ? value : undefined
}

/** What one source does to one output: to first order, and to second order where both neighbours have a result. */
function effects(centre: number, above: number | undefined, below: number | undefined) {
  if (above !== undefined && below !== undefined)
    return { first: (above - below) / 2, second: (above + below) / 2 - centre }
  const oneSided = above ?? below
  return oneSided === undefined ? undefined : { first: oneSided - centre, second: 0 }
}

/** Moves every source; false, with the draft half written, where one leaves what is possible. */
function draw(sources: readonly Source[], draft: Draft, moves: readonly number[]): boolean {
  return sources.every((source, index) => {
    const value = source.value + (moves[index] ?? 0) * source.halfWidth
    source.write(draft, value)
    return possible(source, value)
  })
}

function monteCarlo({ values, sources }: Surroundings, evaluate: Evaluate): readonly Outputs[] | undefined {
  const normal = standardNormal(mulberry32(SEED))
  const draft = draftOf(values)
  const results: Outputs[] = []
  let refused = 0
  while (results.length + refused < DRAWS) {
    const moves = sources.map(() => normal() / COVERAGE)
    const result = draw(sources, draft, moves) ? evaluate(draft) : undefined
    if (result) results.push(result)
    else refused += 1
    if (refused > DRAWS * MOST_REFUSED_SHARE) return undefined
  }
  return results
}

function halfInterval(values: readonly number[]): number {
  const sorted = Float64Array.from(values).sort()
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] ?? 0
  return (at(1 - TAIL) - at(TAIL)) / 2
}

/**
 * Uncertainty of each quantity output, as the half-width of a 95 % interval. [SI]
 * Each input is moved by its accuracy up and down (JCGM 100:2008, 5.1.3 note 2, does so with standard uncertainties;
 * a 95 % half-width is the same multiple of one throughout). Where the mean of the two neighbours departs from the
 * centre by more than a tenth of the ±, the output is drawn many times instead, unless neither is ever seen.
 * @param surroundings values and their neighbours
 * @param centre outputs at these values [SI]
 * @param evaluate outputs at other values, undefined where refused
 * @param when 'later' leaves what needs many draws pending
 * @source gum-2008
 */
export function uncertaintyOf(
  surroundings: Surroundings,
  centre: Outputs,
  evaluate: Evaluate,
  when: Draws = 'now',
): Readonly<Record<string, Uncertainty>> {
  const { sources, neighbours } = surroundings
  if (sources.length === 0) return {}
  let draws: readonly Outputs[] | undefined | 'not yet' = 'not yet'
  const one = (id: string, value: number): Uncertainty => {
    const each = neighbours.map(([above, below]) => effects(value, numberIn(above, id), numberIn(below, id)))
    const known = each.filter((effect) => effect !== undefined)
    if (known.length < each.length) return { note: UNCERTAINTY_UNKNOWN }
    const first = Math.hypot(...known.map((effect) => effect.first))
    const second = Math.hypot(...known.map((effect) => effect.second))
    if (!Number.isFinite(first) || !Number.isFinite(second)) return { note: UNCERTAINTY_UNKNOWN }
    const unseen = Math.hypot(first, second) < UNSEEN_SHARE * Math.abs(value)
    if (unseen || second <= CURVED_SHARE * first)
      return first > 0 ? { value: first, method: 'first order' } : {}
    if (when === 'later') return { pending: Math.hypot(first, second) }
    if (draws === 'not yet') draws = monteCarlo(surroundings, evaluate)
    if (draws === undefined) return { note: UNCERTAINTY_UNKNOWN }
    const spread = halfInterval(draws.map((outputs) => numberIn(outputs, id) ?? value))
    return Number.isFinite(spread) && spread > 0 ? { value: spread, method: 'Monte Carlo' } : {}
  }
  const quantities = Object.entries(centre).filter(
    (entry): entry is [string, number] => typeof entry[1] === 'number',
  )
  return Object.fromEntries(quantities.map(([id, value]) => [id, one(id, value)]))
}
