export type Place = readonly [x: number, y: number]
export type Turn = 0 | 90 | 180 | 270
export type LineKind = 'suction' | 'supply' | 'return' | 'drain' | 'gauge' | 'shaft'

/** What the drawing needs of an element; content/circuits holds more, for the list of the parts. */
export interface DrawnElement {
  readonly id: string
  readonly number?: number | undefined
  readonly symbol: string
  readonly count: number
  readonly label: string
  readonly at: Place
  readonly turn: Turn
  readonly labelAt: Place
  readonly labelAlign: 'start' | 'end'
  readonly labelWrap: number
  readonly note?: string | undefined
}

export interface DrawnConnection {
  readonly from: string
  readonly to: string
  readonly line: LineKind
  readonly via: readonly Place[]
  readonly name?: { readonly text: string; readonly at: Place } | undefined
}

export interface DrawnCircuit {
  readonly title: string
  readonly summary: string
  readonly size: { readonly width: number; readonly height: number }
  readonly elements: readonly DrawnElement[]
  readonly junctions: readonly { readonly id: string; readonly at: Place }[]
  readonly connections: readonly DrawnConnection[]
}

export interface SymbolProps {
  readonly turn: Turn
  readonly count: number
}
