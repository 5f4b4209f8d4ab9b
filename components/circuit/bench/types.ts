import type { CircuitData, OperatingState } from '../../../calculators/circuit/types.ts'
import type { FaultData } from '../../../calculators/faults/types.ts'
import type { KindId } from '../../../calculators/quantity/types.ts'
import type { DrawnCircuit, DrawnConnection, DrawnElement } from '../types.ts'

/** A part as the bench draws it, works with it and tells of it. */
export type BenchElement = DrawnElement &
  CircuitData['elements'][number] & {
    readonly purpose: string
    readonly inHealth: string
    readonly article?: string | undefined
    readonly procedure?: string | undefined
  }

type Nets = 'elements' | 'junctions' | 'connections'

/** A circuit as it is drawn and as it is solved. */
export interface BenchCircuit extends Omit<DrawnCircuit, Nets>, Omit<CircuitData, Nets> {
  readonly elements: readonly BenchElement[]
  readonly junctions: readonly (DrawnCircuit['junctions'][number] & CircuitData['junctions'][number])[]
  readonly connections: readonly (DrawnConnection & CircuitData['connections'][number])[]
}

export interface BenchFault extends FaultData {
  readonly alsoCalled: readonly string[]
  readonly description: string
  readonly procedure: string
}

export interface BenchFuel {
  readonly id: string
  readonly title: string
  readonly densityAt15: string
  readonly viscosities: readonly { readonly temperature: string; readonly kinematicViscosity: string }[]
  readonly cloudPoint: string
}

/** All that a bench needs of one circuit: read at build time, kept as one file beside the page. */
export interface BenchData {
  readonly id: string
  readonly circuit: BenchCircuit
  readonly plant: string
  readonly invented: boolean
  readonly setPoints: Readonly<Record<string, { readonly kind: KindId; readonly value: string }>>
  readonly fuels: readonly BenchFuel[]
  readonly faults: readonly BenchFault[]
  /** Names of the states, and what runs in them. */
  readonly states: Readonly<Record<OperatingState, { readonly title: string; readonly words: string }>>
  /** Titles of the pages that parts and faults name, by their paths: 'circuit/the-two-valves'. */
  readonly pages: Readonly<Record<string, string>>
}

/** What a person sets on the bench; in SI. */
export interface Setting {
  readonly state: OperatingState
  readonly fuel: string
  readonly tankTemperature: number
  readonly ambientTemperature: number
  /** Share of the tank's depth. */
  readonly tankLevel: number
  /** Of the place over the sea, which sets the pressure of the air. */
  readonly height: number
  /** Severity, 0 to 1, of each fault that is switched on, by its id. */
  readonly faults: Readonly<Record<string, number>>
}

/** What the colour of the lines tells. */
export type Colouring = 'pressure' | 'temperature'

export interface BenchState {
  readonly setting: Setting
  readonly colouring: Colouring
  /** Id of the part that was chosen to read about. */
  readonly part?: string | undefined
}

/** A bench set to one subject, for an article. */
export interface Preset {
  readonly title: string
  readonly caption: string
  readonly setting: Setting
  /** Ids of the glasses and of the readings that are shown. */
  readonly glasses: readonly string[]
  readonly readings: readonly string[]
  /** What the person may change: conditions, and ids of faults. */
  readonly move: readonly string[]
}
