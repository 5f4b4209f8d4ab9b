import { expansionCoefficient, type ExpansionConstants } from './density-groups.ts'

/** [K] */
export const SIXTY_FAHRENHEIT = 288.7055555555556

/** Density of water at 60 °F on which relative density and API gravity rest in the 2004 edition. [kg/m³] */
export const WATER_DENSITY_60F = 999.016

/** 60 °F on the old temperature scale less 60 °F on the present one, [°F]. */
const SCALE_SHIFT_AT_60F = 0.01374979547
const BASE_ON_OLD_SCALE = 60.0068749

const SCALE_SHIFT = [
  -0.148759, -0.267408, 1.08076, 1.269056, -4.089591, -1.871251, 7.438081, -3.536296,
] as const

/**
 * Temperature on the IPTS-68 scale, to which the constants were fitted: t₆₈ = t₉₀ − Σ aᵢ(t₉₀/630)ⁱ in °C. [°F]
 * @param temperature on the present scale, ITS-90 [K], 223 to 423 (−58 to 302 °F); outside it is an extrapolation
 * @returns degrees Fahrenheit on the old scale
 * @source astm-d1250 (2004)
 */
function fahrenheitOnOldScale(temperature: number): number {
  const celsius = temperature - 273.15
  const share = celsius / 630
  const shift = SCALE_SHIFT.reduceRight((sum, coefficient) => (sum + coefficient) * share, 0)
  return 1.8 * (celsius - shift) + 32
}

/**
 * Base density moved to 60 °F of the old scale. It differs from the given one by a few parts in a million. [kg/m³]
 * @param density60 density at 60 °F and atmospheric pressure [kg/m³]
 * @param constants row of the 2004 table [-]
 * @returns ρ* of the procedure
 * @source astm-d1250 (2004)
 */
function densityOnOldScale(density60: number, constants: ExpansionConstants): number {
  const { k0, k1, k2 } = constants
  const a = (SCALE_SHIFT_AT_60F / 2) * expansionCoefficient(density60, constants)
  const b = (2 * k0 + k1 * density60) / (k0 + (k1 + k2 * density60) * density60)
  return density60 * (1 + Math.expm1(a * (1 + 0.8 * a)) / (1 + a * (1 + 1.6 * a) * b))
}

/**
 * Factor from volume at a temperature to volume at 60 °F, C_TL, unrounded. The standard's users round it to five
 * decimals. [-]
 * @param density60 density at 60 °F [kg/m³], within the row's limits
 * @param temperature [K], 223 to 423 (−58 to 302 °F); outside it is an extrapolation
 * @param constants row of the 2004 table [-]
 * @returns density at the temperature over density at 60 °F
 * @source astm-d1250 (2004)
 */
export function volumeFactor2004(
  density60: number,
  temperature: number,
  constants: ExpansionConstants,
): number {
  const alpha = expansionCoefficient(densityOnOldScale(density60, constants), constants)
  const difference = fahrenheitOnOldScale(temperature) - BASE_ON_OLD_SCALE
  return Math.exp(-alpha * difference * (1 + 0.8 * alpha * (difference + SCALE_SHIFT_AT_60F)))
}

/**
 * Factor for pressure, C_PL = 1/(1 − 10⁻⁵·F·Δp), with F = exp[−1.9947 + 0.00013427t + (793920 + 2326t)/ρ*²]. [-]
 * @param density60 density at 60 °F [kg/m³], within the row's limits
 * @param temperature [K], 223 to 423
 * @param gaugePressure above atmosphere [Pa], 0 to 10.3e6 (1500 psig); a vacuum is taken as 0, as the fit ends there
 * @param constants row of the 2004 table [-]
 * @returns density under pressure over density at atmospheric pressure
 * @source astm-d1250 (2004)
 */
export function pressureFactor2004(
  density60: number,
  temperature: number,
  gaugePressure: number,
  constants: ExpansionConstants,
): number {
  const fahrenheit = fahrenheitOnOldScale(temperature)
  const inverseSquare = densityOnOldScale(density60, constants) ** -2
  const compressibility = Math.exp(
    -1.9947 + 0.00013427 * fahrenheit + (793920 + 2326 * fahrenheit) * inverseSquare,
  )
  return 1 / (1 - 1e-5 * compressibility * (Math.max(0, gaugePressure) / 6894.757293168361))
}
