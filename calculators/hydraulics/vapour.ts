const PSI = 6894.757293168361
const RANKINE_PER_KELVIN = 1.8

/**
 * Vapour pressure of No. 2 distillate: ln p = 12.101 − 8907/T, p in psi and T in degrees Rankine. [Pa]
 * @param temperature [K], 278 to 311 (40 to 100 °F); beyond, the line goes on without a table to check it
 * @returns the absolute vapour pressure, about a thousandth of an atmosphere at 30 °C
 * @source epa-ap42 (equation and table from memory)
 */
export function distillateVapourPressure(temperature: number): number {
  return Math.exp(12.101 - 8907 / (RANKINE_PER_KELVIN * temperature)) * PSI
}

/**
 * Pressure of the standard atmosphere at a height, 101.325 kPa at sea level. [Pa]
 * @param height over the sea [m], −500 to 11 000, where the straight fall of temperature ends
 * @returns the absolute pressure; the weather moves the real one by a few per cent
 * @source iso-2533
 */
export function standardAtmosphere(height: number): number {
  return 101_325 * (1 - 2.25577e-5 * height) ** 5.25588
}
