import type { Law } from '../hydraulics/network/net.ts'
import { columnPressure } from '../hydraulics/hydrostatics.ts'
import { displacedFlow, slipAt, slipConstant } from '../hydraulics/slip.ts'
import { filterLaw } from '../hydraulics/elements/filter.ts'
import { liftedLaw } from '../hydraulics/elements/lift.ts'
import type { Liquid } from '../hydraulics/elements/liquid.ts'
import { pumpLaw } from '../hydraulics/elements/pump.ts'
import { gasRatio, type Fields } from './fields.ts'
import { knowAt, viscosityAt } from './fuel-at-nodes.ts'
import { turning } from './carry.ts'
import {
  flapLaw,
  glassLaw,
  measuredResistance,
  meteringLaw,
  pipingLaw,
  springLoadedLaw,
  starvingPumpLaw,
  stopValveLaw,
  strainingLaw,
} from './laws.ts'
import type { ModelLink } from './model.ts'
import type { Values } from './parameters.ts'
import type { Situation } from './situation.ts'
import { waxedResistance } from './wax.ts'

/** The least slip that a pump has, share of its displaced flow at the stated pressure. [-] */
const LEAST_SLIP = 1e-3

/** The fuel in a link as one mixture: liquid and gas move together. */
interface Mixture extends Liquid {
  /** Volume of the mixture for each reference volume of liquid. [-] */
  readonly scale: number
}

/**
 * Law of each link at the temperatures and the gas of now. Flow counts as reference volume, lift is in it.
 * @param situation of the state
 * @param fields temperature, gas and pressure at the nodes, flows of the links
 * @param slopes of the laws at the flows of now [Pa·s/m³], by link; only of those through which a pump draws
 * @returns the laws, in the order of the links
 * @source common practice (gas and liquid as one mixture; its viscosity after Dukler)
 */
export function linkLaws(situation: Situation, fields: Fields, slopes: Float64Array): Law[] {
  return situation.model.links.map((link, place) => linkLaw(situation, fields, link, place, slopes))
}

function linkLaw(
  situation: Situation,
  fields: Fields,
  link: ModelLink,
  place: number,
  slopes: Float64Array,
): Law {
  if (link.role === 'metering') return takingLaw(situation, fields, link)
  if (link.role === 'pump') return drivenLaw(situation, fields, link, place, slopes)
  const fuel = mixtureIn(situation, fields, link, place)
  const law = barrierLaw(situation, fields.temperature[link.from] as number, link, fuel)
  return liftedLaw(law, fuel.scale, columnPressure(fuel.density, link.rise))
}

/** What an injector takes in, less of it the more gas is in it. */
function takingLaw(situation: Situation, fields: Fields, { from, place }: ModelLink): Law {
  const share = 1 / (1 + gasRatio(situation, fields, from, fields.pressure[from] as number))
  return meteringLaw((fields.metered[place] as number) * share, situation.model.engine.fillingPressure)
}

/** @param before temperature of the fuel where it comes in [K] */
function barrierLaw(situation: Situation, before: number, link: ModelLink, liquid: Liquid): Law {
  const { model, parameters, fluid } = situation
  const values = parameters.values[link.part]
  if (!values) throw new RangeError(`Link «${link.id}» has no part.`)
  switch (link.role) {
    case 'filter': {
      const heated = model.parts[link.part]?.kind !== 'filter'
      const waxed = heated ? 1 : waxedResistance(fluid.cloudPoint, before, values.opening)
      return strainingLaw(values, waxed, liquid)
    }
    case 'spring-valve':
      return springLoadedLaw(values, liquid)
    case 'check-valve':
      return flapLaw(values, liquid)
    case 'glass':
      return glassLaw(values, liquid)
    case 'stop-valve':
      return stopValveLaw(values, liquid)
    case 'segment': {
      const length = values.length * link.share
      return pipingLaw(values, length, values.branchLosses, link.narrow ? values.opening : 1, liquid)
    }
    case 'inlet-strainer':
    case 'passage':
      return injectorLaw(situation, values, link, liquid)
    default:
      return pipingLaw(values, values.length, values.losses, values.opening, liquid)
  }
}

/** An injector's inlet strainer, or its passage with the return filter behind it. */
function injectorLaw(situation: Situation, values: Values, { role, place }: ModelLink, liquid: Liquid): Law {
  const { model, parameters } = situation
  const each = values.throughFlow / model.cylinders
  const resistance = (drop: number) => measuredResistance(drop, each, values.viscosity, INJECTOR_INERTIA)
  if (role === 'inlet-strainer')
    return filterLaw(
      resistance(values.inletStrainerDrop),
      parameters.ofCylinder('inletLoading', place),
      liquid,
    )
  const passage = resistance(values.throughDrop)
  const filter = resistance(values.returnFilterDrop)
  const element = passage.element + parameters.ofCylinder('returnLoading', place) * filter.element
  return filterLaw({ element, housing: passage.housing + filter.housing }, 1, liquid)
}

