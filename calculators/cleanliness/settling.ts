const GRAVITY = 9.80665

/** Up to this Reynolds number the law is good to about 2 %; up to 1 it is up to about 15 % too fast. [-] */
export const CREEPING = 0.1
export const STOKES_TO = 1

/**
 * Settling velocity of a small sphere after Stokes: g·Δρ·d²/(18·μ), positive downwards. [m/s]
 * @param diameter [m]
 * @param density of the drop or particle [kg/m³]
 * @param liquidDensity [kg/m³]
 * @param dynamicViscosity of the liquid [Pa·s], above 0
 * @returns the velocity; negative where the particle rises. Valid while reynoldsOfDrop is under 1
 * @source stokes-1851
 */
export function stokesVelocity(
  diameter: number,
  density: number,
  liquidDensity: number,
  dynamicViscosity: number,
): number {
  return (GRAVITY * (density - liquidDensity) * diameter ** 2) / (18 * dynamicViscosity)
}

/**
 * Diameter that settles with a velocity, the inverse of stokesVelocity: √[18·μ·v/(g·Δρ)]. [m]
 * @param velocity downwards [m/s], of the sign of the density difference
 * @param density of the drop or particle [kg/m³]
 * @param liquidDensity [kg/m³], other than that of the drop
 * @param dynamicViscosity of the liquid [Pa·s]
 * @returns the diameter
 * @source stokes-1851
 */
export function stokesDiameter(
  velocity: number,
  density: number,
  liquidDensity: number,
  dynamicViscosity: number,
): number {
  return Math.sqrt((18 * dynamicViscosity * velocity) / (GRAVITY * (density - liquidDensity)))
}

/**
 * Reynolds number of a sphere on its diameter. [-]
 * @param velocity [m/s], either sign
 * @param diameter [m]
 * @param kinematicViscosity of the liquid [m²/s], above 0
 * @returns the number, 0 or more
 * @source stokes-1851
 */
export function reynoldsOfDrop(velocity: number, diameter: number, kinematicViscosity: number): number {
  return (Math.abs(velocity) * diameter) / kinematicViscosity
}
