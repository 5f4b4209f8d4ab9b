import { spoken } from './accepted.ts'
import { PRESSURE_AT_REST, TEMPERATURE_AT_REST } from './at-rest.ts'
import type { Rest } from './come-to-rest.ts'
import { LOWEST_FLASH } from '../heat/flash.ts'
import { calibrationOf } from './calibration.ts'
import { turning } from './carry.ts'
import { gasRatio } from './fields.ts'
import { filling } from './engine.ts'
import { inletNodes } from './governor.ts'
import type { ModelLink } from './model.ts'
import type { Situation } from './situation.ts'
import type { EngineState, GlassView, Remark } from './types.ts'

/** Vacuum at a pump from which on dissolved air begins to come out, share of the air's pressure. */
const AIR_COMES_OUT = 0.25
/** Gas in a pump's inlet from which on it rattles, and from which on it runs dry, share by volume. */
const RATTLES = 0.05
const RUNS_DRY = 0.9
/** Share of full flow from which on a safety valve counts as open. */
const OPEN_FROM = 0.02
/** Leaks from this flow on are seen. [m³/s] A drop a second. */
const DRIPS = 5e-8
const POWER_SHORT = 0.985
/** Less than this over the highest temperature is not told from it. [K] */
const HOTTER = 0.5
/** An engine that gets less than this share of the fuel that its state asks for does not go on turning. */
const STOPS_BELOW = 0.05

/**
 * What is worth a remark and is no reading.
 * @param situation of the state
 * @param rest fields at rest and leaks
 * @param engine its state
 * @param glasses as they look
 * @returns remarks with the part that they concern
 * @source common practice (the limits)
 */
export function remarksOn(
  situation: Situation,
  rest: Rest,
  engine: EngineState,
  glasses: readonly GlassView[],
): Remark[] {
  const { model } = situation
  const remarks: Remark[] = []
  model.links.forEach((link, place) => {
    if (link.role === 'pump') remarks.push(...pumpRemarks(situation, rest, link))
    if (link.role === 'spring-valve') remarks.push(...valveRemarks(situation, rest, link, place))
  })
  for (const { part, flow } of rest.leaks)
    if (flow > DRIPS)
      remarks.push({
        grade: 'stop',
        text: `Fuel leaks out at: ${model.parts[part]?.label}.`,
        part: model.parts[part]?.id ?? '',
      })
  return [
    ...remarks,
    ...waxRemarks(situation, rest),
    ...glassRemarks(situation, rest, glasses),
    ...returnRemarks(situation, rest),
    ...engineRemarks(situation, rest, engine),
    ...roughRemarks(rest),
  ]
}

/** Filters that fuel below its cloud point comes to; a heater melts what comes to it. */
function waxRemarks(situation: Situation, rest: Rest): Remark[] {
  const { model, fluid } = situation
  const { flow, temperature } = rest.fields
  const waxed = model.links.flatMap(({ role, part, from, to }, place) => {
    const before = temperature[(flow[place] ?? 0) < 0 ? to : from] ?? Infinity
    return role === 'filter' && model.parts[part]?.kind === 'filter' && before < fluid.cloudPoint
      ? [part]
      : []
  })
  const labels = waxed.map((part) => model.parts[part]?.label ?? '')
  const [first] = waxed
  if (first === undefined) return []
  return [
    {
      grade: 'attention',
      part: model.parts[first]?.id ?? '',
      text: `The fuel is colder than its cloud point, ${spoken(fluid.cloudPoint, { kind: 'temperature' })}: wax settles at: ${labels.join(', ')}. How fast it plugs them hangs on the fuel; what is shown is a guess at it.`,
    },
  ]
}

/** A state that hunts for long is taken when it moves so little that no instrument would tell. */
function roughRemarks({ within }: Rest): Remark[] {
  if (within <= 1) return []
  const pressure = spoken(within * PRESSURE_AT_REST, { kind: 'pressureDifference', unit: 'Pa' })
  const temperature = spoken(within * TEMPERATURE_AT_REST, { kind: 'temperatureDifference', unit: 'K' })
  return [
    {
      grade: 'note',
      text: `This state was found less exactly than others: its pressures still moved by up to ${pressure}, its temperatures by up to ${temperature}.`,
    },
  ]
}

