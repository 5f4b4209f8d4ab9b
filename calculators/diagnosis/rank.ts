import { evidenceOf } from './evidence.ts'
import { explainByOne, type Explanation } from './explain-by.ts'
import type { Item } from './items.ts'
import { pairsOf } from './pairs.ts'
import { unknownLikelihood } from './predict.ts'
import type { Knowledge, Observation } from './types.ts'

export interface Hypothesis extends Explanation {
  /** Share of this explanation among all, 0 to 1. */
  readonly share: number
}

export interface RankedCause {
  readonly fault: string
  /** Of what is left: alone, and half of each pair that it is one of. 0 to 1. */
  readonly share: number
  /** Likely cylinder. */
  readonly cylinder?: number
  /** The cause alone. */
  readonly alone: Hypothesis
}

/** All shares sum to one: causes, health, and that none of them fits. */
export interface Ranking {
  readonly items: readonly Item[]
  readonly causes: readonly RankedCause[]
  readonly pairs: readonly Hypothesis[]
  readonly healthy: Hypothesis
  /** That it is something which is not in the list. */
  readonly unknown: number
  /** How likely each item is before anything is known, over all single causes and health. */
  readonly usual: readonly number[]
}

function priorOf({ faults, weights }: Knowledge) {
  const frequency = new Map(faults.map((fault) => [fault.id, fault.frequency]))
  const of = (fault: string | undefined) => frequency.get(fault ?? '') ?? 'rare'
  return ([one, other]: readonly string[]): number => {
    if (one === undefined) return weights.healthy
    const first = weights.frequency[of(one)]
    if (other === undefined) return first
    const second = weights.frequency[of(other)]
    return (first * weights.second[of(other)] + second * weights.second[of(one)]) / 2
  }
}

function usualOf(
  singles: readonly Explanation[],
  healthy: Explanation,
  prior: (faults: readonly string[]) => number,
): number[] {
  const all = [healthy, ...singles]
  const weights = all.map(({ faults }) => prior(faults))
  const sum = weights.reduce((total, weight) => total + weight, 0)
  return healthy.perItem.map((_, place) =>
    all.reduce(
      (total, { perItem }, index) => total + ((weights[index] ?? 0) * (perItem[place] ?? 0)) / sum,
      0,
    ),
  )
}

/**
 * Causes of what was observed, the likeliest first. Each explanation – health, every cause alone with its severity
 * marginalised, pairs of those that help most, and a cause that nobody thought of – is weighed by how often it is met
 * and how well it accounts for what a person observed, and for that alone.
 * @param knowledge of the circuit: signatures, likelihoods and weights
 * @param observations that were made, in any order
 * @returns shares that sum to one, with what they rest on
 * @source common practice (weights and likelihoods are estimates; the rule is Bayes')
 */
export function rank(knowledge: Knowledge, observations: readonly Observation[]): Ranking {
  const { signatures, weights } = knowledge
  const evidence = evidenceOf(knowledge, observations)
  const items = evidence.map(({ item }) => item)
  const { healthy, singles } = explainByOne(signatures, evidence)
  const prior = priorOf(knowledge)
  const pairs = pairsOf(knowledge, singles, healthy, evidence, prior)
  const unknownLog = items.reduce(
    (sum, item, place) => sum + Math.log(unknownLikelihood(item, healthy.perItem[place] ?? 0)),
    Math.log(weights.unknown),
  )
  const all = [healthy, ...singles, ...pairs]
  const logs = all.map(({ faults, logLikelihood }) => Math.log(prior(faults)) + logLikelihood)
  const best = Math.max(unknownLog, ...logs)
  const sum = logs.reduce((total, log) => total + Math.exp(log - best), Math.exp(unknownLog - best))
  const share = (log: number) => Math.exp(log - best) / sum
  const [first, ...others] = all.map((one, place): Hypothesis => ({ ...one, share: share(logs[place] ?? 0) }))
  if (!first) throw new Error('There is no explanation to rank.')
  const alone = others.slice(0, singles.length)
  const together = others.slice(singles.length)
  const causes = alone.map((hypothesis): RankedCause => {
    const [fault = ''] = hypothesis.faults
    const shared = together
      .filter(({ faults }) => faults.includes(fault))
      .reduce((total, pair) => total + pair.share / 2, 0)
    return {
      fault,
      share: hypothesis.share + shared,
      ...(hypothesis.cylinder === undefined ? {} : { cylinder: hypothesis.cylinder }),
      alone: hypothesis,
    }
  })
  return {
    items,
    causes: causes.toSorted((a, b) => b.share - a.share),
    pairs: together.toSorted((a, b) => b.share - a.share),
    healthy: first,
    unknown: share(unknownLog),
    usual: usualOf(singles, healthy, prior),
  }
}
