import { filterDrop, type FilterResistance } from './filter.ts'

const MOST_STEPS = 200

/**
 * Flow through a filter at a pressure drop, the inverse of filterDrop for a positive drop. [m³/s]
 * @param resistance element [1/m³] and housing [1/m⁴], at least one above 0
 * @param drop [Pa], 0 or more
 * @param dynamicViscosity [Pa·s]
 * @param density [kg/m³]
 * @returns the flow; 0 through an element of infinite resistance
 * @source darcy-1856, iso-3968 (housing and element measured apart)
 */
export function filterFlow(
  resistance: FilterResistance,
  drop: number,
  dynamicViscosity: number,
  density: number,
): number {
  const linear = resistance.element * dynamicViscosity
  const quadratic = resistance.housing * density
  if (linear === Infinity || drop <= 0) return 0
  // Written so that a small quadratic part loses no digits.
  return (2 * drop) / (linear + Math.sqrt(linear * linear + 4 * quadratic * drop))
}

/**
 * Pressure drop across two filters side by side that share a flow. [Pa]
 * @param first resistance of one: element [1/m³] and housing [1/m⁴]
 * @param second resistance of the other: element [1/m³] and housing [1/m⁴]; not both plugged
 * @param flow through both together [m³/s], 0 or more
 * @param dynamicViscosity [Pa·s]
 * @param density [kg/m³]
 * @returns the drop at which the two flows add up to it
 * @source darcy-1856, iso-3968 (housing and element measured apart)
 */
export function parallelDrop(
  first: FilterResistance,
  second: FilterResistance,
  flow: number,
  dynamicViscosity: number,
  density: number,
): number {
  const alone = [first, second].map((one) =>
    one.element === Infinity ? Infinity : filterDrop(one, flow, dynamicViscosity, density),
  )
  // With both open the drop is at most that of the freer one alone; halving the interval finds it surely.
  let low = 0
  let high = Math.min(...alone)
  for (let step = 0; step < MOST_STEPS; step++) {
    const middle = (low + high) / 2
    if (middle <= low || middle >= high) break
    const passed =
      filterFlow(first, middle, dynamicViscosity, density) +
      filterFlow(second, middle, dynamicViscosity, density)
    if (passed < flow) low = middle
    else high = middle
  }
  return high
}
