import type { Hypothesis } from './types.ts'

/** For each answer the bits of its hypotheses. */
export function answerMasks(hypotheses: readonly Pick<Hypothesis, 'answer'>[]): bigint[] {
  const masks: bigint[] = []
  for (const [place, { answer }] of hypotheses.entries())
    masks[answer] = (masks[answer] ?? 0n) | (1n << BigInt(place))
  return masks
}

/** Places of the answers of which a hypothesis is still possible. */
export function openAnswers(open: bigint, masks: readonly bigint[]): number[] {
  return masks.flatMap((mask, answer) => ((mask & open) === 0n ? [] : [answer]))
}
