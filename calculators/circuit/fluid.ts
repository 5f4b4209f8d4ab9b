import { oilEnergy, specificEnergy } from '../fuel/energy-content.ts'
import { blendByWalther } from '../fuel/viscosity-blend.ts'
import { lineThroughPoints, viscosityOnLine, type WaltherLine } from '../fuel/viscosity-walther.ts'
import { densityLine } from '../heat/petroleum-heat.ts'
import { distillateVapourPressure } from '../hydraulics/vapour.ts'
import type { ModelFuel } from './model.ts'
import type { BentConditions } from './types.ts'

/** The fuel in the circuit: as delivered, thinned and wet as it is. */
export interface Fluid {
  /** Density at 15 °C, on which heat and expansion rest. [kg/m³] */
  readonly density15: number
  /** [K] */
  readonly cloudPoint: number
  /** Viscosity line of the oil. */
  readonly line: WaltherLine
  /** [kg/m³] at [K] */
  readonly density: (temperature: number) => number
  /** [m²/s] at [K] */
  readonly kinematicViscosity: (temperature: number) => number
  /** Absolute. [Pa] at [K] */
  readonly vapourPressure: (temperature: number) => number
  /** Net. [J/kg] */
  readonly energy: number
  readonly water: number
  readonly thinned: number
}

/** A light fuel that was mixed in: petrol's figures, from memory. */
const THINNER = {
  density15: 745,
  viscosities: [
    { temperature: 293.15, kinematicViscosity: 0.65e-6 },
    { temperature: 313.15, kinematicViscosity: 0.52e-6 },
  ],
  /** Vapour pressure at 37.8 °C and its growth for each kelvin. [Pa], [1/K] */
  vapourPressure: 60e3,
  growth: 0.035,
} as const

/** Above this the energy line of residual fuel counts. [kg/m³] */
const RESIDUAL_FROM = 910
const WATER_DENSITY = 998

/** Temperatures at which two viscosities blend to make a line. [K] */
const BLEND_AT = [293.15, 333.15] as const

function thinnedLine(line: WaltherLine, share: number): WaltherLine {
  if (share === 0) return line
  const thinner = lineThroughPoints(...THINNER.viscosities)
  const [cold, warm] = BLEND_AT.map((temperature) => ({
    temperature,
    kinematicViscosity: blendByWalther([
      { share: 1 - share, kinematicViscosity: viscosityOnLine(line, temperature) },
      { share, kinematicViscosity: viscosityOnLine(thinner, temperature) },
    ]),
  }))
  return cold && warm ? lineThroughPoints(cold, warm) : line
}

/**
 * Net energy of a fuel as the circuit carries it.
 * @param density15 [kg/m³] of its oil
 * @param waterMass share of water in the mass [-]
 */
function energyOf(density15: number, waterMass: number): number {
  const kind = density15 > RESIDUAL_FROM ? 'residual' : 'distillate'
  if (waterMass === 0) return oilEnergy('net', kind, density15)
  return specificEnergy('net', kind, density15, { water: waterMass, ash: 0, sulfur: 0 })
}

/**
 * The fuel in the circuit.
 * @param fuel as delivered
 * @param bent share thinned and share of water, by volume [-]
 * @returns its properties; water droplets add to density, thicken by 1 + 2.5 w and take energy
 * @source astm-d341, astm-d1250, astm-d7152, iso-8217; common practice (Einstein's 2.5; petrol's figures from memory)
 */
export function fluidOf(fuel: ModelFuel, bent: BentConditions): Fluid {
  const { thinned = 0, water = 0 } = bent
  const density15 = (1 - thinned) * fuel.density15 + thinned * THINNER.density15
  const line = thinnedLine(fuel.line, thinned)
  const thicker = 1 + 2.5 * water
  const waterMass = (water * WATER_DENSITY) / (water * WATER_DENSITY + (1 - water) * density15)
  const oilDensity = densityLine(density15)
  return {
    density15,
    cloudPoint: fuel.cloudPoint,
    line,
    density: (temperature) => (1 - water) * oilDensity(temperature) + water * WATER_DENSITY,
    kinematicViscosity: (temperature) => thicker * viscosityOnLine(line, temperature),
    vapourPressure:
      thinned === 0
        ? distillateVapourPressure
        : (temperature) =>
            distillateVapourPressure(temperature) +
            thinned * THINNER.vapourPressure * Math.exp(THINNER.growth * (temperature - 310.95)),
    energy: energyOf(density15, waterMass),
    water,
    thinned,
  }
}
