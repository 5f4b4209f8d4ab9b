import { filling, rackFor, type InjectorRates } from './engine.ts'
import { gasRatio, type Fields } from './fields.ts'
import { knowAt } from './fuel-at-nodes.ts'
import type { Settling } from './settling.ts'
import { calibrationOf } from './calibration.ts'
import type { Situation } from './situation.ts'

/** Nodes of the injector inlets, by cylinder. */
export function inletNodes(situation: Situation): readonly number[] {
  return situation.topology.inlets
}

/**
 * What every injector does with the pressure, temperature and gas at its inlet. [kg/s]
 * @param settling how far the metered fuel is moved
 * @param filled whether poor filling is taken off
 */
export function injectorRates(situation: Situation, fields: Fields, filled: boolean): InjectorRates {
  const { model, parameters, conditions, fluid, usualFluid, demand, atNodes } = situation
  const { engine, cylinders } = model
  const full = (engine.burntAtFull / cylinders) * usualFluid.density15 * (demand.speed / engine.ratedSpeed)
  const calibrated = calibrationOf(model).density
  const inlets = inletNodes(situation)
  if (!demand.running) {
    const none = inlets.map(() => 0)
    return { atFullRack: none, dripped: none }
  }
  const atFullRack: number[] = []
  const dripped: number[] = []
  inlets.forEach((node, place) => {
    const pressure = fields.pressure[node] as number
    const share = filled
      ? filling(pressure - conditions.airPressure, engine.fillingPressure) /
        (1 + gasRatio(situation, fields, node, pressure))
      : 1
    knowAt(atNodes, fluid, node, fields.temperature[node] as number)
    const density = (atNodes.density[node] as number) / calibrated
    atFullRack.push(full * density * (1 - parameters.ofCylinder('plungerLeak', place)) * share)
    dripped.push(full * parameters.ofCylinder('drip', place) * share)
  })
  return { atFullRack, dripped }
}

/**
 * Sets rack and metered fuel so that the power asked for is reached, as far as the rack goes.
 * @param situation of the state
 * @param fields pressure, temperature and gas at the injector inlets; rack and metered are written
 * @param settling how far the metered fuel is moved
 * @param filled whether poor filling counts; not before a pressure is known
 * @source common practice: a governor
 */
export function meter(situation: Situation, fields: Fields, settling: Settling, filled: boolean): void {
  const { fluid, usualFluid, demand, reference } = situation
  const wanted = demand.burnt * usualFluid.density15 * usualFluid.energy
  fields.rack = demand.running ? rackFor(injectorRates(situation, fields, filled), wanted, fluid) : 0
  const { atFullRack, dripped } = injectorRates(situation, fields, false)
  atFullRack.forEach((mass, place) => {
    settling.wanted[place] = (fields.rack * mass + (dripped[place] as number)) / reference
  })
  settling.move(fields.metered)
}
