import { fastLogarithm, powerMinusNineTenths } from '../fast-logarithm.ts'
import { explicitFriction, SWAMEE_JAIN, type ExplicitFriction } from '../friction-explicit.ts'
import { LAMINAR_TO, TURBULENT_FROM } from '../friction.ts'
import { columnPressure } from '../hydrostatics.ts'
import type { Law } from '../network/net.ts'
import type { Pipe } from '../pipe.ts'
import type { Liquid } from './liquid.ts'

export interface PipeElement extends Pipe {
  /** Sum of the K₁ of the two-K method, which count in slow flow: K = K₁/Re + minor losses. [-] Default 0. */
  readonly slowLosses?: number
  /** Height of the end over the start. [m] Default 0. */
  readonly rise?: number
}

/**
 * Law of a full pipe: (f·L/D + ΣK)·ρv|v|/2 + ρ·g·rise, with the explicit factor of explicitFriction.
 * @param pipe length [m], bore [m] above 0, roughness [m], loss coefficients [-], rise [m]
 * @param liquid density [kg/m³], kinematic viscosity [m²/s]
 * @param friction of its relative roughness, from explicitFriction, where it is known already
 * @returns the law; from Re 4000 on within 3.5 % of the Colebrook–White drop of pipeFlow, under Re 2000 the same
 * @source darcy-weisbach, hagen-poiseuille, hooper-1981 (K₁), common practice (Swamee and Jain's factor)
 */
export function pipeLaw(
  pipe: PipeElement,
  liquid: Liquid,
  friction: ExplicitFriction = explicitFriction(pipe.roughness / pipe.bore),
): Law {
  const { length, bore, minorLosses, slowLosses = 0, rise = 0 } = pipe
  const { density, kinematicViscosity } = liquid
  const area = (Math.PI / 4) * bore ** 2
  const reynoldsPerFlow = bore / (area * kinematicViscosity)
  /** Velocity pressure over the square of the flow. [Pa·s²/m⁶] */
  const pressurePerSquare = density / (2 * area ** 2)
  const lengthwise = (pressurePerSquare * length) / bore
  const minor = pressurePerSquare * minorLosses
  const slow = (pressurePerSquare * slowLosses) / reynoldsPerFlow
  const laminar = (64 * lengthwise) / reynoldsPerFlow + slow
  const lift = columnPressure(density, rise)
  const laminarTo = LAMINAR_TO / reynoldsPerFlow
  const turbulentFrom = TURBULENT_FROM / reynoldsPerFlow
  const { wall, c0, c1, c2, c3 } = friction
  const { number, power, perFold } = SWAMEE_JAIN
  const bendConstant = -2 * power * perFold
  const smoothAtOne = number * powerMinusNineTenths(reynoldsPerFlow)

  return (flow, into) => {
    const size = Math.abs(flow)
    if (size <= laminarTo) {
      into.drop = lift + (laminar + minor * size) * flow
      into.slope = laminar + 2 * minor * size
      return
    }
    let factor: number
    /** d factor / d flow, times the flow. */
    let bend: number
    if (size < turbulentFrom) {
      const t = size / laminarTo
      factor = c0 + t * (c1 + t * (c2 + t * c3))
      bend = t * (c1 + t * (2 * c2 + 3 * t * c3))
    } else {
      const smooth = smoothAtOne * powerMinusNineTenths(size)
      const inside = wall + smooth
      const root = -perFold * fastLogarithm(inside)
      // factor = 1/root² and bend = −2 · 0.9 · perFold · smooth/(root³ · inside), by one division.
      const square = root * root
      const inverse = 1 / (square * root * inside)
      factor = root * inside * inverse
      bend = bendConstant * smooth * inverse
    }
    into.drop = lift + (slow + (lengthwise * factor + minor) * size) * flow
    into.slope = slow + (lengthwise * (2 * factor + bend) + 2 * minor) * size
  }
}
