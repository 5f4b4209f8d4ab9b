import type { WaltherLine } from '../fuel/viscosity-walther.ts'
import type { ConditionRanges } from './condition-ranges.ts'
import type { Counted } from './line-flows.ts'
import type { PartKindId } from './part-kinds.ts'
import type { Values } from './parameters.ts'
import type { EngineFigure } from './types.ts'

/** All in SI. A part of the circuit; its pipes are parts of kind 'line'. */
export interface ModelPart {
  readonly id: string
  readonly label: string
  readonly kind: PartKindId
  readonly count: number
  /** Above the floor of the tank. [m] */
  readonly height: number
  readonly values: Values
  /** A gauge's tapping, a differential gauge's two (high, low): places in the list of nodes. */
  readonly tappings: readonly number[]
  /** A pump's motor, or the motor's pump: place in the list of parts. */
  readonly shaft?: number
}

export type Role =
  | 'pipe'
  | 'segment'
  | 'filter'
  | 'pump'
  | 'spring-valve'
  | 'check-valve'
  | 'glass'
  | 'stop-valve'
  | 'inlet-strainer'
  | 'passage'
  | 'metering'

/** A way of the fuel from node to node. */
export interface ModelLink {
  readonly id: string
  readonly role: Role
  /** Place in the list of parts. */
  readonly part: number
  readonly from: number
  readonly to: number
  /** Height of its end over its start. [m] */
  readonly rise: number
  /** 0 to the number of cylinders less 1; of a header's segments, which stretch it is. */
  readonly place: number
  /** Of the length of its part. [-] */
  readonly share: number
  /** What makes its part narrow lies in it; in a header that is the stretch towards the rest of the circuit. */
  readonly narrow: boolean
}

export interface ModelNode {
  readonly id: string
  readonly label: string
  /** Above the floor of the tank. [m] */
  readonly height: number
  /** What holds its pressure: a tank (place in the list of parts) or the cylinders. */
  readonly fixed?: number | 'cylinders'
  /** Of a tank's nodes: its suction, or where fuel comes back. */
  readonly mouth?: boolean
  /** Gas leaves the fuel here. */
  readonly vented?: boolean
}

/** Where a part's fuel comes in and goes out. */
export interface Ends {
  readonly in: number
  readonly out: number
  /** Its links, in the direction of the flow; what they carry together is what the part carries. */
  readonly links: readonly number[]
}

export interface ModelFuel {
  readonly id: string
  readonly title: string
  /** [kg/m³] */
  readonly density15: number
  readonly line: WaltherLine
  /** [K] */
  readonly cloudPoint: number
}

export interface CircuitModel {
  readonly title: string
  readonly engine: Readonly<Record<EngineFigure, number>>
  /** Where nobody chose other conditions. */
  readonly usual: {
    readonly fuel: string
    readonly tankTemperature: number
    readonly ambientTemperature: number
    readonly tankLevel: number
    readonly airPressure: number
  }
  /** What may be chosen of the conditions. */
  readonly ranges: ConditionRanges
  readonly fuels: Readonly<Record<string, ModelFuel>>
  readonly parts: readonly ModelPart[]
  readonly nodes: readonly ModelNode[]
  readonly links: readonly ModelLink[]
  /** By part; undefined for gauges, motors and the tank. */
  readonly ends: readonly (Ends | undefined)[]
  /** Node of each side of each connection, and the links that make up its flow; undefined where no fuel goes. */
  readonly connections: readonly (
    { readonly from: number; readonly to: number; readonly flow: readonly Counted[] } | undefined
  )[]
  /** Place of the injectors in the list of parts. */
  readonly injectors: number
  readonly cylinders: number
}
