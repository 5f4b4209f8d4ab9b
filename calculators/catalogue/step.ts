import type { Step } from '../calculator/types.ts'
import type { KindId } from '../quantity/types.ts'

/** One line of the working. */
export function step(label: string, symbol: string, rule: string, value: number, kind: KindId): Step {
  return { label, symbol, rule, value, kind }
}