/** Share of an injector's drops that goes with the square of the flow. [-] Common practice. */
const INJECTOR_INERTIA = 0.3

/** Below this the column tears rather than that its gas grows on; the pump's law says what still comes. [Pa] */
const TEARS = 10e3

/** A value between those of two sides. @param share of the first [-] */
const between = (share: number, one: number, other: number): number => share * one + (1 - share) * other

/** Gas in a link that a node fills, in the middle of the pressures at its two ends. [-] */
function gasFrom(situation: Situation, fields: Fields, node: number, before: number, behind: number): number {
  return (gasRatio(situation, fields, node, before) + gasRatio(situation, fields, node, behind)) / 2
}

function mixtureIn(
  situation: Situation,
  fields: Fields,
  { role, from, to }: ModelLink,
  place: number,
): Mixture {
  const { fluid, reference, atNodes } = situation
  const ahead = fields.ahead[place] as number
  const before = Math.max(TEARS, fields.pressure[from] as number)
  const behind = Math.max(TEARS, fields.pressure[to] as number)
  const drawn = gasFrom(situation, fields, from, before, behind)
  const gas = ahead === 1 ? drawn : between(ahead, drawn, gasFrom(situation, fields, to, before, behind))
  let density: number
  let kinematicViscosity: number
  // A heater's drop is that of fuel half heated; elsewhere what comes in rules, whichever way it comes.
  if (ahead === 1 && role !== 'filter') {
    const temperature = fields.temperature[from] as number
    knowAt(atNodes, fluid, from, temperature)
    density = atNodes.density[from] as number
    kinematicViscosity = viscosityAt(atNodes, fluid, from, temperature)
  } else {
    const weight = role === 'filter' ? 0.5 : ahead
    const temperature = between(weight, fields.temperature[from] as number, fields.temperature[to] as number)
    density = fluid.density(temperature)
    kinematicViscosity = fluid.kinematicViscosity(temperature)
  }
  return {
    density: density / (1 + gas),
    // Dukler: dynamic viscosity falls as the liquid's share does, and so does density.
    kinematicViscosity,
    scale: (reference / density) * (1 + gas),
  }
}

/** A pump's law; one that stands lets its slip back and no more. */
function drivenLaw(
  situation: Situation,
  fields: Fields,
  link: ModelLink,
  place: number,
  slopes: Float64Array,
): Law {
  const { parameters, fluid, reference, topology, atNodes } = situation
  const values = parameters.values[link.part]
  if (!values) throw new RangeError(`Link «${link.id}» has no part.`)
  const temperature = fields.temperature[link.from] as number
  knowAt(atNodes, fluid, link.from, temperature)
  const density = atNodes.density[link.from] as number
  const kinematicViscosity = viscosityAt(atNodes, fluid, link.from, temperature)
  const displaced = displacedFlow(values.displacement, turning(situation, link.part))
  const stated = displacedFlow(
    values.displacement,
    'speed' in values && values.speed > 0
      ? values.speed
      : situation.model.engine.ratedSpeed * values.speedRatio,
  )
  const constant = slipConstant(
    Math.max(values.slip, LEAST_SLIP) * stated * values.wear,
    values.slipPressure,
    values.slipViscosity * STATED_DENSITY,
  )
  const liquid = { density, kinematicViscosity }
  if (displaced <= 0) {
    const standing = { displacement: values.displacement, speed: 0, slip: constant, liquidShare: 1 }
    return liftedLaw(pumpLaw(standing, liquid), reference / density, 0)
  }
  let fall = 0
  for (const through of topology.drawsThrough.get(place) ?? []) fall += slopes[through] as number
  return starvingPumpLaw(
    {
      displaced,
      slip: slipAt(constant, 1, density * kinematicViscosity),
      lastFlow: fields.flow[place] as number,
      lastPressure: topology.loopPumps.includes(place)
        ? (fields.drawnAt[place] as number)
        : (fields.pressure[link.from] as number),
      fall,
      liquidShare: (pressure) => 1 / (1 + gasRatio(situation, fields, link.from, pressure)),
    },
    reference / density,
  )
}

/** Density at which slip is stated. [kg/m³] Common practice: gas oil. */
const STATED_DENSITY = 840
