export interface Air {
  /** [m²/s] */
  readonly kinematicViscosity: number
  /** [W/(m·K)] */
  readonly conductivity: number
  /** Prandtl number. [-] */
  readonly prandtl: number
}

const ATMOSPHERE = 101325
const GAS_CONSTANT = 287.05
const SPECIFIC_HEAT = 1006
const REFERENCE = 273.15

/** Sutherland's law: a value at 273.15 K and a constant in kelvin carry it to other temperatures. */
function sutherland(value: number, constant: number, temperature: number): number {
  const ratio = temperature / REFERENCE
  return (value * ratio ** 1.5 * (REFERENCE + constant)) / (temperature + constant)
}

/**
 * Properties of dry air at one atmosphere: ideal gas with Sutherland's law for viscosity and conductivity.
 * @param temperature [K], 200 to 500; outside it is an extrapolation
 * @returns kinematic viscosity [m²/s], conductivity [W/(m·K)] and Prandtl number [-], within about 2 %
 * @source white-fluid-mechanics (Sutherland's law and its constants, from memory)
 */
export function airAt(temperature: number): Air {
  const dynamicViscosity = sutherland(1.716e-5, 110.4, temperature)
  const conductivity = sutherland(0.0241, 194, temperature)
  return {
    kinematicViscosity: (dynamicViscosity * GAS_CONSTANT * temperature) / ATMOSPHERE,
    conductivity,
    prandtl: (dynamicViscosity * SPECIFIC_HEAT) / conductivity,
  }
}
