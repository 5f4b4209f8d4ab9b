import { darcyFactor } from './friction.ts'

export interface Pipe {
  /** [m] */
  readonly length: number
  /** Inside diameter. [m] */
  readonly bore: number
  /** Height of the wall's roughness. [m] */
  readonly roughness: number
  /** Sum of the loss coefficients of bends, fittings and valves. [-] */
  readonly minorLosses: number
}

export interface PipeFlow {
  /** Mean velocity. [m/s] */
  readonly velocity: number
  /** [-] */
  readonly reynolds: number
  /** Darcy factor; 0 without flow, where it has no meaning. [-] */
  readonly factor: number
  /** Loss of pressure along the flow, negative for a negative flow. [Pa] */
  readonly drop: number
}

/**
 * Pressure lost in a full pipe: Δp = (f·L/D + ΣK)·ρv²/2.
 * A constant loss coefficient is wrong in slow flow, under a Reynolds number of about 1000.
 * @param pipe length [m], bore [m] above 0, roughness [m], sum of loss coefficients [-]
 * @param flow volume flow [m³/s], either sign
 * @param kinematicViscosity [m²/s], above 0
 * @param density [kg/m³]
 * @returns velocity [m/s], Reynolds number [-], Darcy factor [-] and drop [Pa]; height is not part of it
 * @source darcy-weisbach, with the factor of darcyFactor
 */
export function pipeFlow(pipe: Pipe, flow: number, kinematicViscosity: number, density: number): PipeFlow {
  const velocity = flow / ((Math.PI / 4) * pipe.bore ** 2)
  const reynolds = (Math.abs(velocity) * pipe.bore) / kinematicViscosity
  if (reynolds === 0) return { velocity, reynolds, factor: 0, drop: 0 }
  const factor = darcyFactor(reynolds, pipe.roughness / pipe.bore)
  const losses = (factor * pipe.length) / pipe.bore + pipe.minorLosses
  return { velocity, reynolds, factor, drop: (losses * density * velocity * Math.abs(velocity)) / 2 }
}
