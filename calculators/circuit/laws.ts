import type { Law } from '../hydraulics/network/net.ts'
import { checkValveLaw } from '../hydraulics/elements/check-valve.ts'
import { bypassedFilterLaw, filterLaw } from '../hydraulics/elements/filter.ts'
import { openingLaw } from '../hydraulics/elements/leak.ts'
import type { Liquid } from '../hydraulics/elements/liquid.ts'
import { partlyShutValveLaw } from '../hydraulics/elements/partly-shut-valve.ts'
import { pipeLaw } from '../hydraulics/elements/pipe.ts'
import { springValveLaw } from '../hydraulics/elements/spring-valve.ts'
import type { FilterResistance } from '../hydraulics/filter.ts'
import { explicitFriction, type ExplicitFriction } from '../hydraulics/friction-explicit.ts'
import { HOLE_COEFFICIENT, leakHole } from './gas.ts'
import type { Values } from './parameters.ts'

/** Drawn steel tube, a little used. [m] Common practice. */
const ROUGHNESS = 3e-5

/** A seat that holds still lets by this much for each pascal. [m³/(s·Pa)] Common practice: drops a minute. */
const SEAT = 1e-13

/** Backward pressure at which a foot valve's hole is taken as a straight leak. [Pa] */
const BACKWARD = 10e3

/** Density at which measured drops are split. [kg/m³] Common practice: gas oil. */
const MEASURED_DENSITY = 840

/** A glass is a short wide way with an entrance and an exit. [-] Common practice. */
const GLASS = { lengths: 4, losses: 1.5 } as const

/** Less than this share of a bore cannot be told from shut. [-] */
const SHUT = 1e-4

/** A drop that was measured at one flow and one viscosity, as a resistance. @source darcy-1856, iso-3968 */
export function measuredResistance(
  drop: number,
  flow: number,
  kinematicViscosity: number,
  inertialShare: number,
): FilterResistance {
  return {
    element: ((1 - inertialShare) * drop) / (kinematicViscosity * MEASURED_DENSITY * flow),
    housing: (inertialShare * drop) / (MEASURED_DENSITY * flow * flow),
  }
}

/** Filter, strainer or heater. @param waxed resistance of the elements by wax over that without [-] */
export function strainingLaw(values: Values, waxed: number, liquid: Liquid): Law {
  const { cleanDrop, flow, viscosity, inertialShare, loading = 1, elements = 1 } = values
  const { element, housing } = measuredResistance(cleanDrop, flow, viscosity, inertialShare)
  const open = Math.max(elements - (values.shutElements ?? 0), elements * SHUT)
  const resistance = { element: element * (elements / open), housing: housing * (elements / open) ** 2 }
  const leakPast = values.leakPast ?? 0
  if (leakPast > 0)
    return bypassedFilterLaw(resistance, loading * waxed, leakHole(leakPast), HOLE_COEFFICIENT, liquid)
  return filterLaw(resistance, loading * waxed, liquid)
}

/** Laws one behind the other at one flow. */
function inSeries(one: Law, other: Law): Law {
  return (flow, into) => {
    one(flow, into)
    const { drop, slope } = into
    other(flow, into)
    into.drop += drop
    into.slope += slope
  }
}

/** Worked out once for a part: its bore stays when fuel and flow change. */
const frictions = new WeakMap<Values, ExplicitFriction>()

function frictionIn(values: Values): ExplicitFriction {
  const known = frictions.get(values)
  if (known) return known
  const friction = explicitFriction(ROUGHNESS / values.bore)
  frictions.set(values, friction)
  return friction
}

/** Line or stretch of a header. @param length of it [m] @param losses loss coefficients in it [-] */
export function pipingLaw(
  values: Values,
  length: number,
  losses: number,
  opening: number,
  liquid: Liquid,
): Law {
  const { bore } = values
  const pipe = pipeLaw(
    { length, bore, roughness: ROUGHNESS, minorLosses: losses },
    liquid,
    frictionIn(values),
  )
  return opening >= 1 ? pipe : inSeries(pipe, partlyShutValveLaw(bore, Math.max(opening, SHUT), 0, liquid))
}

export const glassLaw = (values: Values, liquid: Liquid): Law =>
  pipingLaw(values, GLASS.lengths * values.bore, GLASS.losses, 1, liquid)

export const stopValveLaw = (values: Values, liquid: Liquid): Law =>
  partlyShutValveLaw(values.bore, Math.max(values.opening, SHUT), 0.2, liquid)

/** Wide open, the seat passes fuel as a hole of its bore. [-] Common practice. */
const SEAT_COEFFICIENT = 0.62

/**
 * How many times the stated full flow a valve passes before it is wide open.
 * @param cracking, override of it [Pa] @param fullFlow [m³/s] @param bore of the seat [m]
 */
function liftBeyond(
  cracking: number,
  override: number,
  fullFlow: number,
  bore: number,
  density: number,
): number {
  // Where the straight override line meets Q = C·A·√(2Δp/ρ).
  const hole = (2 * (SEAT_COEFFICIENT * (Math.PI / 4) * bore * bore) ** 2) / density / fullFlow ** 2
  return Math.max(1, (hole * override + Math.sqrt((hole * override) ** 2 + 4 * hole * cracking)) / 2)
}

