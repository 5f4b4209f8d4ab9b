import { turbulentKv, valveReynolds, viscosityFactor, type Trim } from './valve-coefficient.ts'

/** What passes the valve, with the drop that counts: the drop itself, or the choked one where that is less. */
export interface ValveFlow {
  /** [m³/s] */
  readonly flow: number
  /** [Pa] */
  readonly effectiveDrop: number
  /** [kg/m³] */
  readonly density: number
  /** [m²/s] */
  readonly kinematicViscosity: number
}

const HALVINGS = 100

/** Root of a rising function between two bounds by halving their logarithms: it also holds where the formulas jump. */
function halve(rising: (x: number) => number, low: number, high: number): number {
  let [below, above] = [Math.log(low), Math.log(high)]
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (below + above) / 2
    if (rising(Math.exp(middle)) < 0) below = middle
    else above = middle
  }
  return Math.exp((below + above) / 2)
}

/**
 * Kv needed for a flow with the viscosity correction: the C for which C·F_R(C) is the turbulent C, solved by halving
 * instead of in steps. [m³/h at 1 bar]
 * @param passing flow [m³/s] above 0, drop that counts [Pa] above 0, density [kg/m³], viscosity [m²/s]
 * @param trim size [m], F_L [-], F_d [-]
 * @returns the coefficient; of a flow that several would pass, the least by the end of halving
 * @source iec-60534-2-1
 */
export function kvNeeded(passing: ValveFlow, trim: Trim): number {
  const turbulent = turbulentKv(passing.flow, passing.effectiveDrop, passing.density)
  const excess = (kv: number) =>
    kv * viscosityFactor(valveReynolds(passing.flow, passing.kinematicViscosity, kv, trim), kv, trim) -
    turbulent
  let most = turbulent * 2
  while (excess(most) < 0 && most < turbulent * 1e9) most *= 2
  return excess(turbulent) >= 0 ? turbulent : halve(excess, turbulent, most)
}

/**
 * Flow through a valve of known Kv, the inverse of kvNeeded. [m³/s]
 * @param kv coefficient [m³/h at 1 bar], above 0
 * @param effectiveDrop the drop, or the choked drop if that is less [Pa], above 0
 * @param density [kg/m³]
 * @param kinematicViscosity [m²/s], above 0
 * @param trim size [m], F_L [-], F_d [-]
 * @returns the flow
 * @source iec-60534-2-1
 */
export function flowOfKv(
  kv: number,
  effectiveDrop: number,
  density: number,
  kinematicViscosity: number,
  trim: Trim,
): number {
  const turbulent = kv / turbulentKv(1, effectiveDrop, density)
  const excess = (flow: number) =>
    flow - turbulent * viscosityFactor(valveReynolds(flow, kinematicViscosity, kv, trim), kv, trim)
  return excess(turbulent) <= 0 ? turbulent : halve(excess, turbulent * 1e-12, turbulent)
}

/**
 * Drop at which a valve of known Kv passes a flow, choking left aside. [Pa]
 * @param kv coefficient [m³/h at 1 bar], above 0
 * @param flow [m³/s], above 0
 * @param density [kg/m³]
 * @param kinematicViscosity [m²/s], above 0
 * @param trim size [m], F_L [-], F_d [-]
 * @returns the drop that counts; compare it with chokedDrop
 * @source iec-60534-2-1
 */
export function dropOfKv(
  kv: number,
  flow: number,
  density: number,
  kinematicViscosity: number,
  trim: Trim,
): number {
  const factor = viscosityFactor(valveReynolds(flow, kinematicViscosity, kv, trim), kv, trim)
  return (turbulentKv(flow, 1000, density) / (kv * factor)) ** 2 * 1000
}
