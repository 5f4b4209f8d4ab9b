/** A fuel where it is metered: hot or cold, light or heavy. */
export interface MeteredFuel {
  /** Density at the temperature at which it is metered. [kg/m³] */
  readonly density: number
  /** Net specific energy. [J/kg] */
  readonly netEnergy: number
}

/**
 * Power with the rack held, over power on the reference fuel: the same volume each stroke, so the same ratio as that
 * of net energy per volume. Leakage past plungers, combustion and efficiency are taken as unchanged. [-]
 * @param fuel the fuel burnt: density where it is metered [kg/m³] and net specific energy [J/kg], above 0
 * @param reference the same of the fuel on which the power is known [kg/m³], [J/kg]
 * @returns the ratio
 * @source common practice, no published source
 */
export function fixedRackRatio(fuel: MeteredFuel, reference: MeteredFuel): number {
  return (fuel.density * fuel.netEnergy) / (reference.density * reference.netEnergy)
}
