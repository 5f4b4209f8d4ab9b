import type { PlantState } from '../../calculators/checks/types.ts'
import type { Observation } from '../../calculators/diagnosis/index.ts'
import type { Findings } from './types.ts'

export interface ToWorker {
  /** Address of what the ranking rests on. */
  readonly knowledge: string
  readonly observations: readonly Observation[]
  readonly now: PlantState
}

export type FromWorker =
  | { readonly findings: Findings }
  | { readonly failed: string }
