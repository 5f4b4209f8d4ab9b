/** Standard acceleration of gravity, by definition. [m/s²] */
export const GRAVITY = 9.80665

/**
 * Pressure that a column of liquid at rest adds at its foot, ρ·g·h. [Pa]
 * @param density [kg/m³]
 * @param height of the column [m]; negative when the point lies above the surface
 * @returns the pressure, with the sign of the height
 * @source nist-sp811 (standard gravity); the relation is the definition of hydrostatic pressure
 */
export function columnPressure(density: number, height: number): number {
  return density * GRAVITY * height
}

/**
 * Pressure at a tapping from the reading of a gauge at another height. [Pa]
 * @param reading of the gauge [Pa]
 * @param gaugeAbove height of the gauge over the tapping [m]; negative when it hangs lower
 * @param density of what fills the gauge line [kg/m³]; a line full of air counts as 0
 * @returns the pressure at the tapping, against the same reference as the reading
 * @source nist-sp811 (standard gravity)
 */
export function pressureAtTapping(reading: number, gaugeAbove: number, density: number): number {
  return reading + columnPressure(density, gaugeAbove)
}
