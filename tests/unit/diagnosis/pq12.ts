import { diagnose } from '../../../calculators/diagnosis/index.ts'
import { rank } from '../../../calculators/diagnosis/rank.ts'
import type { Observation } from '../../../calculators/diagnosis/types.ts'
import { checkStates } from '../../../calculators/terminal/content.ts'
import { knowledgeOf, signatureSource } from '../../../calculators/terminal/knowledge.ts'

export const knowledge = knowledgeOf('pq-12')
export const source = signatureSource('pq-12')

export const seen = (
  id: string,
  state: NonNullable<Observation['state']>,
  value: Observation['value'],
): Observation => ({ id, state, value })

/** Shares of the causes by id, with health and what is not in the list. */
export function sharesOf(observations: readonly Observation[], among = knowledge): Record<string, number> {
  const { causes, healthy, unknown } = rank(among, observations)
  return {
    ...Object.fromEntries(causes.map(({ fault, share }) => [fault, share])),
    healthy: healthy.share,
    unknown,
  }
}

/** Ids of the likeliest causes. */
export const likeliest = (observations: readonly Observation[], count: number): string[] =>
  rank(knowledge, observations)
    .causes.slice(0, count)
    .map(({ fault }) => fault)

/** The ranking in one sentence. */
export const verdict = (observations: readonly Observation[]): string =>
  diagnose(knowledge, observations, checkStates(), 'priming').verdict
