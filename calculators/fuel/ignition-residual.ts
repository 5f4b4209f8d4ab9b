const SQUARE_MILLIMETRE = 1e-6

function doubleLogarithm(kinematicViscosity: number, added: number): number {
  return Math.log10(Math.log10(kinematicViscosity / SQUARE_MILLIMETRE + added))
}

/**
 * Calculated carbon aromaticity index, ρ − 81 − 141 log log(ν + 0.85) − 483 log((t + 273)/323): the higher, the later
 * a residual fuel ignites. [-]
 * @param density15 density at 15 °C [kg/m³]
 * @param kinematicViscosity at the given temperature [m²/s], above 0.15e-6 (where the double logarithm ends)
 * @param temperature of the viscosity [K]; at 50 °C the last term vanishes
 * @returns the index
 * @source iso-8217
 */
export function carbonAromaticityIndex(
  density15: number,
  kinematicViscosity: number,
  temperature: number,
): number {
  const warmth = Math.log10((temperature - 273.15 + 273) / 323)
  return density15 - 81 - 141 * doubleLogarithm(kinematicViscosity, 0.85) - 483 * warmth
}

/**
 * Calculated ignition index, (270.795 + 0.1038t) − 0.254565ρ + 23.708 log log(ν + 0.7): on the scale of cetane
 * numbers, so the higher the sooner a residual fuel ignites. [-]
 * @param density15 density at 15 °C [kg/m³]
 * @param kinematicViscosity at the given temperature [m²/s], above 0.3e-6 (where the double logarithm ends)
 * @param temperature of the viscosity [K]
 * @returns the index
 * @source calculated-ignition-index (equation from memory)
 */
export function ignitionIndex(density15: number, kinematicViscosity: number, temperature: number): number {
  const constant = 270.795 + 0.1038 * (temperature - 273.15)
  return constant - 0.254565 * density15 + 23.708 * doubleLogarithm(kinematicViscosity, 0.7)
}
