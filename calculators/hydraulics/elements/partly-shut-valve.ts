import type { Law } from '../network/net.ts'
import { roundHole } from '../orifice-small.ts'
import type { Liquid } from './liquid.ts'
import { twoTermLaw } from './two-terms.ts'

/** The jet behind a sharp edge narrows to this share of the opening. [-] */
const CONTRACTION = 0.62

/**
 * Law of a hand valve or a squeezed hose that leaves a share of its bore open: the jet narrows behind the edge and loses
 * the difference to the speed in the pipe, (v_jet − v)²·ρ/2 (Borda and Carnot); creeping flow as through a hole.
 * @param bore of the pipe [m], above 0
 * @param opening share of the bore's area that is open [-], above 0 to 1
 * @param openLoss loss coefficient when wide open [-], 0 or more
 * @param liquid density [kg/m³], kinematic viscosity [m²/s]
 * @returns the law
 * @source sampson-1891, common practice (Borda and Carnot's loss; the contraction)
 */
export function partlyShutValveLaw(bore: number, opening: number, openLoss: number, liquid: Liquid): Law {
  const { density, kinematicViscosity } = liquid
  const area = (Math.PI / 4) * bore ** 2
  // Wide open there is no jet: the contraction fades out with the last part of the opening.
  const contraction = CONTRACTION + (1 - CONTRACTION) * opening ** 3
  const loss = (1 / (contraction * opening) - 1) ** 2 + openLoss
  const hole = roundHole(bore * Math.sqrt(opening), 0)
  return twoTermLaw(hole.resistance * density * kinematicViscosity, (loss * density) / (2 * area ** 2))
}
