import { severitiesOf } from './both.ts'
import type { Evidence } from './evidence.ts'
import type { Prediction } from './predict.ts'
import { rowsOf, type CauseRows, type Partner, type Rows } from './rows.ts'
import type { Signatures } from './types.ts'

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

/** Logarithms: what is so far below the best is left out of sums. */
const FAR_BELOW = 16

/** Below this share a row does not show in a sum any more. */
const WEIGHS_NOTHING = 1e-12

/** A weight below this share tells nothing any more. */
const NEGLIGIBLE = 0.002

/** Weighs the rows from one place on against one another by what was observed. */
function weigh(columns: readonly Float64Array[], from: number, count: number) {
  const weights = new Float64Array(count)
  for (const column of columns)
    for (let row = 0; row < count; row++)
      weights[row] = (weights[row] as number) + (column[from + row] as number)
  const best = weights.reduce((largest, log) => Math.max(largest, log), -Infinity)
  let sum = 0
  weights.forEach((log, row) => {
    const share = Math.exp(log - best)
    weights[row] = share
    sum += share
  })
  weights.forEach((share, row) => (weights[row] = share / sum))
  const perItem = columns.map((column) => {
    let expected = 0
    for (let row = 0; row < count; row++) {
      const weight = weights[row] as number
      if (weight >= WEIGHS_NOTHING) expected += weight * Math.exp(column[from + row] as number)
    }
    return expected
  })
  return { weights, logLikelihood: best + Math.log(sum / count), perItem }
}

function explanation(
  { predictions }: Rows,
  columns: readonly Float64Array[],
  { fault, from, count, cylinders }: CauseRows,
): Explanation {
  const { weights, ...found } = weigh(columns, from, count)
  const each = count / cylinders
  const perCylinder = Array.from({ length: cylinders }, (_, index) =>
    weights.subarray(index * each, (index + 1) * each).reduce((sum, weight) => sum + weight, 0),
  )
  const likely = perCylinder.findIndex((weight) => weight > 0.5)
  return {
    faults: [fault],
    ...found,
    predictions: predictions
      .slice(from, from + count)
      .map((prediction, row) => ({ prediction, weight: weights[row] ?? 0 }))
      .filter(({ weight }) => weight > NEGLIGIBLE),
    ...(cylinders > 1 && likely >= 0 ? { cylinder: likely + 1 } : {}),
  }
}

/**
 * Health, and every cause alone at every severity, and at every cylinder where it is one cylinder's.
 * @param signatures of the circuit
 * @param evidence that was told
 */
export function explainByOne(
  signatures: Signatures,
  evidence: readonly Evidence[],
): { readonly healthy: Explanation; readonly singles: readonly Explanation[] } {
  const told = evidence.some(({ item }) => item.from === 'reading' && item.cylinder !== undefined)
  const rows = rowsOf(signatures, told)
  const columns = evidence.map(({ ofSingles }) => ofSingles(rows))
  const health = explanation(rows, columns, { fault: '', from: 0, count: 1, cylinders: 1 })
  return {
    healthy: { ...health, faults: [] },
    singles: rows.causes.map((cause) => explanation(rows, columns, cause)),
  }
}

/**
 * Two causes together, at every other tenth of both severities, to find out quickly whether they are worth a closer
 * look.
 * @param one of them
 * @param other of them
 * @param evidence that was told, best what tells most first
 * @param least logarithm of a likelihood far below which it need not be known
 * @returns the logarithm of the likelihood; -Infinity where it is far below
 */
export function fitOfTwo(one: Partner, other: Partner, evidence: readonly Evidence[], least: number): number {
  const most = evidence.reduce((sum, each) => sum + Math.log(each.most), 0)
  const enough = Math.exp(least - FAR_BELOW - most)
  const rows = severitiesOf(one, 2) * severitiesOf(other, 2)
  // A product that gets too small for a number is far below what any pair must reach.
  const products = new Float64Array(rows).fill(1)
  for (const each of evidence) {
    const { data, from } = each.atAGlance(one, other)
    let best = 0
    for (let row = 0; row < rows; row++) {
      const product = (products[row] as number) * (data[from + row] as number)
      products[row] = product
      if (product > best) best = product
    }
    // Each factor is a share: nothing can bring it back.
    if (best < enough) return -Infinity
  }
  return most + Math.log(products.reduce((sum, product) => sum + product, 0) / rows)
}

/**
 * Two causes together, at every tenth of both severities.
 * @param one of them
 * @param other of them
 * @param evidence that was told
 */
export function explainByTwo(one: Partner, other: Partner, evidence: readonly Evidence[]): Explanation {
  const columns = evidence.map(({ ofPair }) => ofPair(one, other))
  const { weights: _, ...found } = weigh(columns, 0, columns[0]?.length ?? 0)
  return { faults: [one.fault, other.fault], ...found, predictions: [] }
}
