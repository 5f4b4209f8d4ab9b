import { lossOfFittings, type Bill, type FittingMethod } from './fittings.ts'
import { pipeFlow, type PipeFlow } from './pipe.ts'

export interface Line {
  /** Straight length. [m] */
  readonly length: number
  /** Inside diameter of pipe and fittings. [m] */
  readonly bore: number
  /** [m] */
  readonly roughness: number
  readonly fittings: Bill
  readonly method: FittingMethod
  /** Loss coefficients that do not change with the flow: entrance, exit, and what a maker states. [-] */
  readonly fixedLoss: number
}

export interface LineFlow extends PipeFlow {
  /** ΣK of fittings, entrance and exit. [-] */
  readonly minorLosses: number
  /** Part of the drop that the straight pipe takes. [Pa] */
  readonly pipeDrop: number
}

/**
 * Pressure lost in a line of one bore with its fittings, laminar to turbulent: (f·L/D + ΣK)·ρv²/2.
 * @param line length [m], bore [m] above 0, roughness [m], fittings [-], fixed loss coefficients [-]
 * @param flow volume flow [m³/s], 0 or more
 * @param kinematicViscosity [m²/s], above 0
 * @param density [kg/m³]
 * @returns velocity [m/s], Reynolds number [-], Darcy factor [-], ΣK [-] and the drop with the pipe's part of it [Pa]; height is not in it
 * @source darcy-weisbach, hooper-1981, crane-tp410
 */
export function lineFlow(line: Line, flow: number, kinematicViscosity: number, density: number): LineFlow {
  const { length, bore, roughness } = line
  const bare = pipeFlow({ length, bore, roughness, minorLosses: 0 }, flow, kinematicViscosity, density)
  if (bare.reynolds === 0) return { ...bare, minorLosses: line.fixedLoss, pipeDrop: 0 }
  const minorLosses = line.fixedLoss + lossOfFittings(line.fittings, line.method, bare.reynolds, line.bore)
  const velocityPressure = (density * bare.velocity * Math.abs(bare.velocity)) / 2
  return {
    ...bare,
    minorLosses,
    pipeDrop: bare.drop,
    drop: bare.drop + minorLosses * velocityPressure,
  }
}
