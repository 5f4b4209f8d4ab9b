import { mulberry32, standardNormal } from './random.ts'
import { relevantInputs } from './relevant-inputs.ts'
import type { Accuracy, Calculator, InputValue, TableRow } from './types.ts'

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
}

/** Quantity outputs by id, or undefined where the method refuses. */
export type Evaluate = (
  values: Readonly<Record<string, InputValue>>,
) => Readonly<Record<string, number>> | undefined

/** One number that is not known exactly: an input, or a cell of a table. */
interface Source {
  readonly halfWidth: number
  readonly shifted: (values: Readonly<Record<string, InputValue>>, by: number) => Record<string, InputValue>
}

function halfWidthOf(accuracy: Accuracy | undefined, value: number, override: number | undefined): number {
  if (override !== undefined) return override
  if (!accuracy) return 0
  return 'absolute' in accuracy ? accuracy.absolute : accuracy.relative * Math.abs(value)
}

/** The table with one of its cells moved. */
function withCell(rows: readonly TableRow[], at: number, columnId: string, by: number): TableRow[] {
  const moved = { ...rows[at], [columnId]: (rows[at]?.[columnId] ?? 0) + by }
  return rows.with(at, moved)
}

function cellSources(
  id: string,
  rows: readonly TableRow[],
  columnId: string,
  halfWidth: (value: number) => number,
): Source[] {
  return rows.map((row, at) => ({
    halfWidth: halfWidth(row[columnId] ?? 0),
    shifted: (values, by) => ({
      ...values,
      [id]: withCell(values[id] as readonly TableRow[], at, columnId, by),
    }),
  }))
}

function sourcesOf(
  calculator: Calculator,
  values: Readonly<Record<string, InputValue>>,
  accuracies: Readonly<Record<string, number>>,
): Source[] {
  const sources = relevantInputs(calculator, values).flatMap((id): Source[] => {
    const input = calculator.inputs[id]
    const value = values[id]
    if (input?.type === 'quantity' && typeof value === 'number') {
      const shifted: Source['shifted'] = (all, by) => ({ ...all, [id]: (all[id] as number) + by })
      return [{ halfWidth: halfWidthOf(input.accuracy, value, accuracies[id]), shifted }]
    }
    if (input?.type !== 'table' || !Array.isArray(value)) return []
    return Object.entries(input.columns).flatMap(([columnId, column]) =>
      cellSources(id, value, columnId, (cell) =>
        halfWidthOf(column.accuracy, cell, accuracies[`${id}.${columnId}`]),
      ),
    )
  })
  return sources.filter((source) => source.halfWidth > 0)
}

/** What one source does to one output: to first order, and to second order where both neighbours have a result. */
function effects(centre: number, above: number | undefined, below: number | undefined) {
  if (above !== undefined && below !== undefined)
    return { first: (above - below) / 2, second: (above + below) / 2 - centre }
  const oneSided = above ?? below
  return oneSided === undefined ? undefined : { first: oneSided - centre, second: 0 }
}

function monteCarlo(
  values: Readonly<Record<string, InputValue>>,
  sources: readonly Source[],
  evaluate: Evaluate,
): ReadonlyArray<Readonly<Record<string, number>>> | undefined {
  const normal = standardNormal(mulberry32(SEED))
  const results = Array.from({ length: DRAWS }, () =>
    evaluate(
      sources.reduce(
        (drawn, source) => source.shifted(drawn, (normal() * source.halfWidth) / COVERAGE),
        values as Record<string, InputValue>,
      ),
    ),
  ).filter((result) => result !== undefined)
  return results.length < DRAWS * (1 - MOST_REFUSED_SHARE) ? undefined : results
}

function halfInterval(sorted: readonly number[]): number {
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] ?? 0
  return (at(1 - TAIL) - at(TAIL)) / 2
}

/**
 * Uncertainty of each quantity output, as the half-width of a 95 % interval. [SI]
 * Each input is moved by its accuracy up and down (JCGM 100:2008, 5.1.3 note 2, does so with standard uncertainties;
 * a 95 % half-width is the same multiple of one throughout). Where the mean of the two neighbours departs from the
 * centre by more than a tenth of the ±, the output is drawn 2000 times instead.
 * @param values checked values, complete [SI]
 * @param centre outputs at these values [SI]
 * @param accuracies half-widths that replace the declared accuracies [SI], by input or 'table.column'
 * @param evaluate outputs at other values, undefined where refused
 * @source gum-2008
 */
export function uncertaintyOf(
  calculator: Calculator,
  values: Readonly<Record<string, InputValue>>,
  centre: Readonly<Record<string, number>>,
  accuracies: Readonly<Record<string, number>>,
  evaluate: Evaluate,
): Readonly<Record<string, Uncertainty>> {
  const sources = sourcesOf(calculator, values, accuracies)
  if (sources.length === 0) return {}
  const neighbours = sources.map(
    ({ shifted, halfWidth }) =>
      [evaluate(shifted(values, halfWidth)), evaluate(shifted(values, -halfWidth))] as const,
  )
  let draws: ReturnType<typeof monteCarlo> | 'not yet' = 'not yet'
  const one = (id: string, value: number): Uncertainty => {
    const each = neighbours.map(([above, below]) => effects(value, above?.[id], below?.[id]))
    const known = each.filter((effect) => effect !== undefined)
    if (known.length < each.length) return { note: UNCERTAINTY_UNKNOWN }
    const first = Math.hypot(...known.map((effect) => effect.first))
    const second = Math.hypot(...known.map((effect) => effect.second))
    if (!Number.isFinite(first) || !Number.isFinite(second)) return { note: UNCERTAINTY_UNKNOWN }
    if (second <= CURVED_SHARE * first) return first > 0 ? { value: first, method: 'first order' } : {}
    if (draws === 'not yet') draws = monteCarlo(values, sources, evaluate)
    if (draws === undefined) return { note: UNCERTAINTY_UNKNOWN }
    const spread = halfInterval(draws.map((draw) => draw[id] ?? value).sort((a, b) => a - b))
    return Number.isFinite(spread) && spread > 0 ? { value: spread, method: 'Monte Carlo' } : {}
  }
  return Object.fromEntries(Object.entries(centre).map(([id, value]) => [id, one(id, value)]))
}
