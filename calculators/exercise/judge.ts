import { sameFaults } from './answers.ts'

/** Right: the hidden faults. Alike: a cause that no check tells from them. Partly: one of two. */
export type Verdict = 'right' | 'alike' | 'partly' | 'wrong'

/**
 * Whether the named causes are the hidden ones.
 * @param named ids of the faults that the person named [-]
 * @param hidden ids of the faults that are there [-]
 * @param alike the answers that no check tells from the hidden one, it included [-]
 * @source common practice
 */
export function judge(
  named: readonly string[],
  hidden: readonly string[],
  alike: readonly (readonly string[])[],
): Verdict {
  if (sameFaults(named, hidden)) return 'right'
  if (alike.some((answer) => sameFaults(named, answer))) return 'alike'
  return hidden.length > 1 && named.some((fault) => hidden.includes(fault)) ? 'partly' : 'wrong'
}
