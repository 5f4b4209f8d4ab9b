import { heatContent } from '../heat/petroleum-heat.ts'
import { knowAt } from './fuel-at-nodes.ts'
import { freeGas, saturation } from './gas.ts'
import { sharesOf } from './room.ts'
import type { Situation } from './situation.ts'

/** Fuel at each node, and what each link hands on; in place, since one state takes many rounds. */
export interface Fields {
  /** All the arrays that follow, side by side. */
  readonly all: Float64Array
  /** By node: heat content against 0 °C [J/kg] and temperature [K]. */
  readonly heat: Float64Array
  readonly temperature: Float64Array
  /** By node: gas that was once free, and air that the fuel brought dissolved. [Pa/K] */
  readonly bubbles: Float64Array
  readonly dissolved: Float64Array
  /** By node: absolute pressure. [Pa] */
  readonly pressure: Float64Array
  /** By link: flow as volume at the tank's temperature. [m³/s] */
  readonly flow: Float64Array
  /** By link of a pump that draws from a loop: pressure at its inlet as its law takes it, absolute. [Pa] */
  readonly drawnAt: Float64Array
  /** By link: how much of what is in it came the drawn way; between none and all only where hardly anything moves. [-] */
  readonly ahead: Float64Array
  /** By node of a hole: gas that comes in. [Pa·m³/(K·s)] */
  readonly gasIn: Float64Array
  /** By cylinder: what is metered at the rack of now, when it fills well; as volume at the tank's temperature. [m³/s] */
  readonly metered: Float64Array
  /** Absolute pressure on the fuel in the tanks [Pa] and position of the rack. */
  onSurface: number
  rack: number
}

/** Gas over liquid, by volume, where it is taken as gas alone. [-] */
const MOST_GAS = 999

/** The air's pressure in a bubble that is all but vapour [Pa], and its least share where little boils off. [-] */
const LEAST_PARTIAL = 1
const LEAST_SHARE = 0.2

/** Room for 6 arrays by node, 3 by link and one by cylinder, in that order. */
function arraysIn(all: Float64Array, nodes: number, links: number, cylinders: number) {
  const take = sharesOf(all)
  return {
    all,
    heat: take(nodes),
    temperature: take(nodes),
    bubbles: take(nodes),
    dissolved: take(nodes),
    pressure: take(nodes),
    gasIn: take(nodes),
    flow: take(links),
    drawnAt: take(links),
    ahead: take(links),
    metered: take(cylinders),
  }
}

/** Fields to begin with: fuel of the tank everywhere. */
export function coldFields(situation: Situation): Fields {
  const { model, conditions, fluid } = situation
  const { airPressure, tankTemperature } = conditions
  const { cylinders } = model
  const [nodes, links] = [model.nodes.length, model.links.length]
  const arrays = arraysIn(new Float64Array(6 * nodes + 3 * links + cylinders), nodes, links, cylinders)
  arrays.heat.fill(heatContent(fluid.density15, tankTemperature))
  arrays.temperature.fill(tankTemperature)
  arrays.dissolved.fill(saturation(airPressure, tankTemperature, fluid.density15))
  arrays.pressure.fill(airPressure)
  arrays.drawnAt.fill(airPressure)
  arrays.ahead.fill(1)
  return { ...arrays, onSurface: airPressure, rack: 0 }
}

/** A copy, so that a state can start from another one. */
export function copyOf({ all, heat, flow, metered, onSurface, rack }: Fields): Fields {
  return { ...arraysIn(all.slice(), heat.length, flow.length, metered.length), onSurface, rack }
}

/**
 * Pressure of the air in bubbles: that of the fuel less its vapour's, of which a fuel gives off no more than fills four
 * fifths of them. [Pa]
 * @param pressure absolute, of the fuel [Pa]
 * @param vapourPressure absolute, of the fuel at its temperature [Pa]
 * @source common practice (the bound)
 */
export function pressureOfAir(pressure: number, vapourPressure: number): number {
  return Math.max(LEAST_PARTIAL, LEAST_SHARE * pressure, pressure - vapourPressure)
}

/**
 * Gas over liquid by volume, of what a node hands on at a pressure. [-]
 * @param pressure absolute [Pa]
 */
export function gasRatio(situation: Situation, fields: Fields, node: number, pressure: number): number {
  const { fluid, atNodes } = situation
  const temperature = fields.temperature[node] as number
  knowAt(atNodes, fluid, node, temperature)
  const ofAir = pressureOfAir(pressure, atNodes.vapourPressure[node] as number)
  const free = freeGas(
    fields.bubbles[node] as number,
    fields.dissolved[node] as number,
    (atNodes.saturationForPascal[node] as number) * ofAir,
  )
  return Math.min(MOST_GAS, (free * temperature) / ofAir)
}

/** The most gas that goes with liquid at a pressure. [Pa/K] */
export const mostGas = (pressure: number, temperature: number): number =>
  (MOST_GAS * Math.max(LEAST_PARTIAL, pressure)) / temperature
