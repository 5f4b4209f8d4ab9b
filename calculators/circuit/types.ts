import type { KindId } from '../quantity/types.ts'
import type { PartKindId } from './part-kinds.ts'

export const operatingStates = ['priming', 'idle', 'part', 'full'] as const

/** Priming: engine stopped and pump on. Part: half the rated power. */
export type OperatingState = (typeof operatingStates)[number]

/** What surrounds the circuit; in SI. */
export interface Conditions {
  readonly state: OperatingState
  /** Id of a fuel. */
  readonly fuel: string
  readonly tankTemperature: number
  readonly ambientTemperature: number
  /** Share of the tank's depth, 0 to 1. */
  readonly tankLevel: number
  /** Absolute pressure of the air. [Pa] */
  readonly airPressure: number
}

/** Conditions that are figures. */
export type FigureCondition = Exclude<keyof Conditions, 'state' | 'fuel'>

/** A circuit as its data gives it, texts and drawing left out: figures are texts ('450 kPa') or ids of set points. */
export interface CircuitData {
  readonly title: string
  readonly engine: Readonly<Record<EngineFigure, string>>
  /** Figures of the conditions where nobody chose others. */
  readonly usual: {
    readonly fuel: string
    readonly tankTemperature: string
    readonly ambientTemperature: string
    readonly tankLevel: string
  }
  /** Least and largest of what may be chosen; outside of it the model gives no state. */
  readonly ranges: Readonly<Record<FigureCondition, readonly [string, string]>> & {
    /** Sentences that say why not beyond, where that is not plain. */
    readonly why?: Readonly<Partial<Record<FigureCondition, string | undefined>>> | undefined
  }
  readonly fuels: readonly string[]
  readonly elements: readonly {
    readonly id: string
    readonly label: string
    readonly count: number
    /** Height of its middle above the floor of the tank. */
    readonly height?: string | undefined
    readonly model: { readonly kind: PartKindId; readonly [parameter: string]: string }
  }[]
  readonly junctions: readonly { readonly id: string; readonly height: string }[]
  readonly connections: readonly {
    readonly from: string
    readonly to: string
    readonly line: 'suction' | 'supply' | 'return' | 'drain' | 'gauge' | 'shaft'
    /** A line with a length; without it the two ends are one place, and of one height. */
    readonly pipe?:
      { readonly id: string; readonly label: string; readonly [parameter: string]: string } | undefined
  }[]
}

/** Figures of the engine that a circuit serves. */
export const engineFigures = {
  ratedPower: 'power',
  ratedSpeed: 'rotationalSpeed',
  idleSpeed: 'rotationalSpeed',
  /** What all cylinders burn. */
  burntAtFull: 'volumeFlow',
  burntAtIdle: 'volumeFlow',
  /** Pressure at the injector inlets below which they no longer fill. */
  fillingPressure: 'gaugePressure',
  exhaustAtIdle: 'temperature',
  exhaustAtFull: 'temperature',
  /** Peak pressure in the cylinder at full load, which drives gas through a leaking injector. */
  cylinderPressure: 'gaugePressure',
} as const satisfies Record<string, KindId>

export type EngineFigure = keyof typeof engineFigures

/** The four looks of a glass. */
export type GlassLook = 'full and clear' | 'full with bubbles' | 'part full' | 'empty'

export interface GlassView {
  readonly part: string
  readonly look: GlassLook
  /** The look with what else is seen: 'empty', 'part full, running from above', 'full, rising from its drain'. */
  readonly words: string
  /** Share of the glass that fuel fills, 0 to 1. */
  readonly fill: number
  /** Gas as a share of the moving mixture, 0 to below 1. */
  readonly gas: number
  /** Where the fuel in a glass that is empty in health comes from. */
  readonly from: 'through' | 'valve' | 'drain' | 'none'
  /** Share of the view that dirt or haze takes, 0 to 1. */
  readonly dirt: number
  /** Water makes the fuel milky. */
  readonly milky: boolean
}

/** One line of what instruments and eyes give. */
export interface Reading {
  /** 'header-gauge', 'return-flow', 'power', 'exhaust-7': stable, used in addresses and in rankings. */
  readonly id: string
  readonly label: string
  readonly kind: KindId
  /** What the instrument shows: true value, gauge height, error and stops included. [SI] */
  readonly value: number
  /** What the instrument may be off by. [SI] */
  readonly accuracy: number
  /** Part whose reading it is; absent for the engine as a whole. */
  readonly part?: string
  /** It rests at one of its stops. */
  readonly atStop?: 'lowest' | 'highest'
}

/** The fuel at one place. */
export interface FlowPoint {
  /** [Pa] absolute */
  readonly pressure: number
  /** [K] */
  readonly temperature: number
  /** Free gas as a share of the mixture by volume, 0 to below 1. */
  readonly gas: number
}

export interface PartState {
  readonly id: string
  readonly kind: PartKindId
  readonly label: string
  /** Liquid flow through it, along the drawn direction; as volume at the tank's temperature, so that flows add up. [m³/s] */
  readonly flow: number
  readonly in: FlowPoint
  readonly out: FlowPoint
}

export interface LineState {
  /** Index in the data's connections. */
  readonly connection: number
  readonly flow: number
  readonly from: FlowPoint
  readonly to: FlowPoint
}

export interface EngineState {
  /** [W] */
  readonly power: number
  /** Rack over its position at full load in health, 0 to 1. */
  readonly rack: number
  /** What the state asks for. [W] */
  readonly wanted: number
  /** Exhaust temperature of each cylinder [K]; empty while the engine stands. */
  readonly exhaust: readonly number[]
  /** Fuel burnt in all. [m³/s] */
  readonly burnt: number
}

/** A remark on the state that is no reading: an overloaded motor, a pump that runs dry, a tank near the flash point. */
export interface Remark {
  readonly grade: 'note' | 'attention' | 'stop'
  readonly text: string
  readonly part?: string
}

export interface CircuitState {
  readonly ok: true
  readonly conditions: Conditions
  readonly readings: readonly Reading[]
  readonly glasses: readonly GlassView[]
  readonly parts: readonly PartState[]
  readonly lines: readonly LineState[]
  readonly engine: EngineState
  /** Fuel that leaves through holes, by part; none where there is no hole. [m³/s] */
  readonly leaks: readonly { readonly part: string; readonly flow: number }[]
  readonly remarks: readonly Remark[]
  /** Bare hydraulic solutions that it took, and the residual of the last. [m³/s] */
  readonly effort: { readonly solutions: number; readonly residual: number }
}

export interface NoState {
  readonly ok: false
  /** What did not come to rest, where, and what to change; with labels of parts. */
  readonly reason: string
}

/** A parameter of a part, of one cylinder's where `cylinder` is given, as a fault leaves it. [SI] */
export interface BentParameter {
  readonly part: string
  readonly parameter: string
  /** 1 to the number of cylinders. */
  readonly cylinder?: number
  readonly value: number
}

/** What faults do to the fuel itself and to what surrounds the circuit. */
export interface BentConditions {
  readonly tankLevel?: number
  readonly tankTemperature?: number
  /** Id of the fuel that was delivered instead. */
  readonly fuel?: string
  /** Share of a thinner fuel (petrol or kerosene) mixed in, 0 to 0.5. */
  readonly thinned?: number
  /** Free water, share by volume, 0 to 0.2. */
  readonly water?: number
}
