import { airThroughLeak } from './gas.ts'
import type { Fields } from './fields.ts'
import type { Situation } from './situation.ts'

/** A shut vent still breathes past the filler cap: this share of its bore's area. [-] Common practice. */
const PAST_THE_CAP = 1e-5

/** Less than this leaving is not told from none. [m³/s] */
const LEAST_LEAVING = 1e-12

/** A tank gives way, or its cap draws in air, before it is sucked below this share of the pressure outside. [-] */
const GIVES_WAY_AT = 0.5

/** Halvings of the range of pressure; each one gains a digit in base two. */
const HALVINGS = 50

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
  let [low, high] = [GIVES_WAY_AT * conditions.airPressure, conditions.airPressure]
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2
    const air = airThroughLeak(bore, conditions.airPressure, middle, conditions.ambientTemperature)
    if ((air * conditions.tankTemperature) / middle > leaving) low = middle
    else high = middle
  }
  return low
}
