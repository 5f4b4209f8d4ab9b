export type Edge = 'sharp' | 'thick'

/** What a small restrictor's flow rests on. */
export interface Restrictor {
  /** C in turbulent flow. [-] */
  readonly coefficient: number
  /** Reynolds number on the bore at which the laminar and the turbulent line cross. [-] */
  readonly critical: number
}

/**
 * Our own range of C for a small drilled restrictor, far outside ISO 5167-2: low, middle and high. Sharp: a plate no
 * thicker than half its bore. Thick: a drilled plug one and a half to four bores long, in which the jet meets the wall
 * again. Common practice, no published source; the critical numbers 12 and 150 are those of hydraulic simulation.
 */
export const RESTRICTORS: Readonly<Record<Edge, { low: Restrictor; middle: Restrictor; high: Restrictor }>> =
  {
    sharp: {
      low: { coefficient: 0.58, critical: 150 },
      middle: { coefficient: 0.62, critical: 40 },
      high: { coefficient: 0.7, critical: 12 },
    },
    thick: {
      low: { coefficient: 0.7, critical: 1000 },
      middle: { coefficient: 0.8, critical: 300 },
      high: { coefficient: 0.86, critical: 100 },
    },
  }

/** The drop at which the laminar and the turbulent line cross. [Pa] */
function criticalDrop(restrictor: Restrictor, bore: number, density: number, viscosity: number): number {
  return (density / 2) * ((restrictor.critical * viscosity) / (restrictor.coefficient * bore)) ** 2
}

/**
 * Discharge coefficient of a small restrictor at a drop: constant in turbulent flow, falling with the root of the drop
 * in laminar flow, one smooth curve. [-]
 * @param restrictor turbulent C [-], critical Reynolds number [-]
 * @param bore [m], above 0
 * @param drop [Pa], 0 or more
 * @param density [kg/m³], above 0
 * @param kinematicViscosity [m²/s], above 0
 * @returns C, from 0 up to the turbulent one
 * @source orifice-smooth-transition, common practice (the coefficients)
 */
export function restrictorCoefficient(
  restrictor: Restrictor,
  bore: number,
  drop: number,
  density: number,
  kinematicViscosity: number,
): number {
  const share = drop / criticalDrop(restrictor, bore, density, kinematicViscosity)
  return restrictor.coefficient * Math.sqrt(share / Math.hypot(1, share))
}

/** Drop and flow at which the laminar and the turbulent line of a restrictor cross. */
export interface Crossing {
  /** [Pa] */
  readonly drop: number
  /** [m³/s] */
  readonly flow: number
}

/**
 * Where the laminar and the turbulent line of a small restrictor cross, from which its whole curve follows.
 * @param restrictor turbulent C [-], critical Reynolds number [-]
 * @param bore [m], above 0
 * @param pipe inside diameter before it [m], above the bore
 * @param density [kg/m³], above 0
 * @param kinematicViscosity [m²/s], above 0
 * @returns drop [Pa] and flow [m³/s] there
 * @source orifice-smooth-transition, common practice (the coefficients)
 */
function restrictorCrossing(
  restrictor: Restrictor,
  bore: number,
  pipe: number,
  density: number,
  kinematicViscosity: number,
): Crossing {
  const drop = criticalDrop(restrictor, bore, density, kinematicViscosity)
  const approach = 1 / Math.sqrt(1 - (bore / pipe) ** 4)
  const area = restrictor.coefficient * approach * (Math.PI / 4) * bore ** 2
  return { drop, flow: area * Math.sqrt((2 * drop) / density) }
}

/**
 * Drop over that at the crossing, from flow over that at the crossing. [-]
 * @param share of the flow [-], 0 or more
 * @returns x with x⁴/(1 + x²) = share⁴: the share itself in slow flow, its square in fast flow
 * @source orifice-smooth-transition
 */
function dropShare(share: number): number {
  // Written so that small shares lose no digits and large ones do not overflow.
  const square = share * share
  return share * Math.sqrt((square + Math.sqrt(square * square + 4)) / 2)
}

/**
 * Drop across a small restrictor at a flow, the exact inverse of the same curve. [Pa]
 * @param restrictor turbulent C [-], critical Reynolds number [-]
 * @param bore [m], above 0
 * @param pipe inside diameter before it [m], above the bore
 * @param flow [m³/s], 0 or more
 * @param density [kg/m³], above 0
 * @param kinematicViscosity [m²/s], above 0
 * @returns the drop
 * @source orifice-smooth-transition, common practice (the coefficients)
 */
export function restrictorDrop(
  restrictor: Restrictor,
  bore: number,
  pipe: number,
  flow: number,
  density: number,
  kinematicViscosity: number,
): number {
  const crossing = restrictorCrossing(restrictor, bore, pipe, density, kinematicViscosity)
  return crossing.drop * dropShare(flow / crossing.flow)
}
