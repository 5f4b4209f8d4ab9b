import type { Evidence } from './evidence.ts'
import { explainByTwo, fitOfTwo, type Explanation } from './explain-by.ts'
import { statesOf } from './items.ts'
import { partnerOf, type Partner } from './rows.ts'
import { twinsOf } from './twins.ts'
import type { Knowledge } from './types.ts'

/** So many causes that fit best, and so many that help most, are tried with every other one. */
const FIRST = 5
/** So many pairs are worth a closer look. */
const CLOSER = 24

interface Candidate {
  readonly alone: Explanation
  readonly partner: Partner
  /** Logarithm of the number of cylinders of which the one that fits best was taken, so that none is had for nothing. */
  readonly chosen: number
}

/** How well a cause accounts for what health does not: what it adds where it helps. */
function helpOf(one: Explanation, healthy: Explanation): number {
  return one.perItem.reduce(
    (sum, likelihood, place) =>
      sum + Math.max(0, Math.log(likelihood) - Math.log(healthy.perItem[place] ?? likelihood)),
    0,
  )
}

/** The best of each group that no reading tells apart. */
function unlike(groups: readonly (readonly string[])[], ordered: readonly Candidate[]): Candidate[] {
  const seen = new Set<unknown>()
  return ordered.filter(({ partner: { fault } }) => {
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
 * @param evidence that was told
 * @param prior weight of two causes before anything was observed
 * @returns the pairs that were looked at closely
 */
export function pairsOf(
  knowledge: Knowledge,
  singles: readonly Explanation[],
  healthy: Explanation,
  evidence: readonly Evidence[],
  prior: (faults: readonly string[]) => number,
): Explanation[] {
  // With a single observation there is nothing that two causes could share.
  if (evidence.length < 2) return []
  const candidates = singles.map((alone): Candidate => {
    const { faults, cylinder } = alone
    return {
      alone,
      partner: partnerOf(knowledge.signatures, faults[0] ?? '', cylinder),
      chosen: cylinder === undefined ? 0 : Math.log(knowledge.signatures.cylinders),
    }
  })
  const groups = twinsOf(knowledge, statesOf(evidence.map(({ item }) => item)))
  const best = (by: (one: Explanation) => number) =>
    unlike(
      groups,
      candidates.toSorted((a, b) => by(b.alone) - by(a.alone)),
    ).slice(0, FIRST)
  const first = [
    ...new Set([...best(({ logLikelihood }) => logLikelihood), ...best((one) => helpOf(one, healthy))]),
  ]
  // What is least usual in health tells most: a pair that does not fit is given up the sooner.
  const telling = evidence
    .map((one, place) => ({ one, usual: (healthy.perItem[place] ?? 0) / one.most }))
    .toSorted((a, b) => a.usual - b.usual)
    .map(({ one }) => one)
  const fits = Math.max(healthy.logLikelihood, ...singles.map(({ logLikelihood }) => logLikelihood))
  return first
    .flatMap((one, place) =>
      candidates
        .filter((other) => other !== one && !first.slice(0, place).includes(other))
        .map((other) => ({
          one,
          other,
          fit:
            fitOfTwo(one.partner, other.partner, telling, fits) +
            Math.log(prior([one.partner.fault, other.partner.fault])) -
            one.chosen -
            other.chosen,
        })),
    )
    .filter(({ fit }) => Number.isFinite(fit))
    .toSorted((a, b) => b.fit - a.fit)
    .slice(0, CLOSER)
    .map(({ one, other }) => {
      const together = explainByTwo(one.partner, other.partner, evidence)
      return { ...together, logLikelihood: together.logLikelihood - one.chosen - other.chosen }
    })
}
