import { fuelDensity, specificHeat } from './petroleum-heat.ts'

export interface Tank {
  /** Inside length and width of an upright box. [m] */
  readonly length: number
  readonly width: number
  /** Heat lost for each area and degree. [W/(m²·K)] */
  readonly heatTransfer: number
  /** Outside the tank. [K] */
  readonly ambient: number
  /** Density of the fuel at 15 °C. [kg/m³] */
  readonly density15: number
}

/** Burnt and heat returned are constant over the time. */
export interface TankLoad {
  /** [m³] */
  readonly startVolume: number
  /** [K] */
  readonly startTemperature: number
  /** Taken out for good. [m³/s] */
  readonly burnt: number
  /** Heat that comes back with the return, counted from the tank's own temperature. [W] */
  readonly heat: number
}

/** Steps of equal time. Four times as many change a shift's result by less than a thousandth of a degree. */
const STEPS = 200

/**
 * Surface that the fuel wets: the floor and the sides up to the level. [m²]
 * @param tank length [m], width [m]
 * @param volume of fuel [m³]
 * @returns the area; the surface of the fuel itself is left out, as the air above it insulates
 * @source common practice (dry walls and the air space give off little)
 */
export function wettedArea(tank: Tank, volume: number): number {
  return tank.length * tank.width + (2 * (tank.length + tank.width) * volume) / (tank.length * tank.width)
}

/** (1 − e^−z)/z, which is 1 at no loss. */
const settled = (z: number) => (z === 0 ? 1 : -Math.expm1(-z) / z)

/**
 * Temperature of the fuel in a tank after a time: m·c·dT/dt = heat − U·A·(T − T_ambient), with mass and wetted area
 * falling as fuel is burnt. Each step is solved exactly with its mean level, so that no step length can make it swing.
 * @param tank length [m], width [m], heat transfer [W/(m²·K)], ambient [K], density at 15 °C [kg/m³]
 * @param load start volume [m³], start temperature [K], burnt [m³/s], heat [W]
 * @param time [s], ending before the tank is empty
 * @returns the temperature at the end [K]
 * @source nbs-mp97 (specific heat, from memory), oil-tank-heat-loss (loss in proportion to area and difference)
 */
export function tankTemperature(tank: Tank, load: TankLoad, time: number): number {
  const step = time / STEPS
  const density = fuelDensity(tank.density15, load.startTemperature)
  let temperature = load.startTemperature
  for (let at = 0; at < STEPS; at++) {
    const volume = load.startVolume - load.burnt * step * (at + 0.5)
    const capacity = volume * density * specificHeat(tank.density15, temperature)
    const loss = tank.heatTransfer * wettedArea(tank, volume)
    const net = load.heat - loss * (temperature - tank.ambient)
    temperature += (net / capacity) * step * settled((loss / capacity) * step)
  }
  return temperature
}
