import type { Law } from '../hydraulics/network/net.ts'
import { displacedFlow, slipAt, slipConstant } from '../hydraulics/slip.ts'
import { filterLaw } from '../hydraulics/elements/filter.ts'
import { withLift } from '../hydraulics/elements/lift.ts'
import type { Liquid } from '../hydraulics/elements/liquid.ts'
import { pumpLaw } from '../hydraulics/elements/pump.ts'
import { gasRatio, type Fields } from './fields.ts'
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
 * @param slopes of the laws at the flows of now [Pa·s/m³], by link
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
  const { model, parameters } = situation
  const { engine } = model
  if (link.role === 'metering') {
    const pressure = fields.pressure[link.from] as number
    const share = 1 / (1 + gasRatio(situation, fields, link.from, pressure))
    return meteringLaw((fields.metered[link.place] as number) * share, engine.fillingPressure)
  }
  if (link.role === 'pump') return drivenLaw(situation, fields, link, place, slopes)
  const fuel = mixtureIn(situation, fields, link, place)
  const rise = (model.nodes[link.to]?.height ?? 0) - (model.nodes[link.from]?.height ?? 0)
  return asReference(withLift(barrierLaw(situation, fields, link, fuel), fuel.density, rise), fuel.scale)

  function barrierLaw(here: Situation, now: Fields, one: ModelLink, liquid: Liquid): Law {
    const values = parameters.values[one.part]
    const injectors = here.parameters.values[model.injectors]
    if (!values || !injectors) throw new RangeError(`Link «${one.id}» has no part.`)
    switch (one.role) {
      case 'filter': {
        const temperature = now.temperature[one.from] as number
        const heated = model.parts[one.part]?.kind !== 'filter'
        return strainingLaw(
          values,
          heated ? 1 : waxedResistance(here.fluid.cloudPoint, temperature, values.opening),
          liquid,
        )
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
        const whole = one.id === model.parts[one.part]?.id
        const length = whole ? values.length : values.length / model.cylinders
        // A narrow place in a header is taken at its end towards the rest of the circuit.
        const narrow = whole || one.place === (isReturn(one) ? model.cylinders - 1 : 0)
        return pipingLaw(values.bore, length, values.branchLosses, narrow ? values.opening : 1, liquid)
      }
      case 'inlet-strainer':
      case 'passage': {
        const each = values.throughFlow / model.cylinders
        const resistance = (drop: number) =>
          measuredResistance(drop, each, values.viscosity, INJECTOR_INERTIA)
        if (one.role === 'inlet-strainer')
          return filterLaw(
            resistance(values.inletStrainerDrop),
            parameters.ofCylinder('inletLoading', one.place),
            liquid,
          )
        const passage = resistance(values.throughDrop)
        const filter = resistance(values.returnFilterDrop)
        const loading = parameters.ofCylinder('returnLoading', one.place)
        return filterLaw(
          {
            element: passage.element + loading * filter.element,
            housing: passage.housing + filter.housing,
          },
          1,
          liquid,
        )
      }
      default:
        return pipingLaw(values.bore, values.length, values.losses, values.opening, liquid)
    }
  }

  function isReturn(one: ModelLink): boolean {
    return one.id.startsWith('return-')
  }
}

/** Share of an injector's drops that goes with the square of the flow. [-] Common practice. */
const INJECTOR_INERTIA = 0.3

/** Below this the column tears rather than that its gas grows on; the pump's law says what still comes. [Pa] */
const TEARS = 10e3

function mixtureIn(situation: Situation, fields: Fields, link: ModelLink, place: number): Mixture {
  const { fluid, reference } = situation
  const ahead = fields.ahead[place] as number
  // A heater's drop is that of fuel half heated; elsewhere what comes in rules, whichever way it comes.
  const weight = link.role === 'filter' ? 0.5 : ahead
  const of = (from: number, to: number, share: number): number => share * from + (1 - share) * to
  const temperature = of(
    fields.temperature[link.from] as number,
    fields.temperature[link.to] as number,
    weight,
  )
  const density = fluid.density(temperature)
  const [before, behind] = [link.from, link.to].map((node) =>
    Math.max(TEARS, fields.pressure[node] as number),
  ) as [number, number]
  const gasFrom = (node: number): number =>
    (gasRatio(situation, fields, node, before) + gasRatio(situation, fields, node, behind)) / 2
  const gas = ahead === 1 ? gasFrom(link.from) : of(gasFrom(link.from), gasFrom(link.to), ahead)
  return {
    density: density / (1 + gas),
    // Dukler: dynamic viscosity falls as the liquid's share does, and so does density.
    kinematicViscosity: fluid.kinematicViscosity(temperature),
    scale: (reference / density) * (1 + gas),
  }
}

function asReference(law: Law, scale: number): Law {
  return (flow, into) => {
    law(flow * scale, into)
    into.slope *= scale
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
  const { parameters, fluid, reference, topology } = situation
  const values = parameters.values[link.part]
  if (!values) throw new RangeError(`Link «${link.id}» has no part.`)
  const temperature = fields.temperature[link.from] as number
  const density = fluid.density(temperature)
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
  const liquid = { density, kinematicViscosity: fluid.kinematicViscosity(temperature) }
  if (displaced <= 0) {
    const standing = { displacement: values.displacement, speed: 0, slip: constant, liquidShare: 1 }
    return asReference(pumpLaw(standing, liquid), reference / density)
  }
  let fall = 0
  for (const through of topology.drawsThrough.get(place) ?? []) fall += slopes[through] as number
  return starvingPumpLaw(
    {
      displaced,
      slip: slipAt(constant, 1, density * liquid.kinematicViscosity),
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
