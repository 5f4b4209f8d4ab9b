import type { Law } from '../network/net.ts'
import { displacedFlow, slipAt } from '../slip.ts'
import type { Liquid } from './liquid.ts'

export interface PumpElement {
  /** Volume a turn. [m³] */
  readonly displacement: number
  /** [rad/s], 0 when it stands */
  readonly speed: number
  /** Slip constant, which grows with wear. [m³], above 0 */
  readonly slip: number
  /** Share of liquid in what fills it; the rest is gas. [-], 0 to 1 */
  readonly liquidShare: number
}

/**
 * Law of a positive displacement pump from suction to discharge: displacement × speed × liquid share, less slip in
 * proportion to pressure rise over viscosity. Standing, it still lets the slip back.
 * @param pump displacement [m³], speed [rad/s], slip constant [m³] above 0, liquid share [-]
 * @param liquid density [kg/m³], kinematic viscosity [m²/s]
 * @returns the law; its drop is negative where the pump raises the pressure
 * @source iso-4391 (the term derived delivery), gear-pump-slip-model
 */
export function pumpLaw(pump: PumpElement, liquid: Liquid): Law {
  const derived = displacedFlow(pump.displacement, pump.speed) * pump.liquidShare
  const slope = 1 / slipAt(pump.slip, 1, liquid.density * liquid.kinematicViscosity)
  return (flow, into) => {
    into.drop = (flow - derived) * slope
    into.slope = slope
  }
}
