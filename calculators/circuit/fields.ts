import { heatContent } from '../heat/petroleum-heat.ts'
import { knowAt } from './fuel-at-nodes.ts'
import { freeGas, saturation } from './gas.ts'
import type { Situation } from './situation.ts'

/** Fuel at each node, and what each link hands on; in place, since one state takes many rounds. */
export interface Fields {
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

/** Fields to begin with: fuel of the tank everywhere. */
export function coldFields(situation: Situation): Fields {
  const { model, conditions, fluid } = situation
  const nodes = model.nodes.length
  const filled = (value: number, length = nodes): Float64Array => new Float64Array(length).fill(value)
  return {
    heat: filled(heatContent(fluid.density15, conditions.tankTemperature)),
    temperature: filled(conditions.tankTemperature),
    bubbles: filled(0),
    dissolved: filled(saturation(conditions.airPressure, conditions.tankTemperature, fluid.density15)),
    pressure: filled(conditions.airPressure),
    flow: filled(0, model.links.length),
    drawnAt: filled(conditions.airPressure, model.links.length),
    ahead: filled(1, model.links.length),
    gasIn: filled(0),
    metered: filled(0, model.cylinders),
    onSurface: conditions.airPressure,
    rack: 0,
  }
}

/** A copy, so that a state can start from another one. */
export function copyOf(fields: Fields): Fields {
  return {
    ...fields,
    heat: fields.heat.slice(),
    temperature: fields.temperature.slice(),
    bubbles: fields.bubbles.slice(),
    dissolved: fields.dissolved.slice(),
    pressure: fields.pressure.slice(),
    flow: fields.flow.slice(),
    drawnAt: fields.drawnAt.slice(),
    ahead: fields.ahead.slice(),
    gasIn: fields.gasIn.slice(),
    metered: fields.metered.slice(),
  }
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
