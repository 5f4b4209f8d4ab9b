/** Pressure lost along a link at a flow, and its derivative; written in place so that a solve allocates nothing. */
export interface Loss {
  /** Pressure at the start of the link less that at its end. [Pa] */
  drop: number
  /** d drop / d flow, 0 or more. [Pa·s/m³] */
  slope: number
}

/**
 * Fills in the loss at a flow [m³/s], for any finite flow of either sign. Strictly rising in flow, without jumps; kinks
 * are allowed. Lift is part of it: drop = friction − ρ·g·(height of the start − height of the end).
 */
export type Law = (flow: number, into: Loss) => void

export interface Link {
  readonly id: string
  /** Places in the list of nodes. Flow counts as positive from the one to the other. */
  readonly from: number
  readonly to: number
  readonly law: Law
  /** Flow to begin with. [m³/s] */
  readonly first?: number
}

export interface Node {
  readonly id: string
  /** Fixed static pressure [Pa]; absent: to be found. */
  readonly pressure?: number
  /** Flow taken out here. [m³/s] */
  readonly outflow?: number
}

export interface Net {
  readonly nodes: readonly Node[]
  readonly links: readonly Link[]
}
