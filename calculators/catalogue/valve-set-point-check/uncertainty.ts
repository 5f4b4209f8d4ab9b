/** Half-widths taken where the person is not asked: common practice, no published source but the last. */
const HEIGHT = 0.05
const OVERRIDE_SHARE = 0.2
/** Of a friction factor from a chart or equation for commercial pipe. @source moody-1944 */
const LINE_LOSS_SHARE = 0.15

export interface Contributions {
  /** [Pa] */
  readonly gauge: number
  readonly backPressure: number
  readonly height: number
  readonly override: number
  readonly lineLoss: number
}

/**
 * What each quantity can be off by, as a pressure at the valve. [Pa]
 * @param known accuracy of gauge and of back pressure, pressure of one metre of gauge line, override, line loss [Pa]
 * @returns the contributions, to be added in quadrature
 * @source moody-1944 (line loss); the rest common practice
 */
export function contributionsOf(known: {
  readonly gaugeAccuracy: number
  readonly backPressureAccuracy: number
  readonly pressurePerMetre: number
  readonly override: number
  readonly lineLoss: number
}): Contributions {
  return {
    gauge: known.gaugeAccuracy,
    backPressure: known.backPressureAccuracy,
    height: HEIGHT * known.pressurePerMetre,
    override: OVERRIDE_SHARE * known.override,
    lineLoss: LINE_LOSS_SHARE * Math.abs(known.lineLoss),
  }
}

export type Verdict = 'within' | 'outside' | 'cannotBeTold'

/**
 * Judges a deviation that is known to ± an uncertainty: within or outside only when the whole interval is.
 * @param deviation measured less wanted [Pa]
 * @param uncertainty half-width of the interval [Pa]
 * @param tolerance allowed either way [Pa]
 * @source jcgm-106 (guard bands as wide as the uncertainty, on both sides of the limit)
 */
export function judge(deviation: number, uncertainty: number, tolerance: number): Verdict {
  if (Math.abs(deviation) + uncertainty <= tolerance) return 'within'
  if (Math.abs(deviation) - uncertainty > tolerance) return 'outside'
  return 'cannotBeTold'
}

/**
 * How accurate a gauge would have to be for a clear verdict at this deviation. [Pa]
 * @param deviation measured less wanted [Pa]
 * @param contributions of everything, the gauge's own is left out [Pa]
 * @param tolerance allowed either way [Pa]
 * @returns the accuracy; 0 or less when no gauge would do
 * @source jcgm-106
 */
export function gaugeNeeded(deviation: number, contributions: Contributions, tolerance: number): number {
  const room = Math.abs(tolerance - Math.abs(deviation))
  const others = Math.hypot(
    contributions.backPressure,
    contributions.height,
    contributions.override,
    contributions.lineLoss,
  )
  return room > others ? Math.sqrt(room * room - others * others) : 0
}
