/** The two resistances of a filter. Loading raises the element's; the housing keeps its own. */
export interface FilterResistance {
  /** Drop over dynamic viscosity and flow. [1/m³] */
  readonly element: number
  /** Drop over density and the square of the flow. [1/m⁴] */
  readonly housing: number
}

/**
 * Pressure drop of a filter: element ∝ dynamic viscosity × flow (Darcy), housing ∝ density × flow². [Pa]
 * @param resistance element [1/m³] and housing [1/m⁴]
 * @param flow [m³/s], either sign
 * @param dynamicViscosity [Pa·s]
 * @param density [kg/m³]
 * @returns the drop, with the sign of the flow
 * @source darcy-1856, iso-3968 (housing and element measured apart)
 */
export function filterDrop(
  resistance: FilterResistance,
  flow: number,
  dynamicViscosity: number,
  density: number,
): number {
  return resistance.element * dynamicViscosity * flow + resistance.housing * density * flow * Math.abs(flow)
}

/**
 * Housing resistance from a drop that is the housing's alone. [1/m⁴]
 * @param drop of the empty housing [Pa]
 * @param flow at which it was measured [m³/s], above 0
 * @param density [kg/m³], above 0
 * @returns drop/(density × flow²)
 * @source iso-3968 (housing and element measured apart)
 */
export function housingResistance(drop: number, flow: number, density: number): number {
  return drop / (density * flow * flow)
}

/**
 * Element resistance from a reading across the whole filter, the housing's share taken off. [1/m³]
 * @param drop across the filter [Pa]
 * @param flow [m³/s], above 0
 * @param dynamicViscosity [Pa·s], above 0
 * @param density [kg/m³]
 * @param housing resistance of the housing [1/m⁴]
 * @returns the element's resistance; negative where the reading is less than the housing alone would take
 * @source darcy-1856
 */
export function elementResistance(
  drop: number,
  flow: number,
  dynamicViscosity: number,
  density: number,
  housing: number,
): number {
  return (drop - housing * density * flow * flow) / (dynamicViscosity * flow)
}
