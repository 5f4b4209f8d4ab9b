import { airAt } from './air.ts'

const GRAVITY = 9.80665
/** Stefan–Boltzmann constant. [W/(m²·K⁴)] */
const STEFAN_BOLTZMANN = 5.670374e-8

/** Where the correlation for wind is stated: Reynolds number to 1e7 with Re·Pr of 0.2 and more. [-] */
export const WIND_REYNOLDS = { minimum: 0.3, maximum: 1e7 }

/**
 * Nusselt number of a cylinder across a stream after Churchill and Bernstein:
 * 0.3 + 0.62·Re^½·Pr^⅓ / [1 + (0.4/Pr)^⅔]^¼ · [1 + (Re/282000)^⅝]^⅘. [-]
 * @param reynolds Reynolds number on the diameter [-], to 1e7 with Re·Pr of 0.2 and more
 * @param prandtl Prandtl number at the film temperature [-]
 * @returns the mean Nusselt number, within about 20 %
 * @source churchill-bernstein-1977
 */
export function nusseltInWind(reynolds: number, prandtl: number): number {
  const laminar = (0.62 * Math.sqrt(reynolds) * Math.cbrt(prandtl)) / (1 + (0.4 / prandtl) ** (2 / 3)) ** 0.25
  return 0.3 + laminar * (1 + (reynolds / 282000) ** 0.625) ** 0.8
}

/**
 * Nusselt number of a horizontal cylinder in still air after Churchill and Chu:
 * {0.6 + 0.387·Ra^⅙ / [1 + (0.559/Pr)^(9/16)]^(8/27)}². [-]
 * @param rayleigh Rayleigh number on the diameter [-], to 1e12
 * @param prandtl Prandtl number at the film temperature [-]
 * @returns the mean Nusselt number
 * @source churchill-chu-1975 (from memory)
 */
function nusseltInStillAir(rayleigh: number, prandtl: number): number {
  return (0.6 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2
}

export interface Surface {
  /** [m] */
  readonly diameter: number
  /** [K] */
  readonly temperature: number
  /** Share of a black body's radiation that the surface sends. [-] */
  readonly emissivity: number
}

export interface SurfaceCoefficient {
  /** Reynolds number of the wind. [-] */
  readonly reynolds: number
  /** Convection by wind and by warm air rising, together. [W/(m²·K)] */
  readonly convection: number
  /** [W/(m²·K)] */
  readonly radiation: number
}

/**
 * Surface coefficient of a cylinder outdoors: wind and rising air joined by the root of the sum of cubes, and
 * radiation to surroundings as warm as the air. [W/(m²·K)]
 * @param surface diameter [m], temperature [K] and emissivity [-]
 * @param ambient temperature of the air and of what the surface sees [K]
 * @param wind speed across the cylinder [m/s], 0 for still air
 * @returns Reynolds number [-], convection and radiation [W/(m²·K)]
 * @source churchill-bernstein-1977, churchill-chu-1975; joining by cubes is common practice
 */
export function surfaceCoefficient(surface: Surface, ambient: number, wind: number): SurfaceCoefficient {
  const film = (surface.temperature + ambient) / 2
  const air = airAt(film)
  const reynolds = (wind * surface.diameter) / air.kinematicViscosity
  const grashof =
    (GRAVITY * Math.abs(surface.temperature - ambient) * surface.diameter ** 3) /
    (film * air.kinematicViscosity ** 2)
  const perNusselt = air.conductivity / surface.diameter
  const forced = wind > 0 ? perNusselt * nusseltInWind(reynolds, air.prandtl) : 0
  const rising = perNusselt * nusseltInStillAir(grashof * air.prandtl, air.prandtl)
  return {
    reynolds,
    convection: Math.cbrt(forced ** 3 + rising ** 3),
    radiation: 4 * surface.emissivity * STEFAN_BOLTZMANN * film ** 3,
  }
}

/**
 * Coefficient through a layer of insulation round a cylinder, on the area of the bare cylinder. [W/(m²·K)]
 * @param outer surface coefficient on the outside of the layer [W/(m²·K)], above 0
 * @param diameter of the bare cylinder [m]
 * @param thickness of the layer [m], 0 for none
 * @param conductivity of the layer [W/(m·K)]
 * @returns the coefficient; the surface's own where there is no layer
 * @source fourier-cylinder
 */
export function insulatedCoefficient(
  outer: number,
  diameter: number,
  thickness: number,
  conductivity: number,
): number {
  const radius = diameter / 2
  const growth = (radius + thickness) / radius
  return 1 / ((radius * Math.log(growth)) / conductivity + 1 / (growth * outer))
}
