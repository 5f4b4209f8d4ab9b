import { airThroughOpening } from '../hydraulics/air-flow.ts'
import { airSolubility } from '../hydraulics/gas.ts'
import { roundHole, type SmallOpening } from '../hydraulics/orifice-small.ts'

/**
 * Gas is counted as amount over liquid: its pressure times its volume over its temperature, for each cubic metre of
 * liquid [Pa/K]. Bubbles are what was once free; dissolved is what the liquid brought from the tank.
 */

/** Gas constant of air, which also stands for combustion gas. [J/(kg·K)] */
const GAS_CONSTANT = 287.05

/** Share of bubbles that goes into solution where the pressure has room for it. Common practice: the time is short. */
const TAKEN_BACK = 0.5

/** Dissolved air stays in solution down to this share of its saturation pressure. Common practice. */
const HOLDS_TO = 0.8

/** Share of the air set free at a pump's inlet that goes on as bubbles. Common practice. */
export const STAYS_FREE = 0.5

/** The solubility line ends at this density. [kg/m³] */
const HEAVIEST = 900

const DISCHARGE = 0.6
/** Thickness of the wall around a leak. [m] */
const WALL = 2e-3

/**
 * Amount of air that saturates the fuel, for each pascal of the air's pressure. [1/K]
 * @param temperature [K]
 * @param density15 [kg/m³]; above 900 the line's end stands
 * @source astm-d2779
 */
export function saturationForPascal(temperature: number, density15: number): number {
  return airSolubility(temperature, Math.min(density15, HEAVIEST)) / temperature
}

/**
 * Amount of air that saturates the fuel at a pressure. [Pa/K]
 * @param pressure absolute [Pa]
 * @param temperature [K]
 * @param density15 [kg/m³]; above 900 the line's end stands
 * @source astm-d2779
 */
export function saturation(pressure: number, temperature: number, density15: number): number {
  return saturationForPascal(temperature, density15) * pressure
}

/**
 * Gas that is free at a place, whatever way the fuel came: bubbles less what went into solution, and what the vacuum
 * sets free. [Pa/K]
 * @param bubbles amount of gas that was once free [Pa/K]
 * @param dissolved amount of air that the fuel brought from the tank [Pa/K]
 * @param saturated from saturation, at the place [Pa/K]
 * @source common practice (half of the bubbles that could, dissolve; a fifth of supersaturation stands)
 */
export function freeGas(bubbles: number, dissolved: number, saturated: number): number {
  const room = Math.max(0, saturated - dissolved)
  return bubbles - TAKEN_BACK * Math.min(bubbles, room) + releasedGas(dissolved, saturated)
}

/** Dissolved air that a vacuum sets free. [Pa/K] */
export function releasedGas(dissolved: number, saturated: number): number {
  return Math.max(0, HOLDS_TO * dissolved - saturated)
}

/** A hole of a leak. @source sampson-1891 */
export const leakHole = (diameter: number): SmallOpening => roundHole(diameter, WALL)

/** Fuel in fast flow through a hole. [-] Common practice. */
export const HOLE_COEFFICIENT = DISCHARGE

/**
 * Air that comes in through a hole. [Pa·m³/(K·s)]
 * @param diameter [m]
 * @param outside absolute pressure of the air [Pa]
 * @param inside absolute pressure behind the hole [Pa]
 * @param temperature of the air [K]
 * @source air-orifice-table, sampson-1891
 */
export function airThroughLeak(
  diameter: number,
  outside: number,
  inside: number,
  temperature: number,
): number {
  if (diameter === 0 || inside >= outside) return 0
  return (
    GAS_CONSTANT *
    airThroughOpening(leakHole(diameter), DISCHARGE, outside, Math.max(inside, 1), temperature).mass
  )
}

/** Share of a cycle in which the gas in a cylinder stands near its peak, and the gas's temperature. Common practice. */
const NEAR_PEAK = 0.08
const GAS_TEMPERATURE = 1500

/**
 * Combustion gas through a leaking injector. [Pa·m³/(K·s)]
 * @param diameter of the hole [m]
 * @param peak absolute peak pressure in the cylinder [Pa]
 * @param inside absolute pressure of the fuel [Pa]
 * @source air-orifice-table (the law), common practice (share of the cycle, temperature)
 */
export function gasThroughInjector(diameter: number, peak: number, inside: number): number {
  return NEAR_PEAK * airThroughLeak(diameter, peak, inside, GAS_TEMPERATURE)
}

/** Depth of fuel over the mouth at which a swirl begins to carry air down, and how it goes on. [m] Common practice. */
const SWIRL_FROM = 0.06
const SWIRL_TO = -0.04
const MOST_SWIRLED = 0.97

/**
 * Air drawn in at the mouth of the suction pipe. [-]
 * @param cover depth of fuel over the mouth [m], negative where it is uncovered
 * @returns share of air in the volume drawn
 * @source common practice, no published source
 */
export function airAtMouth(cover: number): number {
  const part = Math.min(1, Math.max(0, (SWIRL_FROM - cover) / (SWIRL_FROM - SWIRL_TO)))
  return MOST_SWIRLED * part * part * (3 - 2 * part)
}

/** A hole past the foot valve's seat that lets half of what it can out overnight. [m] Common practice. */
const HALF_DRAINED = 1e-3
/** Air in the first minute from a line that has run empty. [-] Common practice. */
const FROM_EMPTY_LINE = 0.6

/**
 * Air that is swept out of a suction line that has drained through its foot valve. [-]
 * @param hole past the seat [m]
 * @returns share of air in the volume drawn at the start of priming
 * @source common practice, no published source
 */
export function airOfDrainedLine(hole: number): number {
  return (FROM_EMPTY_LINE * hole * hole) / (hole * hole + HALF_DRAINED * HALF_DRAINED)
}

/** Amount of gas for each volume of liquid from its share of the mixture. [Pa/K] */
export function amountOfShare(share: number, pressure: number, temperature: number): number {
  return ((share / (1 - share)) * pressure) / temperature
}