function pumpRemarks(situation: Situation, rest: Rest, link: ModelLink): Remark[] {
  const { model, parameters, conditions } = situation
  const { fields } = rest
  const part = model.parts[link.part]
  const values = parameters.values[link.part]
  const speed = turning(situation, link.part)
  if (!part || !values || speed === 0) return []
  const about = { part: part.id }
  const inlet = fields.pressure[link.from] ?? 0
  const ratio = gasRatio(situation, fields, link.from, inlet)
  const gas = ratio / (1 + ratio)
  const remarks: Remark[] = []
  const dry = gas > RUNS_DRY
  if (dry) remarks.push({ ...about, grade: 'stop', text: `${part.label} runs dry.` })
  else if (gas > RATTLES)
    remarks.push({ ...about, grade: 'attention', text: `${part.label} rattles: it draws gas with the fuel.` })
  if (!dry && inlet < (1 - AIR_COMES_OUT) * conditions.airPressure)
    remarks.push({
      ...about,
      grade: 'attention',
      text: `The vacuum before ${part.label.toLowerCase()} is near where dissolved air comes out of the fuel.`,
    })
  const shaft =
    (((values.displacement * speed) / (2 * Math.PI)) * Math.max(0, (fields.pressure[link.to] ?? 0) - inlet)) /
    values.efficiency
  const motor = part.shaft === undefined ? part : model.parts[part.shaft]
  if (part.kind === 'motor-pump' && shaft > values.motorRating)
    remarks.push({
      grade: 'attention',
      part: motor?.id ?? part.id,
      text: `${motor?.label ?? part.label} is overloaded: it gives ${Math.round((100 * shaft) / values.motorRating)} % of its rated output.`,
    })
  return remarks
}

/** Only a valve that is shut in health gets a remark when it opens. */
function valveRemarks(situation: Situation, rest: Rest, link: ModelLink, place: number): Remark[] {
  const { model, parameters } = situation
  const part = model.parts[link.part]
  const values = parameters.values[link.part]
  if (!part || !values || calibrationOf(model).openValves.has(place)) return []
  if ((rest.fields.flow[place] ?? 0) < OPEN_FROM * values.fullFlow) return []
  return [{ grade: 'note', part: part.id, text: `${part.label} is open.` }]
}

/** Glasses in which the fuel is hotter than they, their seals and its vapour bear. */
function glassRemarks(situation: Situation, rest: Rest, glasses: readonly GlassView[]): Remark[] {
  const { model, parameters } = situation
  return model.parts.flatMap(({ id, label }, place): Remark[] => {
    const [ends, values] = [model.ends[place], parameters.values[place]]
    const glass = glasses.find(({ part }) => part === id)
    if (!ends || !values || !glass || glass.look === 'empty') return []
    const temperature = Math.max(...[ends.in, ends.out].map((node) => rest.fields.temperature[node] ?? 0))
    if (temperature < values.hottest + HOTTER) return []
    const [now, most] = [temperature, values.hottest].map((kelvin) => spoken(kelvin, { kind: 'temperature' }))
    return [
      {
        grade: 'attention',
        part: id,
        text: `The fuel in the ${label.toLowerCase()} is hotter than it may be: ${now} against ${most} at most.`,
      },
    ]
  })
}

function returnRemarks(situation: Situation, rest: Rest): Remark[] {
  const { model } = situation
  const hottest = model.nodes.reduce(
    (most, node, place) =>
      typeof node.fixed === 'number' && !node.mouth
        ? Math.max(most, rest.fields.temperature[place] ?? 0)
        : most,
    0,
  )
  // A heated tank of heavy fuel is hotter than gas oil may be.
  if (situation.fluid.density15 > 900 || hottest < LOWEST_FLASH) return []
  return [
    {
      grade: 'attention',
      text: 'The fuel comes back to the tank as hot as the lowest flash point of gas oil.',
    },
  ]
}

function engineRemarks(situation: Situation, rest: Rest, engine: EngineState): Remark[] {
  const { model, conditions, demand } = situation
  if (!demand.running) return []
  if (engine.burnt < STOPS_BELOW * demand.burnt)
    return [{ grade: 'stop', text: 'The engine stops: hardly any fuel reaches its cylinders.' }]
  const remarks: Remark[] = []
  const poor = inletNodes(situation).filter(
    (node) =>
      filling((rest.fields.pressure[node] ?? 0) - conditions.airPressure, model.engine.fillingPressure) <
      0.98,
  ).length
  const label = model.parts[model.injectors]
  if (poor > 0 && label)
    remarks.push({
      grade: 'attention',
      part: label.id,
      text: `At ${poor} of ${model.cylinders} cylinders the injector or pump does not fill: the pressure at its inlet is too low.`,
    })
  if (engine.wanted > 0 && engine.power < POWER_SHORT * engine.wanted)
    remarks.push({
      grade: 'attention',
      text: 'The engine does not reach its power with the rack at its stop.',
    })
  if (demand.load === 0 && engine.rack >= 1)
    remarks.push({ grade: 'stop', text: 'The engine does not keep its idle speed.' })
  return remarks
}
