import { heatContent, specificHeat, temperatureOfContent } from '../heat/petroleum-heat.ts'
import { temperatureAlongLine } from '../heat/cooling.ts'
import { amountOfShare, airAtMouth, airOfDrainedLine, releasedGas, saturation, STAYS_FREE } from './gas.ts'
import type { Fields } from './fields.ts'
import { mostGas, pressureOfAir } from './fields.ts'
import { knowAt } from './fuel-at-nodes.ts'
import { heatedContent } from './heating.ts'
import type { ModelLink } from './model.ts'
import type { Situation } from './situation.ts'
import { GRAVITY } from '../hydraulics/hydrostatics.ts'

/** Flows below this carry nothing that counts. [m³/s] About a drop in an hour. */
const NO_FLOW = 1e-11

/** Heat that bare lines pass to the surroundings, through still air. [W/(m²·K)] Common practice. */
const LINE_COEFFICIENT = 8

/** Conductance of a part's own wall, which keeps fuel that hardly moves from heating without end. [W/K] */
const WALL_CONDUCTANCE = 5

/** The metal of an injector is this much warmer than the fuel at most. [K] Common practice. */
const INJECTOR_WARMER = 100

/** What a link hands on to the node behind it. */
interface HandedOn {
  heat: number
  bubbles: number
  dissolved: number
}

/** Rounds after which the ways of a loop have handed on all there is; others need one. */
const MOST_ROUNDS = 400

/** What a round along all ways found. */
interface Round {
  /** Largest change of a temperature. [K] */
  change: number
  /** A node took fuel from one that comes after it in the drawing, and so what that held before the round. */
  backwards: boolean
}

/**
 * Carries heat and gas along the flows: once where all go the drawn way, twice where some go back, and where fuel goes
 * in a loop until it no longer changes.
 * @param situation of the state
 * @param fields flows, pressures and gas that comes in; heat, temperature, bubbles and dissolved air are written
 */
export function carry(situation: Situation, fields: Fields): void {
  const { loops } = situation.topology
  const found: Round = { change: 0, backwards: false }
  for (let round = 0; round < (loops ? MOST_ROUNDS : 2); round++) {
    carryOnce(situation, fields, found)
    if (!found.backwards || found.change < 1e-8) break
  }
}

function carryOnce(situation: Situation, fields: Fields, found: Round): void {
  const { model, topology, fluid, parameters } = situation
  const { rank } = topology
  const handed: HandedOn = { heat: 0, bubbles: 0, dissolved: 0 }
  found.change = 0
  found.backwards = false
  const keptInColumn = 1 - (parameters.values[topology.column]?.vented ?? 1)
  for (const node of topology.order) {
    const here = model.nodes[node]
    if (here?.mouth) {
      fillAtMouth(situation, fields, node)
      continue
    }
    let [flow, heat, bubbles, dissolved] = [0, 0, 0, 0]
    for (const place of topology.at[node] ?? []) {
      const link = model.links[place] as ModelLink
      const drawn = link.to === node
      const into = drawn ? (fields.flow[place] as number) : -(fields.flow[place] as number)
      if (into <= NO_FLOW) continue
      if ((rank[drawn ? link.from : link.to] as number) > (rank[node] as number)) found.backwards = true
      handOn(situation, fields, link, place, handed)
      flow += into
      heat += into * handed.heat
      bubbles += into * handed.bubbles
      dissolved += into * handed.dissolved
    }
    if (flow <= 0) continue
    const temperature = temperatureOfContent(fluid.density15, heat / flow)
    const pressure = fields.pressure[node] as number
    found.change = Math.max(found.change, Math.abs(temperature - (fields.temperature[node] as number)))
    fields.heat[node] = heat / flow
    fields.temperature[node] = temperature
    const gas = (bubbles + (fields.gasIn[node] as number)) / flow
    fields.bubbles[node] = Math.min(here?.vented ? keptInColumn * gas : gas, mostGas(pressure, temperature))
    fields.dissolved[node] = dissolved / flow
  }
}

