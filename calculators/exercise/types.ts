import type { CheckResult, PlantState } from '../checks/types.ts'

/** A fault with how far it has gone, 0 to 1. */
export interface FaultAt {
  readonly fault: string
  readonly severity: number
}

/** A check in a state of the plant. */
export interface Move {
  readonly state: PlantState
  readonly check: string
}

/** What a person does: a check, or bringing the plant into a state to see what comes. */
export type Act = Move | { readonly state: PlantState; readonly check?: undefined }

/** A cause that can be named: one fault, or two at once. */
export interface Answer {
  /** Ids of faults, sorted. */
  readonly faults: readonly string[]
  /** How often it is met beside the others: an editorial estimate. */
  readonly weight: number
}

/** An answer within a range of severities; by its corners it is compared with what was seen. */
export interface Hypothesis {
  /** Place in the list of answers. */
  readonly answer: number
  readonly corners: readonly (readonly FaultAt[])[]
}

/** What a move told, and which hypotheses that leaves. */
export interface Told extends Move {
  readonly result: CheckResult
  /** What it would tell in health. */
  readonly health: CheckResult
  /** Bit n is set where hypothesis n is still possible. */
  readonly leaves: bigint
}

/** What every move of an exercise tells. */
export interface Knowledge {
  readonly start: PlantState
  readonly told: readonly Told[]
  /** Bits of each answer's hypotheses. */
  readonly masks: readonly bigint[]
  /** Bits of the hypotheses that the complaint leaves. */
  readonly open: bigint
}

/** A step of a way: what was done, what it cost and what it settled. */
export interface WayStep {
  readonly act: Act
  /** Bringing the plant into the state included. [min] */
  readonly minutes: number
  /** Minutes from the start, this step included. [min] */
  readonly total: number
  /** Places of the answers that this step ruled out. */
  readonly ruledOut: readonly number[]
  /** Places of the answers still possible after it. */
  readonly open: readonly number[]
}
