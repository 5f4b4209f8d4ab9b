import { operatingStates } from '../circuit/types.ts'
import type { GlassView } from '../circuit/types.ts'
import type { KindId } from '../quantity/types.ts'

/** In which state the plant can stand while it is checked; stopped: neither engine nor fuel pump turns. */
export const plantStates = ['stopped', ...operatingStates] as const

export type PlantState = (typeof plantStates)[number]

/** A glance at what hangs open, a gauge to be read with care, a hand on the plant, a spanner in it. */
export const checkKinds = ['glance', 'gauge', 'hand', 'spanner'] as const

export type CheckKind = (typeof checkKinds)[number]

/** What bringing the plant from one state to the next one costs. [min] */
export interface StateData {
  /** From the state before it in `plantStates`; 0 for the first. */
  readonly up: number
  /** From the state behind it in `plantStates`; 0 for the last. */
  readonly down: number
}

export type StatesData = Readonly<Record<PlantState, StateData>>

/** What an inspection says when one of these faults is there. */
export interface Find {
  /** Ids of faults. */
  readonly faults: readonly string[]
  readonly says: string
}

/** A check that one can make, as its data gives it. */
export interface CheckData {
  readonly id: string
  readonly label: string
  readonly kind: CheckKind
  /** Working time, apart from bringing the plant into the state. [min] */
  readonly minutes: number
  readonly states: readonly PlantState[]
  /** Ids of the circuits on which it can be made. */
  readonly circuits: readonly string[]
  /** Glasses that it looks at, by the id of the part. */
  readonly glasses: readonly string[]
  /** Readings that it takes, by id; 'exhaust-*' is every cylinder's. */
  readonly readings: readonly string[]
  /** Parts of which a hand tells whether fuel passes. */
  readonly feels: readonly string[]
  /** What it finds of the faults themselves. */
  readonly finds: readonly Find[]
  /** What it says where it finds none of them. */
  readonly otherwise?: string | undefined
}

/** A reading as its instrument gave it. [SI] */
export interface SeenReading {
  readonly id: string
  readonly label: string
  readonly kind: KindId
  readonly value: number
  readonly accuracy: number
  readonly atStop?: 'lowest' | 'highest'
}

/** A glass as it was seen. */
export interface SeenGlass extends GlassView {
  readonly label: string
  /** So much dirt that one cannot trust what it shows. */
  readonly dirty: boolean
}

/** A part that was felt. */
export interface FeltPart {
  readonly part: string
  readonly label: string
  readonly passes: boolean
}

/** What one check told. */
export interface CheckResult {
  readonly readings: readonly SeenReading[]
  readonly glasses: readonly SeenGlass[]
  readonly felt: readonly FeltPart[]
  /** Sentences of what an inspection found, or that it found nothing. */
  readonly says: readonly string[]
}
