import type { Fluid } from './fluid.ts'
import type { CircuitModel } from './model.ts'
import type { OperatingState } from './types.ts'

/** Share of the rated power that each state asks for. */
const loadOf: Readonly<Record<OperatingState, number>> = { priming: 0, idle: 0, part: 0.5, full: 1 }

/** Fuel that drips in unasked burns late: half of it goes into power. Common practice. */
const DRIPPED_POWER = 0.5

/** What a state asks of the engine. */
export interface Demand {
  readonly running: boolean
  /** 0 at idle to 1 at full load. */
  readonly load: number
  /** [rad/s] */
  readonly speed: number
  /** Fuel for it with the usual fuel in health, of all cylinders, at 15 °C. [m³/s] */
  readonly burnt: number
  /** Heat that the fuel picks up from all injectors, if all burn alike. [W] */
  readonly heat: number
  /** Absolute peak pressure in the cylinders. [Pa] */
  readonly cylinderPressure: number
}

/** The cylinder's peak pressure at idle over that at full load: compression alone. Common practice. */
const PEAK_AT_IDLE = 0.4

/**
 * What a state asks of the engine; between idle and full load fuel, heat and peak pressure go straight with power.
 * @source common practice (Willans line)
 */
export function demandOf(
  model: CircuitModel,
  state: OperatingState,
  airPressure: number,
  heat: { readonly atIdle: number; readonly atFull: number },
): Demand {
  const { engine } = model
  const load = loadOf[state]
  const between = (low: number, high: number): number => low + load * (high - low)
  if (state === 'priming')
    return { running: false, load, speed: 0, burnt: 0, heat: 0, cylinderPressure: airPressure }
  return {
    running: true,
    load,
    speed: state === 'idle' ? engine.idleSpeed : engine.ratedSpeed,
    burnt: between(engine.burntAtIdle, engine.burntAtFull),
    heat: between(heat.atIdle, heat.atFull),
    cylinderPressure: airPressure + engine.cylinderPressure * between(PEAK_AT_IDLE, 1),
  }
}

/**
 * Share of its charge that an injector takes in.
 * @param gauge pressure at its inlet against the air [Pa]
 * @param needed pressure from which on it fills [Pa]
 * @returns 1 from there on, falling to 0 without pressure
 * @source common practice, no published source
 */
export function filling(gauge: number, needed: number): number {
  const share = Math.min(1, Math.max(0, gauge / needed))
  return share * (2 - share)
}

/** What one injector does at a rack of 1, and what it adds unasked; all as mass flow. [kg/s] */
export interface InjectorRates {
  readonly atFullRack: readonly number[]
  readonly dripped: readonly number[]
}

/**
 * Rack at which the energy burnt is what the state asks for.
 * @param rates of the injectors [kg/s], what the rack meters already lessened by poor filling and leakage
 * @param wanted energy of the fuel that the state asks for [W]
 * @param fluid fuel in the circuit
 * @returns the rack, 0 to 1: at 1 it rests on its stop and the power is not reached
 * @source common practice: a governor
 */
export function rackFor(rates: InjectorRates, wanted: number, fluid: Fluid): number {
  const sum = (list: readonly number[]): number => list.reduce((total, value) => total + value, 0)
  const metered = sum(rates.atFullRack)
  if (!(metered > 0)) return 1
  const rest = wanted / fluid.energy - DRIPPED_POWER * sum(rates.dripped)
  return Math.min(1, Math.max(0, rest / metered))
}

/**
 * Energy that goes into power, over what the fuel of full load gives. [-]
 * @param taken fuel that each cylinder took in [kg/s]
 * @param rates of the injectors if they fill well [kg/s]; they say what of the fuel dripped in unasked
 * @param rack 0 to 1
 * @param fluid fuel in the circuit
 * @param atFull energy of the fuel at full load in health [W]
 * @source common practice (what drips burns late)
 */
export function energyShare(
  taken: ArrayLike<number>,
  rates: InjectorRates,
  rack: number,
  fluid: Fluid,
  atFull: number,
): number {
  let mass = 0
  rates.atFullRack.forEach((metered, place) => {
    const dripped = rates.dripped[place] ?? 0
    const both = rack * metered + dripped
    if (both > 0) mass += ((taken[place] ?? 0) * (rack * metered + DRIPPED_POWER * dripped)) / both
  })
  return (mass * fluid.energy) / atFull
}

/**
 * Exhaust temperature of each cylinder from its fuel; its air is what the state gives.
 * @param model figures at idle and at full load
 * @param demand of the state
 * @param fuelShares fuel of each cylinder over what it burns at full load in health [-]
 * @returns temperatures [K], one a cylinder; a cylinder without fuel sends out warm air
 * @source common practice (at constant air the rise goes with the fuel)
 */
export function exhaustOf(model: CircuitModel, demand: Demand, fuelShares: ArrayLike<number>): number[] {
  if (!demand.running) return []
  const { exhaustAtIdle, exhaustAtFull, burntAtFull, burntAtIdle } = model.engine
  const asked = demand.burnt / burntAtFull
  const idle = burntAtIdle / burntAtFull
  const expected = exhaustAtIdle + ((asked - idle) / (1 - idle)) * (exhaustAtFull - exhaustAtIdle)
  return Array.from(fuelShares, (share) => WITHOUT_FUEL + (expected - WITHOUT_FUEL) * (share / asked))
}

/** What a cylinder sends out that only compresses air. [K] Common practice. */
const WITHOUT_FUEL = 353.15
