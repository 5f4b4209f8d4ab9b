import { airThroughLeak } from './gas.ts'
import type { Fields } from './fields.ts'
import type { Situation } from './situation.ts'
import type { Conditions } from './types.ts'

/** A shut vent still breathes past the filler cap: this share of its bore's area. [-] Common practice. */
const PAST_THE_CAP = 1e-5

/** Less than this leaving is not told from none. [m³/s] */
const LEAST_LEAVING = 1e-12

/** A tank gives way, or its cap draws in air, before it is sucked below this share of the pressure outside. [-] */
const GIVES_WAY_AT = 0.5

/** The pressure is found within this. [Pa] */
const WITHIN = 1e-7

/** The logarithms of air and drop lie on a line that is all but straight: a few steps do. */
const MOST_STEPS = 60

/** How that line rises where air is fast. [-] */
const FIRST_RISE = 0.5

/**
 * Pressure on the fuel at which the vent lets in as much air as fuel leaves. [Pa]
 * @param situation of the state
 * @param fields flows of now
 * @returns the absolute pressure; that of the air outside where more comes back than leaves, and
 * never below half of it, where a tank gives way
 * @source air-orifice-table (flow through the vent), common practice (a shut vent's leakage)
 */
export function pressureUnderVent(situation: Situation, fields: Fields): number {
  const { model, parameters, conditions } = situation
  const tank = model.nodes.find(({ mouth }) => mouth)?.fixed
  const values = typeof tank === 'number' ? parameters.values[tank] : undefined
  if (!values) return conditions.airPressure
  let leaving = 0
  model.links.forEach(({ from, to }, place) => {
    const flow = fields.flow[place] as number
    if (typeof model.nodes[from]?.fixed === 'number') leaving += flow
    if (typeof model.nodes[to]?.fixed === 'number') leaving -= flow
  })
  if (leaving <= LEAST_LEAVING) return conditions.airPressure
  const bore = values.ventBore * Math.sqrt(Math.max(values.ventOpen, PAST_THE_CAP))
  return conditions.airPressure - dropAtVent(bore, leaving, conditions)
}

/**
 * Fall of pressure at which a vent lets in as much air as fuel leaves, by secants between two bounds. [Pa]
 * @param bore of the vent [m]
 * @param leaving fuel [m³/s], above 0
 */
function dropAtVent(bore: number, leaving: number, conditions: Conditions): number {
  const { airPressure, ambientTemperature, tankTemperature } = conditions
  /** Logarithm of the air that comes in over the fuel that leaves, by that of the drop. */
  const excess = (logarithm: number): number => {
    const inside = airPressure - Math.exp(logarithm)
    const air = airThroughLeak(bore, airPressure, inside, ambientTemperature)
    return Math.log((air * tankTemperature) / (inside * leaving))
  }
  let [low, high] = [Math.log(WITHIN), Math.log((1 - GIVES_WAY_AT) * airPressure)]
  let [at, found, rise] = [0, excess(0), FIRST_RISE]
  for (let step = 0; step < MOST_STEPS; step++) {
    if (found > 0) high = at
    else low = at
    const next = Math.min(high, Math.max(low, at - found / rise))
    if (Math.abs(Math.exp(next) - Math.exp(at)) <= WITHIN) return Math.exp(next)
    const there = excess(next)
    rise = (there - found) / (next - at)
    ;[at, found] = [next, there]
  }
  return Math.exp(at)
}
