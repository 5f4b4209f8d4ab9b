import type { CheckData, PlantState } from '../../calculators/checks/types.ts'
import type { OperatingState } from '../../calculators/circuit/types.ts'
import type { KnownStates, Knowledge, PackedSignatures, Tellable } from '../../calculators/diagnosis/index.ts'
import type { CautionLine, CheckOffer, StateOffer } from '../exercise/types.ts'

/** A page as a link. */
export interface Link {
  readonly title: string
  readonly href: string
}

/** A check with what it looks at, so that its answer can be given where it is proposed. */
export type CheckToMake = CheckOffer & Pick<CheckData, 'glasses' | 'readings' | 'feels'>

/** A cause as the page tells of it. */
export interface CauseOffer {
  readonly id: string
  readonly title: string
  readonly confirm: string
  readonly cautions: readonly CautionLine[]
  readonly procedure: Link
}

/** The symptom from which somebody comes, and what it leaves open. */
export interface StartOffer extends Link {
  /** Keys of the questions that it asks first. */
  readonly asks: readonly string[]
}

/** All that the form of one circuit needs; what the ranking rests on comes by another file. */
export interface FinderOffer {
  readonly circuit: string
  readonly title: string
  readonly invented: boolean
  readonly questions: readonly Tellable[]
  readonly checks: readonly CheckToMake[]
  readonly states: Readonly<Record<PlantState, StateOffer>>
  readonly causes: readonly CauseOffer[]
  readonly starts: Readonly<Record<string, StartOffer>>
  readonly cautionsHref: string
  /** Address of the bench of this circuit, on which a cause can be shown. */
  readonly benchHref: string
}

/** A circuit that can be chosen, with the files of it. */
export interface CircuitChoice {
  readonly id: string
  readonly title: string
  readonly offer: string
  readonly knowledge: string
}

/** What the ranking rests on, as it is shipped. */
export interface PackedKnowledge extends Omit<Knowledge, 'signatures'> {
  readonly signatures: PackedSignatures
  readonly states: KnownStates
}

/** Something that was told and cannot be right, at its field. */
export interface FoundDoubt {
  readonly key: string
  readonly says: string
  /** Whether it is settled by the person saying that the reading is right. */
  readonly mayStand: boolean
  /** What no such reading goes beyond. [SI] */
  readonly limit?: number
  readonly perhaps?: { readonly value: number; readonly because: string }
}

export interface FoundReason {
  /** Key of the question that was answered. */
  readonly key: string
  readonly label: string
  /** Logarithm of how much likelier it is with this cause than among all. */
  readonly weight: number
}

/** One cause, or those together that no reading tells apart. */
export interface FoundGroup {
  readonly share: number
  readonly causes: readonly { readonly fault: string; readonly share: number; readonly cylinder?: number }[]
  /** Of its likeliest cause, the weightiest first. */
  readonly reasons: readonly FoundReason[]
  /** Ids of checks that tell its causes apart. */
  readonly separating: readonly string[]
  /** Other states in which glasses and gauges tell some of them apart, and to which the plant may safely be brought. */
  readonly apartIn: readonly OperatingState[]
}

export interface FoundCheck {
  readonly check: string
  readonly state: PlantState
  readonly minutes: number
}

/** The causes that the worker has ranked: plain data, as it passes from one thread to another. */
export interface FoundCauses {
  readonly verdict: string
  readonly doubts: readonly FoundDoubt[]
  /** Keys of what no cause explains, or not together with the rest. */
  readonly unexplained: readonly string[]
  readonly groups: readonly FoundGroup[]
  readonly healthy: number
  readonly unknown: number
  readonly pairs: readonly { readonly faults: readonly string[]; readonly share: number }[]
}

/** The checks that are expected to tell most, the best first. */
export interface FoundNext {
  readonly checks: readonly FoundCheck[]
  /** Why the engine is not to be run to learn more. */
  readonly doNotRun?: string
}
