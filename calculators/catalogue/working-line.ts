import type { Step } from '../calculator/types.ts'
import type { KindId } from '../quantity/types.ts'

/** One line of the working; a plain number when no kind is given. */
export function line(
  label: string,
  symbol: string,
  rule: string,
  value: number,
  kind: KindId = 'ratio',
): Step {
  return { label, symbol, rule, value, kind }
}
