import { columnPressure, GRAVITY } from './hydrostatics.ts'
import { lineFlow, type Line, type LineFlow } from './line.ts'

export interface SuctionSide {
  readonly line: Line
  /** Height of the pump's inlet over the surface of the fuel; negative where the tank stands higher. [m] */
  readonly lift: number
  /** Drop of the strainer at this flow and viscosity. [Pa] */
  readonly strainerDrop: number
  /** Absolute pressure on the fuel in the tank. [Pa] */
  readonly surfacePressure: number
}

export interface SuctionState {
  readonly flow: LineFlow
  /** Taken by the height. [Pa] */
  readonly liftPressure: number
  /** Turned into speed; a gauge at the pipe's wall shows it as vacuum too. [Pa] */
  readonly velocityPressure: number
  /** Absolute static pressure at the pump's inlet; negative where no liquid column can stand. [Pa] */
  readonly inletPressure: number
}

/**
 * Pressure at the pump's inlet: surface less lift, line, strainer and velocity.
 * @param side line from lineFlow, lift [m], strainer drop [Pa], surface pressure [Pa]
 * @param flow [m³/s], 0 or more
 * @param kinematicViscosity [m²/s], above 0
 * @param density [kg/m³]
 * @returns the parts and the absolute inlet pressure [Pa], for solid fuel: gas that comes out lowers it further
 * @source darcy-weisbach; the sum is Bernoulli's equation
 */
export function suctionState(
  side: SuctionSide,
  flow: number,
  kinematicViscosity: number,
  density: number,
): SuctionState {
  const inLine = lineFlow(side.line, flow, kinematicViscosity, density)
  const liftPressure = columnPressure(density, side.lift)
  const velocityPressure = (density * inLine.velocity ** 2) / 2
  const inletPressure =
    side.surfacePressure - liftPressure - inLine.drop - side.strainerDrop - velocityPressure
  return { flow: inLine, liftPressure, velocityPressure, inletPressure }
}

/**
 * Head above boiling that the suction side leaves to the pump, NPSH available. [m]
 * @param state from suctionState
 * @param vapourPressure of the fuel at its temperature [Pa], absolute
 * @param density [kg/m³], above 0
 * @returns total head at the inlet above the head of the vapour pressure; negative where the fuel boils
 * @source crane-tp410
 */
export function headAboveBoiling(state: SuctionState, vapourPressure: number, density: number): number {
  const total = state.inletPressure + state.velocityPressure
  return (total - vapourPressure) / (density * GRAVITY)
}

/**
 * Largest height of the pump over the fuel at which the inlet keeps a pressure. [m]
 * @param side as built, from suctionState; its lift does not count
 * @param flow [m³/s], 0 or more
 * @param kinematicViscosity [m²/s], above 0
 * @param density [kg/m³], above 0
 * @param least lowest absolute pressure wanted at the inlet [Pa]
 * @returns the lift; negative where the pump must stand below the surface by so much
 * @source darcy-weisbach
 */
export function largestLift(
  side: SuctionSide,
  flow: number,
  kinematicViscosity: number,
  density: number,
  least: number,
): number {
  const level = suctionState({ ...side, lift: 0 }, flow, kinematicViscosity, density)
  return (level.inletPressure - least) / (density * GRAVITY)
}

/** Losses go with the bore to a power between −3 and −6; this one in the middle brings every start home. */
const POWER = 4.5
const MOST_STEPS = 200

/**
 * Smallest bore at which the inlet keeps a pressure, pipe and fittings all of that bore. [m]
 * @param side as built, from suctionState; its bore is only the start of the search
 * @param flow [m³/s], above 0
 * @param kinematicViscosity [m²/s], above 0
 * @param density [kg/m³], above 0
 * @param least lowest absolute pressure wanted at the inlet [Pa]
 * @returns the bore; undefined where lift and strainer alone take more than there is, or no bore was found
 * @source darcy-weisbach
 */
export function smallestBore(
  side: SuctionSide,
  flow: number,
  kinematicViscosity: number,
  density: number,
  least: number,
): number | undefined {
  const allowed = side.surfacePressure - columnPressure(density, side.lift) - side.strainerDrop - least
  if (!(allowed > 0)) return undefined
  let bore = side.line.bore
  for (let step = 0; step < MOST_STEPS; step++) {
    const line = { ...side.line, bore }
    const { drop, velocity } = lineFlow(line, flow, kinematicViscosity, density)
    const change = ((drop + (density * velocity ** 2) / 2) / allowed) ** (1 / POWER)
    bore *= change
    if (Math.abs(change - 1) < 1e-12) return bore
  }
  return undefined
}
