import type { CheckKind, PlantState, StatesData } from '../../calculators/checks/types.ts'
import type { Act } from '../../calculators/exercise/types.ts'
import type { KindId } from '../../calculators/quantity/types.ts'

/** A caution as a line with a way to its full text. */
export interface CautionLine {
  readonly id: string
  readonly signal: string
  readonly title: string
}

/** A check as the page offers it. */
export interface CheckOffer {
  readonly id: string
  readonly label: string
  readonly kind: CheckKind
  readonly minutes: number
  readonly how: string
  readonly states: readonly PlantState[]
  /** What an inspection says that found nothing. */
  readonly otherwise?: string
  readonly cautions: readonly CautionLine[]
  readonly procedure?: { readonly title: string; readonly href: string }
}

/** A state of the plant as the page offers it. */
export interface StateOffer {
  readonly title: string
  readonly words: string
  readonly cautions: readonly CautionLine[]
}

/** A fault that can be named. */
export interface FaultName {
  readonly id: string
  readonly title: string
  readonly alsoCalled: readonly string[]
}

/** Labels of readings, glasses and parts by id, and the kinds of the readings. */
export type Labels = Readonly<Record<string, { readonly label: string; readonly kind?: KindId }>>

/** What all exercises on a circuit share: fetched once, when the first of them comes to life. */
export interface CircuitOffer {
  readonly checks: readonly CheckOffer[]
  readonly states: Readonly<Record<PlantState, StateOffer>>
  readonly stateMinutes: StatesData
  readonly faults: readonly FaultName[]
  readonly labels: Labels
  /** Address of the page that tells all cautions. */
  readonly cautionsHref: string
}

/** What an exercise has of its own. */
export interface OwnProps {
  readonly number: string
  readonly start: PlantState
  /** How many causes are hidden. */
  readonly hidden: number
  readonly hint: string
}

/** An exercise with all that it offers. */
export type ExerciseProps = CircuitOffer & OwnProps

/** What a person has done in an exercise. */
export interface Progress {
  readonly acts: readonly Act[]
  /** Causes named that were not right, as ids of faults, and after how many acts. */
  readonly tries: readonly { readonly named: readonly string[]; readonly after: number }[]
  /** How it ended. */
  readonly end?: 'right' | 'alike' | 'given up' | undefined
}
