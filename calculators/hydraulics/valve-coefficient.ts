/** Constants of the standard for Kv, flow in m³/h, pressure in kPa and sizes in mm. @source iec-60534-2-1 */
const N1 = 0.1
const N2 = 1.6e-3
const N4 = 7.07e-2
const N18 = 0.865
const N32 = 140

/** Cv = 1.15610 Kv: a US gallon a minute at one psi against a cubic metre an hour at one bar, the same water. */
export const CV_PER_KV = Math.sqrt(6894.757293168361 / 1e5) / (60 * 0.003785411784)

/** Density to which both coefficients refer. [kg/m³] Water at 15 °C. */
const REFERENCE_DENSITY = 999.1

/** C/d² from which a trim counts as full-size, and above which the correction is no longer stated; d in mm. [-] */
export const FULL_SIZE_FROM = 0.016 * N18
export const LARGEST_TRIM = 0.04

/** The viscosity correction ends here: above it flow is turbulent. Below LAMINAR_BELOW only one term is left. [-] */
export const TURBULENT_ABOVE = 10_000
const LAMINAR_BELOW = 10

export interface Trim {
  /** Nominal size of the valve, and of the line on both its sides. [m] */
  readonly size: number
  /** Pressure recovery factor F_L. [-] */
  readonly recovery: number
  /** Style modifier F_d. [-] */
  readonly style: number
}

/**
 * Liquid critical pressure ratio factor, F_F = 0.96 − 0.28 √(p_v/p_c). [-]
 * @param vapourPressure [Pa] absolute, up to the critical pressure
 * @param criticalPressure [Pa] absolute, above 0
 * @returns the factor, 0.68 to 0.96
 * @source iec-60534-2-1
 */
export function criticalPressureRatio(vapourPressure: number, criticalPressure: number): number {
  return 0.96 - 0.28 * Math.sqrt(vapourPressure / criticalPressure)
}

/**
 * Drop from which more drop brings no more flow: F_L² (p₁ − F_F p_v). [Pa]
 * @param inletPressure [Pa] absolute
 * @param vapourPressure [Pa] absolute
 * @param criticalPressure [Pa] absolute
 * @param recovery pressure recovery factor F_L [-]
 * @returns the drop; negative where the fuel would boil at the inlet already
 * @source iec-60534-2-1
 */
export function chokedDrop(
  inletPressure: number,
  vapourPressure: number,
  criticalPressure: number,
  recovery: number,
): number {
  const ratio = criticalPressureRatio(vapourPressure, criticalPressure)
  return recovery ** 2 * (inletPressure - ratio * vapourPressure)
}

/**
 * Kv that would pass the flow if it were turbulent. [m³/h at 1 bar]
 * @param flow [m³/s]
 * @param effectiveDrop the drop, or the choked drop if that is less [Pa], above 0
 * @param density [kg/m³]
 * @returns Q/(N₁√(Δp/(ρ/ρ₀)))
 * @source iec-60534-2-1
 */
export function turbulentKv(flow: number, effectiveDrop: number, density: number): number {
  return ((flow * 3600) / N1) * Math.sqrt(density / REFERENCE_DENSITY / (effectiveDrop / 1000))
}

/**
 * Reynolds number of a valve. [-]
 * @param flow [m³/s]
 * @param kinematicViscosity [m²/s], above 0
 * @param kv coefficient [m³/h at 1 bar], above 0
 * @param trim size [m], F_L [-], F_d [-]
 * @returns N₄F_dQ/(ν√(C F_L)) · (F_L²C²/(N₂d⁴) + 1)^¼
 * @source iec-60534-2-1
 */
export function valveReynolds(flow: number, kinematicViscosity: number, kv: number, trim: Trim): number {
  const approach = (trim.recovery * kv) ** 2 / (N2 * (trim.size * 1000) ** 4) + 1
  return (
    ((N4 * trim.style * flow * 3600) / (kinematicViscosity * Math.sqrt(kv * trim.recovery))) *
    approach ** 0.25
  )
}

/**
 * Viscosity correction F_R: what is left of a turbulent flow. [-]
 * Full-size and reduced trim have each their own formula; they meet within 5 % at C/d² = 0.016 N₁₈.
 * At Re 10 they step, and under about 30 they fall more steeply than a flow can: there several flows may fit.
 * @param reynolds valve Reynolds number [-], above 0; best from 100 on
 * @param kv coefficient [m³/h at 1 bar]
 * @param trim size [m], F_L [-]; F_d is not used
 * @returns the factor, up to 1; C/d² above LARGEST_TRIM is taken as that
 * @source iec-60534-2-1
 */
export function viscosityFactor(reynolds: number, kv: number, trim: Trim): number {
  const ratio = Math.min(kv / (trim.size * 1000) ** 2, LARGEST_TRIM)
  const n = ratio >= FULL_SIZE_FROM ? N2 / ratio ** 2 : 1 + N32 * ratio ** (2 / 3)
  const laminar = Math.min(1, (0.026 / trim.recovery) * Math.sqrt(n * reynolds))
  if (reynolds < LAMINAR_BELOW) return laminar
  const bend = 1 + ((0.33 * Math.sqrt(trim.recovery)) / n ** 0.25) * Math.log10(reynolds / TURBULENT_ABOVE)
  return Math.min(laminar, bend, 1)
}
