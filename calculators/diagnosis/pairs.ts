import { expectedOf, explainByTwo, type Explanation, type Partner } from './explain-by.ts'
import type { Item } from './items.ts'
import { twinsOf } from './twins.ts'
import type { Knowledge } from './types.ts'

/** So many causes that fit best, and so many that help most, are tried with every other one. */
const FIRST = 5
/** So many pairs are worth a closer look. */
const CLOSER = 24

/** How well a cause accounts for what health does not: what it adds where it helps. */
function helpOf(one: Explanation, healthy: Explanation): number {
  return one.perItem.reduce(
    (sum, likelihood, place) =>
      sum + Math.max(0, Math.log(likelihood) - Math.log(healthy.perItem[place] ?? likelihood)),
    0,
  )
}

/** The best of each group that no reading tells apart. */
function unlike(groups: readonly (readonly string[])[], ordered: readonly Partner[]): Partner[] {
  const seen = new Set<unknown>()
  return ordered.filter(({ alone }) => {
    const [fault = ''] = alone.faults
    const group = groups.find((all) => all.includes(fault)) ?? fault
    if (seen.has(group)) return false
    seen.add(group)
    return true
  })
}

/**
 * Pairs of causes that may account for what was observed: those that fit best alone or help most, each with every
 * other cause, first at a few severities and the better ones at all.
 * @param knowledge of the circuit
 * @param singles every cause explained alone
 * @param healthy health as an explanation
 * @param items that were observed
 * @param prior weight of two causes before anything was observed
 * @returns the pairs that were looked at closely
 */
export function pairsOf(
  knowledge: Knowledge,
  singles: readonly Explanation[],
  healthy: Explanation,
  items: readonly Item[],
  prior: (faults: readonly string[]) => number,
): Explanation[] {
  // With a single observation there is nothing that two causes could share.
  if (items.length < 2) return []
  const partners = singles.map((alone): Partner => ({ alone, expected: expectedOf(knowledge, alone, items) }))
  const groups = twinsOf(knowledge)
  const best = (by: (one: Explanation) => number) =>
    unlike(
      groups,
      partners.toSorted((a, b) => by(b.alone) - by(a.alone)),
    ).slice(0, FIRST)
  const first = [
    ...new Set([...best(({ logLikelihood }) => logLikelihood), ...best((one) => helpOf(one, healthy))]),
  ]
  const fits = Math.max(healthy.logLikelihood, ...singles.map(({ logLikelihood }) => logLikelihood))
  return first
    .flatMap((one, place) =>
      partners
        .filter((other) => other !== one && !first.slice(0, place).includes(other))
        .map((other) => {
          const { faults, logLikelihood } = explainByTwo(knowledge, one, other, items, 2, fits)
          return { one, other, fit: logLikelihood + Math.log(prior(faults)) }
        }),
    )
    .filter(({ fit }) => Number.isFinite(fit))
    .toSorted((a, b) => b.fit - a.fit)
    .slice(0, CLOSER)
    .map(({ one, other }) => explainByTwo(knowledge, one, other, items, 1))
}
