import type { Fluid } from './fluid.ts'
import { saturationForPascal } from './gas.ts'
import { sharesOf } from './room.ts'

/**
 * What of the fuel hangs on its temperature alone, kept by node: the laws of all links at a node, its gas and its
 * readings ask for it many times in a round, and it costs several exponentials.
 */
export interface FuelAtNodes {
  /** Temperature for which the next three were worked out; none yet where it is not a number. [K] */
  readonly temperature: Float64Array
  /** [kg/m³] */
  readonly density: Float64Array
  /** Absolute. [Pa] */
  readonly vapourPressure: Float64Array
  /** [1/K], from saturationForPascal */
  readonly saturationForPascal: Float64Array
  /** The same for the viscosity, which costs as much as those together and which no reading asks for. [K], [m²/s] */
  readonly viscousAt: Float64Array
  readonly kinematicViscosity: Float64Array
}

/**
 * Temperatures this near are one: a hundred-thousandth of what still counts as rest, and of a viscosity no more than its
 * tenth digit. [K]
 */
const ALIKE = 1e-9

/** Room for some nodes, nothing known yet. */
export function fuelAtNodes(count: number): FuelAtNodes {
  const take = sharesOf(new Float64Array(6 * count))
  return {
    temperature: take(count).fill(Number.NaN),
    density: take(count),
    vapourPressure: take(count),
    saturationForPascal: take(count),
    viscousAt: take(count).fill(Number.NaN),
    kinematicViscosity: take(count),
  }
}

/**
 * Works out density and what gas depends on, where they are not known yet at a node.
 * @param known where it is kept
 * @param fluid the same in every call
 * @param node its place
 * @param temperature of the fuel there [K]
 */
export function knowAt(known: FuelAtNodes, fluid: Fluid, node: number, temperature: number): void {
  if (Math.abs((known.temperature[node] as number) - temperature) < ALIKE) return
  known.temperature[node] = temperature
  known.density[node] = fluid.density(temperature)
  known.vapourPressure[node] = fluid.vapourPressure(temperature)
  known.saturationForPascal[node] = saturationForPascal(temperature, fluid.density15)
}

/** Viscosity at a node, worked out where it is not known yet; parameters as of knowAt. [m²/s] */
export function viscosityAt(known: FuelAtNodes, fluid: Fluid, node: number, temperature: number): number {
  if (Math.abs((known.viscousAt[node] as number) - temperature) < ALIKE)
    return known.kinematicViscosity[node] as number
  known.viscousAt[node] = temperature
  return (known.kinematicViscosity[node] = fluid.kinematicViscosity(temperature))
}
