/**
 * Time constant of a body that has one temperature throughout: m·c/(h·A). [s]
 * @param volume [m³]
 * @param area surface through which heat goes [m²], above 0
 * @param density [kg/m³]
 * @param specificHeat [J/(kg·K)]
 * @param coefficient surface coefficient [W/(m²·K)], above 0
 * @returns the time in which the difference to the surroundings falls to 37 %
 * @source lumped-capacity
 */
export function coolingTimeConstant(
  volume: number,
  area: number,
  density: number,
  specificHeat: number,
  coefficient: number,
): number {
  return (density * volume * specificHeat) / (coefficient * area)
}

/**
 * Temperature after a time, by Newton's law of cooling: T_a + (T₀ − T_a)·exp(−t/τ). [K]
 * @param start temperature at the beginning [K]
 * @param ambient temperature of the surroundings [K]
 * @param elapsed time or, for a flowing fuel, transfer units passed, in the measure of the constant [s]
 * @param timeConstant from coolingTimeConstant [s], above 0
 * @returns the temperature, between the two
 * @source lumped-capacity
 */
export function temperatureAfter(
  start: number,
  ambient: number,
  elapsed: number,
  timeConstant: number,
): number {
  return ambient + (start - ambient) * Math.exp(-elapsed / timeConstant)
}

/**
 * Time to a wanted temperature: τ·ln[(T₀ − T_a)/(T − T_a)]. [s]
 * @param start temperature at the beginning [K]
 * @param ambient temperature of the surroundings [K]
 * @param wanted temperature to be reached [K], between the two, short of ambient
 * @param timeConstant from coolingTimeConstant [s], above 0
 * @returns the time; infinite at the temperature of the surroundings, not a number beyond it
 * @source lumped-capacity
 */
export function timeToReach(start: number, ambient: number, wanted: number, timeConstant: number): number {
  return timeConstant * Math.log((start - ambient) / (wanted - ambient))
}

/**
 * Temperature of fuel at the end of a line through cold air: T_a + (T₀ − T_a)·exp[−h·A/(ṁ·c)]. [K]
 * @param start temperature at the inlet [K]
 * @param ambient temperature of the surroundings [K]
 * @param conductance surface coefficient times outside area of the line [W/K]
 * @param heatCapacityFlow mass flow times specific heat [W/K], above 0
 * @returns the temperature at the end
 * @source fourier-cylinder
 */
export function temperatureAlongLine(
  start: number,
  ambient: number,
  conductance: number,
  heatCapacityFlow: number,
): number {
  return ambient + (start - ambient) * Math.exp(-conductance / heatCapacityFlow)
}
