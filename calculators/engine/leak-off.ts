/**
 * Time of a pressure fall through a narrow clearance, brought to another oil. [s]
 * The leak is laminar: its flow falls as the oil thickens, and the time grows in the same ratio.
 * @param time as measured [s], 0 or more
 * @param viscosity of the oil during the test [m²/s], above 0
 * @param referenceViscosity of the oil for which the limit is stated [m²/s], above 0
 * @returns time × referenceViscosity / viscosity; densities of calibrating oils differ too little to matter
 * @source hagen-poiseuille (laminar flow; here through a clearance)
 */
export function leakOffAtReference(time: number, viscosity: number, referenceViscosity: number): number {
  return time * (referenceViscosity / viscosity)
}
