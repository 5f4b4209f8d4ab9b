import { airThroughLeak, gasThroughInjector } from './gas.ts'
import type { Fields } from './fields.ts'
import type { Settling } from './settling.ts'
import type { Situation } from './situation.ts'

/**
 * Gas that comes in at each node at the pressures of now: air through holes, combustion gas through injectors.
 * @param situation of the state
 * @param fields pressures; gasIn is moved towards what they would let in
 * @param holes parts with a hole
 * @param settling how far it is moved at each node
 */
export function drawIn(
  situation: Situation,
  fields: Fields,
  holes: readonly number[],
  settling: Settling,
): void {
  const { model, parameters, topology, conditions, demand } = situation
  const { wanted } = settling
  wanted.fill(0)
  const add = (node: number, gas: number): void => {
    wanted[node] = (wanted[node] as number) + gas
  }
  for (const part of holes) {
    const node = topology.holeNode[part] as number
    const hole = parameters.values[part]?.airHole ?? 0
    const inside = fields.pressure[node] as number
    add(node, airThroughLeak(hole, conditions.airPressure, inside, conditions.ambientTemperature))
  }
  if (demand.running)
    for (const place of topology.passages) {
      const link = model.links[place]
      if (!link) continue
      const hole = parameters.ofCylinder('gasHole', link.place)
      if (hole > 0)
        add(link.to, gasThroughInjector(hole, demand.cylinderPressure, fields.pressure[link.to] as number))
    }
  settling.move(fields.gasIn)
}
