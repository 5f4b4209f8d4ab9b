import type { FieldSpecs } from '../calculator/fields.ts'
import type { FinderAction, FinderState } from './finder-state.ts'
import type { Asked } from './keys.ts'
import type { FinderOffer, FoundCauses, FoundNext } from './types.ts'

/** What every part of the form works with. */
export interface FinderShared {
  readonly htmlId: string
  readonly offer: FinderOffer
  readonly specs: FieldSpecs
  /** All that can be answered, by key. */
  readonly asked: ReadonlyMap<string, Asked>
  readonly state: FinderState
  readonly found: FoundCauses | undefined
  readonly next: FoundNext | undefined
  readonly send: (action: FinderAction) => void
}
