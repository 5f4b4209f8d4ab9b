const SQUARE_MILLIMETRE = 1e-6

/** Temperature at which the basic Saybolt relation is stated, 100 °F. [K] */
export const HUNDRED_FAHRENHEIT = 310.92777777777775

/** The two temperatures for which Furol seconds are defined, 122 and 210 °F. [K] */
export const FUROL_TEMPERATURES = { cool: 323.15, hot: 372.0388888888889 } as const

/** Below, the seconds are not defined. [m²/s]; Furol 48 mm²/s at 122 °F and 50 at 210 °F. */
export const SAYBOLT_RANGE = { universal: 1.81 * SQUARE_MILLIMETRE, furol: 48 * SQUARE_MILLIMETRE } as const

/**
 * Saybolt Universal seconds of a kinematic viscosity. [s]
 * @param kinematicViscosity [m²/s], from 1.81e-6 on; thinner than that the seconds are not defined
 * @param temperature at which both stand [K], 255 to 450 (0 to 350 °F)
 * @returns efflux time of 60 mL through the Universal orifice
 * @source astm-d2161 (relation at 100 °F seen; factor for other temperatures from memory, it gives the seen 4.664)
 */
export function sayboltUniversal(kinematicViscosity: number, temperature: number): number {
  const v = kinematicViscosity / SQUARE_MILLIMETRE
  const at100F = 4.6324 * v + ((1 + 0.03264 * v) * 1e5) / (3930.2 + v * (262.7 + v * (23.97 + v * 1.646)))
  return at100F * (1 + 0.000061 * 1.8 * (temperature - HUNDRED_FAHRENHEIT))
}

/**
 * Saybolt Furol seconds of a kinematic viscosity. [s]
 * @param kinematicViscosity [m²/s], from 48e-6 on; thinner than that the seconds are not defined
 * @param temperature at which both stand [K]; the equation of 122 °F or of 210 °F is taken, whichever is nearer
 * @returns efflux time of 60 mL through the Furol orifice
 * @source astm-d2161 (both equations from memory)
 */
export function sayboltFurol(kinematicViscosity: number, temperature: number): number {
  const v = kinematicViscosity / SQUARE_MILLIMETRE
  return nearestFurol(temperature) === FUROL_TEMPERATURES.cool
    ? 0.4717 * v + 13924 / (v * (v - 72.59) + 6816)
    : 0.4792 * v + 5610 / (v * v + 2130)
}

/**
 * The temperature of the Furol equation that is taken. [K]
 * @param temperature of the liquid [K]
 * @returns 122 °F or 210 °F, whichever is nearer
 * @source astm-d2161
 */
export function nearestFurol(temperature: number): number {
  const { cool, hot } = FUROL_TEMPERATURES
  return temperature < (cool + hot) / 2 ? cool : hot
}
