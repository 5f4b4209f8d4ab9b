import type { OperatingState } from '../circuit/types.ts'
import type { CheckData, PlantState, StateData } from '../checks/types.ts'
import type { FaultData } from '../faults/types.ts'
import type { KindId } from '../quantity/types.ts'

interface CommonObservable {
  readonly label: string
  readonly circuits: readonly string[]
}

/** Values that one chooses from, by id, each with what one sees or hears in words. */
type Words = Readonly<Record<string, string>>

/** The look of a sight glass; its id is that of the part. */
export interface GlassObservable extends CommonObservable {
  readonly from: 'glass'
  readonly states: readonly OperatingState[]
  readonly values: Words
  /** What a person says instead of what is there, with its share: looks → said instead → share. */
  readonly mistaken: Readonly<Record<string, Readonly<Record<string, number>>>>
}

/** An instrument; its id is that of the reading, 'exhaust-*' stands for each cylinder's. */
export interface ReadingObservable extends CommonObservable {
  readonly from: 'reading'
  readonly states: readonly OperatingState[]
  /** By how much sound plants of one kind differ among themselves, as a share of the value; one standard deviation. */
  readonly spread: number
  /** Where two causes together multiply its departures from health, as of a flow and a drop; else they add. */
  readonly together?: 'multiply' | undefined
  /** Set point of the plant above which the engine is not to be run to learn more. */
  readonly highest?: string | undefined
}

/** What a person says of the exhausts of all cylinders together, without their figures. */
export interface ExhaustsObservable extends CommonObservable {
  readonly from: 'exhausts'
  readonly states: readonly OperatingState[]
}

/** What a person tells and the model does not give: sounds, smoke, smell, leaks, history. */
export interface ToldObservable extends CommonObservable {
  readonly from: 'told'
  readonly values: Words
}

export type Observable = GlassObservable | ReadingObservable | ExhaustsObservable | ToldObservable

/** Shares with which each value is told. */
type Shares = Readonly<Record<string, number>>

/** Editorial estimate of what is told of a fault, where the model is silent. */
export interface Told {
  readonly otherwise: Shares
  readonly given: readonly {
    readonly faults: readonly string[]
    readonly shares: Shares
    readonly why: string
  }[]
}

/** Estimates that weigh causes against one another. */
export interface Weights {
  readonly frequency: Readonly<Record<FaultData['frequency'], number>>
  readonly healthy: number
  /** That what is there is none of the causes in the list. */
  readonly unknown: number
  /** That a second cause of a frequency is there beside the first. */
  readonly second: Readonly<Record<FaultData['frequency'], number>>
  /** Share of readings that are read off wrongly and may be anything. */
  readonly misread: number
  /** Share of inspections that find what is there, and that claim to find what is not. */
  readonly inspection: { readonly finds: number; readonly falseAlarm: number }
  /** Factor on the minutes of a check, by its kind: safety and access. */
  readonly effort: Readonly<Record<CheckData['kind'], number>>
  /** Causes and things told with which the engine is not to be run to learn more. */
  readonly doNotRun: NotWith
  /** Those with which the fuel pump is not to be run either. */
  readonly doNotPrime: NotWith
}

/** Causes by id, and things told with their values. */
export interface NotWith {
  /** That may be there. */
  readonly faults: readonly string[]
  /** That a check has found. */
  readonly found: readonly string[]
  readonly told: Readonly<Record<string, readonly string[]>>
}

/** What the model shows of one state at one severity. */
export interface Shown {
  /** In the order of the state's readings. [SI] */
  readonly readings: readonly number[]
  /** Ids of values, in the order of the circuit's glasses. */
  readonly glasses: readonly string[]
  /** In the order of the felt parts: whether fuel passes. */
  readonly felt: readonly boolean[]
}

export interface ReadingKey {
  readonly id: string
  readonly label: string
  readonly kind: KindId
  readonly accuracy: number
}

/** Health and every fault at every severity, in every state, of one circuit. */
export interface Signatures {
  readonly circuit: string
  /** Rising, from 0 (health) to 1. */
  readonly severities: readonly number[]
  readonly glasses: readonly string[]
  readonly felt: readonly string[]
  readonly cylinders: number
  /** Faults of a single cylinder → the one at which they were solved, 1 upward. */
  readonly atCylinder: Readonly<Record<string, number>>
  readonly states: Readonly<
    Record<OperatingState, { readonly readings: readonly ReadingKey[]; readonly health: Shown }>
  >
  /** Fault → state → one for each severity. */
  readonly faults: Readonly<Record<string, Readonly<Record<OperatingState, readonly Shown[]>>>>
}

/** What a ranking needs to know of a fault beside its signature. */
export type KnownFault = Pick<FaultData, 'id' | 'title' | 'frequency'>

/** A check with how it is made; cautions and procedure by id. */
export interface KnownCheck extends CheckData {
  readonly how: string
  readonly cautions: readonly string[]
  readonly procedure?: string | undefined
}

/** What bringing the plant into each state costs, with the cautions of the state by id. */
export type KnownStates = Readonly<Record<PlantState, StateData & { readonly cautions: readonly string[] }>>

/** All that a ranking rests on for one circuit. */
export interface Knowledge {
  readonly signatures: Signatures
  readonly faults: readonly KnownFault[]
  readonly observables: Readonly<Record<string, Observable>>
  readonly told: Readonly<Record<string, Told>>
  readonly checks: readonly KnownCheck[]
  readonly weights: Weights
  /** Readings that must not be exceeded on this plant, by id. [SI] */
  readonly highest: Readonly<Record<string, number>>
}

/** One thing that a person saw, read or found; what was not looked at is simply not there. */
export interface Observation {
  /** Id of a glass, a reading, a told observable, or of a check that was made. */
  readonly id: string
  readonly state?: OperatingState
  /** Id of a value, a reading [SI], or a word for it: 'lower', 'usual', 'higher'. */
  readonly value: string | number
  /** Unit in which a reading was told, where it is known. */
  readonly unit?: string
  /** That the person was asked whether the unit is right, and said that it is. */
  readonly sure?: boolean
}
