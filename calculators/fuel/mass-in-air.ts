/** What air lifts a cubic metre of oil against steel weights, as the trade rounds it. [kg/m³] */
const AIR_BUOYANCY = 1.1

/**
 * Mass of a fuel as a scale in air shows it, (ρ₁₅ − 1.1) × V₁₅: the 'weight in air' of delivery papers. [kg]
 * @param volume15 volume at 15 °C [m³]
 * @param density15 density at 15 °C [kg/m³], 600 to 1100
 * @returns the apparent mass, about 0.13 % less than the mass for diesel fuel
 * @source bunker-survey-example (Table 56 shortened to a constant, as the examples do)
 */
export function massInAir(volume15: number, density15: number): number {
  return volume15 * (density15 - AIR_BUOYANCY)
}