function fillAtMouth(situation: Situation, fields: Fields, node: number): void {
  const { model, conditions, fluid, parameters } = situation
  const tank = model.nodes[node]?.fixed
  const values = typeof tank === 'number' ? parameters.values[tank] : undefined
  const cover = conditions.tankLevel * (values?.depth ?? 0) - (values?.mouth ?? 0)
  const share = 1 - (1 - airAtMouth(cover)) * (1 - (values?.churnedAir ?? 0))
  fields.temperature[node] = conditions.tankTemperature
  fields.heat[node] = heatContent(fluid.density15, conditions.tankTemperature)
  fields.bubbles[node] = amountOfShare(share, fields.onSurface, conditions.tankTemperature)
  fields.dissolved[node] = saturation(conditions.airPressure, conditions.tankTemperature, fluid.density15)
}

function handOn(situation: Situation, fields: Fields, link: ModelLink, place: number, out: HandedOn): void {
  const { model, fluid, reference, topology, parameters, conditions, demand, atNodes } = situation
  const signed = fields.flow[place] as number
  const ahead = signed >= 0
  const start = ahead ? link.from : link.to
  const end = ahead ? link.to : link.from
  const massFlow = reference * Math.abs(signed)
  const temperature = fields.temperature[start] as number
  const values = parameters.values[link.part]
  out.heat = fields.heat[start] as number
  out.bubbles = fields.bubbles[start] as number
  out.dissolved = fields.dissolved[start] as number
  const rise = ahead ? link.rise : -link.rise
  const lost =
    (fields.pressure[start] as number) - (fields.pressure[end] as number) - reference * GRAVITY * rise
  const heatFlow = massFlow * specificHeat(fluid.density15, temperature)

  if (link.role === 'pump') {
    const turned = ((values?.displacement ?? 0) * turning(situation, link.part)) / (2 * Math.PI)
    const shaft = (turned * Math.max(0, -lost)) / (values?.efficiency ?? 1)
    out.heat += (shaft + lost * Math.abs(signed)) / (massFlow + (WALL_CONDUCTANCE * massFlow) / heatFlow)
    knowAt(atNodes, fluid, start, temperature)
    const ofAir = pressureOfAir(fields.pressure[start] as number, atNodes.vapourPressure[start] as number)
    const saturated = (atNodes.saturationForPascal[start] as number) * ofAir
    const freed = STAYS_FREE * releasedGas(out.dissolved, saturated)
    out.bubbles += freed
    out.dissolved -= freed
    return
  }
  out.heat += Math.max(0, lost) / reference
  if (link.role === 'passage') {
    const cylinder = link.place
    // As volume at 15 °C, in which the demand is counted.
    const burntAt15 = ((fields.metered[cylinder] as number) * reference) / situation.usualFluid.density15
    const asked = situation.demand.burnt / model.cylinders
    const own = demand.running
      ? (demand.heat / model.cylinders) * Math.min(3, asked > 0 ? burntAt15 / asked : 1)
      : 0
    const warmer = own / heatFlow
    out.heat += own / massFlow / (1 + (warmer / INJECTOR_WARMER) ** 4) ** 0.25
    return
  }
  const kind = model.parts[link.part]?.kind
  if (kind === 'thermostat-heater' || kind === 'viscosity-heater') {
    if (values) out.heat = heatedContent(kind, values, fluid, out.heat, massFlow)
    return
  }
  if (link.role === 'pipe' || link.role === 'segment') {
    const area = Math.PI * (values?.bore ?? 0) * (values?.length ?? 0) * link.share
    const left = temperatureAlongLine(
      temperature,
      conditions.ambientTemperature,
      LINE_COEFFICIENT * area,
      heatFlow,
    )
    out.heat += heatContent(fluid.density15, left) - heatContent(fluid.density15, temperature)
    return
  }
  if (link.role === 'check-valve' && conditions.state === 'priming' && topology.onSuction[place]) {
    const share = airOfDrainedLine(values?.leakBack ?? 0)
    out.bubbles += amountOfShare(share, fields.pressure[end] as number, temperature)
  }
}

/** Speed of a pump [rad/s] in the state of now. */
export function turning(situation: Situation, part: number): number {
  const { model, parameters, conditions, demand } = situation
  const values = parameters.values[part]
  if (!values) return 0
  if (model.parts[part]?.kind === 'engine-pump') return demand.speed * values.speedRatio * values.speedShare
  return values.primingOnly > 0.5 && conditions.state !== 'priming' ? 0 : values.speed * values.speedShare
}