export function springLoadedLaw(values: Values, liquid: Liquid): Law {
  const { fullFlowPressure, fullFlow, bore, seatLeak, springShare, heldOpen, heldShut } = values
  const cracking = values.cracking * springShare
  const override = fullFlowPressure - values.cracking
  const beyond = liftBeyond(cracking, override, fullFlow, bore, liquid.density)
  const lifts = 1 - heldShut
  return springValveLaw(
    {
      cracking,
      override: override * beyond,
      fullFlow: fullFlow * beyond * Math.max(lifts, SHUT),
      leakage: Math.min(seatLeak / values.cracking, 0.1 / fullFlowPressure) * fullFlow,
      stuckOpen: heldOpen,
      stuckShut: lifts < SHUT,
    },
    liquid,
  )
}

/** A check or foot valve; open, it costs what a short valve of its bore costs. */
export function flapLaw(values: Values, liquid: Liquid): Law {
  const { bore, cracking, leakBack } = values
  const area = (Math.PI / 4) * bore * bore
  const hole = leakBack > 0 ? leakHole(leakBack) : undefined
  const back = hole ? HOLE_COEFFICIENT * hole.area * Math.sqrt((2 * BACKWARD) / liquid.density) : 0
  return checkValveLaw({
    cracking,
    linear: (128 * liquid.density * liquid.kinematicViscosity * 2 * bore) / (Math.PI * bore ** 4),
    quadratic: (2 * liquid.density) / (2 * area * area),
    leakage: SEAT + back / BACKWARD,
  })
}

/** Slope where an injector is full, or stands: it takes no more, whatever the pressure. [Pa·s/m³] */
const TAKES_NO_MORE = 1e16

/**
 * What an injector takes in, between its inlet and the air: flow = metered × filling(pressure).
 * @param metered at good filling [m³/s], 0 or more
 * @param needed pressure from which on it fills [Pa]
 */
export function meteringLaw(metered: number, needed: number): Law {
  if (metered <= 0)
    return (flow, into) => {
      into.drop = flow * TAKES_NO_MORE
      into.slope = TAKES_NO_MORE
    }
  return (flow, into) => {
    const share = flow / metered
    // filling = s(2 − s), so that s = 1 − √(1 − filling), and no slope is above that of a full injector.
    const open = Math.sqrt(Math.max(0, 1 - share))
    const slope = open > 0 ? needed / (2 * metered * open) : TAKES_NO_MORE
    if (share <= 0) {
      // An injector sucks nothing in and gives nothing back.
      into.drop = flow * TAKES_NO_MORE
      into.slope = TAKES_NO_MORE
    } else if (slope < TAKES_NO_MORE) {
      into.drop = needed * (1 - open)
      into.slope = slope
    } else {
      into.drop = needed + (flow - metered) * TAKES_NO_MORE
      into.slope = TAKES_NO_MORE
    }
  }
}

/** A hole to the outside: fuel out, and next to none back in, since it is air that comes in. */
export function outwardLaw(diameter: number, liquid: Liquid): Law {
  const outward = openingLaw(leakHole(diameter), HOLE_COEFFICIENT, liquid)
  return (flow, into) => {
    if (flow >= 0) return outward(flow, into)
    into.drop = flow * TAKES_NO_MORE
    into.slope = TAKES_NO_MORE
  }
}

/** What a pump draws at its inlet, and how that answers to its flow, from its last state. */
export interface PumpInlet {
  /** Of all that turns over. [m³/s], above 0 */
  readonly displaced: number
  /** Slip for each pascal. [m³/(s·Pa)], above 0 */
  readonly slip: number
  /** Reference flow [m³/s] and absolute inlet pressure [Pa] of the last state, and the fall of the one with the other. */
  readonly lastFlow: number
  readonly lastPressure: number
  readonly fall: number
  /** Share of liquid in what fills the pump at a pressure [Pa]; it does not fall with pressure. */
  readonly liquidShare: (pressure: number) => number
}

/** Pressure step for the slope of the liquid's share. [Pa] */
const PRESSURE_STEP = 1

/**
 * A pump whose inlet may starve: displacement × speed × liquid share less slip, the share falling as flow draws the
 * inlet's pressure down. So there is always a flow that the suction side can pass.
 * @param pump its inlet
 * @param scale volume at the pump for each reference volume [-]
 */
export function starvingPumpLaw(pump: PumpInlet, scale: number): Law {
  const { displaced, slip, lastFlow, lastPressure, fall, liquidShare } = pump
  return (flow, into) => {
    const pressure = lastPressure - fall * (flow - lastFlow)
    const share = liquidShare(pressure)
    const perPascal = Math.max(0, (liquidShare(pressure + PRESSURE_STEP) - share) / PRESSURE_STEP)
    into.drop = (flow * scale - displaced * share) / slip
    into.slope = (scale + displaced * perPascal * fall) / slip
  }
}
