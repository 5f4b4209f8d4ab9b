import { heatContent, specificHeat, temperatureOfContent } from '../heat/petroleum-heat.ts'
import { temperatureAlongLine } from '../heat/cooling.ts'
import { amountOfShare, airAtMouth, airOfDrainedLine, releasedGas, saturation, STAYS_FREE } from './gas.ts'
import type { Fields } from './fields.ts'
import { mostGas, pressureOfAir } from './fields.ts'
import { heatedContent } from './heating.ts'
import type { ModelLink } from './model.ts'
import type { Values } from './parameters.ts'
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

/**
 * Carries heat and gas along the flows, once round or, where fuel goes in a loop, until it no longer changes.
 * @param situation of the state
 * @param fields flows, pressures and gas that comes in; heat, temperature, bubbles and dissolved air are written
 * @returns the largest change of a temperature [K] that the last round made
 */
export function carry(situation: Situation, fields: Fields): number {
  const loops = situation.model.nodes.some((node) => node.vented)
  let change = 0
  for (let round = 0; round < (loops ? MOST_ROUNDS : 2); round++) {
    change = carryOnce(situation, fields)
    if (change < 1e-8) break
  }
  return change
}

function carryOnce(situation: Situation, fields: Fields): number {
  const { model, topology, fluid } = situation
  const handed: HandedOn = { heat: 0, bubbles: 0, dissolved: 0 }
  let largest = 0
  const keptInColumn = 1 - (columnOf(situation)?.vented ?? 1)
  for (const node of topology.order) {
    const here = model.nodes[node]
    if (here?.mouth) {
      fillAtMouth(situation, fields, node)
      continue
    }
    let [flow, heat, bubbles, dissolved] = [0, 0, 0, 0]
    for (const place of topology.at[node] ?? []) {
      const link = model.links[place] as ModelLink
      const into = link.to === node ? (fields.flow[place] as number) : -(fields.flow[place] as number)
      if (into <= NO_FLOW) continue
      handOn(situation, fields, link, place, handed)
      flow += into
      heat += into * handed.heat
      bubbles += into * handed.bubbles
      dissolved += into * handed.dissolved
    }
    if (flow <= 0) continue
    const temperature = temperatureOfContent(fluid.density15, heat / flow)
    const pressure = fields.pressure[node] as number
    largest = Math.max(largest, Math.abs(temperature - (fields.temperature[node] as number)))
    fields.heat[node] = heat / flow
    fields.temperature[node] = temperature
    const gas = (bubbles + (fields.gasIn[node] as number)) / flow
    fields.bubbles[node] = Math.min(here?.vented ? keptInColumn * gas : gas, mostGas(pressure, temperature))
    fields.dissolved[node] = dissolved / flow
  }
  return largest
}

/** The mixing column's figures; there is one at most. */
function columnOf({ model, parameters }: Situation): Values | undefined {
  return parameters.values[model.parts.findIndex(({ kind }) => kind === 'mixing-column')]
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
  const { model, fluid, reference, topology, parameters, conditions, demand } = situation
  const signed = fields.flow[place] as number
  const [start, end] = signed >= 0 ? [link.from, link.to] : [link.to, link.from]
  const massFlow = reference * Math.abs(signed)
  const temperature = fields.temperature[start] as number
  const values = parameters.values[link.part]
  out.heat = fields.heat[start] as number
  out.bubbles = fields.bubbles[start] as number
  out.dissolved = fields.dissolved[start] as number
  const rise = (model.nodes[end]?.height ?? 0) - (model.nodes[start]?.height ?? 0)
  const lost =
    (fields.pressure[start] as number) - (fields.pressure[end] as number) - reference * GRAVITY * rise
  const heatFlow = massFlow * specificHeat(fluid.density15, temperature)

  if (link.role === 'pump') {
    const turned = ((values?.displacement ?? 0) * turning(situation, link.part)) / (2 * Math.PI)
    const shaft = (turned * Math.max(0, -lost)) / (values?.efficiency ?? 1)
    out.heat += (shaft + lost * Math.abs(signed)) / (massFlow + (WALL_CONDUCTANCE * massFlow) / heatFlow)
    const ofAir = pressureOfAir(situation, fields.pressure[start] as number, temperature)
    const freed = STAYS_FREE * releasedGas(out.dissolved, saturation(ofAir, temperature, fluid.density15))
    out.bubbles += freed
    out.dissolved -= freed
    return
  }
  out.heat += Math.max(0, lost) / reference
  if (link.role === 'passage') {
    const cylinder = link.place
    const burnt = fields.metered[cylinder] as number
    const asked = situation.demand.burnt / model.cylinders
    const own = demand.running
      ? (demand.heat / model.cylinders) * Math.min(3, asked > 0 ? fuelOf(burnt) / asked : 1)
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
    const area = Math.PI * (values?.bore ?? 0) * lengthOf(link)
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

  /** As volume at 15 °C, in which the demand is counted. */
  function fuelOf(atTank: number): number {
    return (atTank * reference) / situation.usualFluid.density15
  }
  function lengthOf(one: ModelLink): number {
    const whole = values?.length ?? 0
    return one.role === 'segment' && one.id !== model.parts[one.part]?.id ? whole / model.cylinders : whole
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
