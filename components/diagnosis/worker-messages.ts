import type { PlantState } from '../../calculators/checks/types.ts'
import type { Observation } from '../../calculators/diagnosis/index.ts'
import type { Accuracies } from './accuracies.ts'
import type { FoundCauses, FoundNext } from './types.ts'

export interface ToWorker {
  /** Number of the question, which its answers bear; the newest wins. */
  readonly of: number
  /** Address of what the ranking rests on. */
  readonly knowledge: string
  readonly observations: readonly Observation[]
  /** Of instruments that are better or worse than the usual ones. */
  readonly accuracies: Accuracies
  readonly now: PlantState
}

/** The causes come first, since the next check takes longer and who answers does not wait for it. */
export type FromWorker =
  | { readonly of: number; readonly causes: FoundCauses }
  | { readonly of: number; readonly next: FoundNext }
  | { readonly of: number; readonly failed: string }
