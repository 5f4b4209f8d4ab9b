import type { CautionEntry } from './load.ts'

/** The signal words, the gravest first. */
export const signals = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE'] as const

/** Cautions in the order of what happens when nobody heeds them; within one signal word as given. */
export function gravestFirst(cautions: readonly CautionEntry[]): CautionEntry[] {
  return cautions.toSorted((a, b) => signals.indexOf(a.data.signal) - signals.indexOf(b.data.signal))
}
