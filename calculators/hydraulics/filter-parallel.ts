import { filterDrop, type FilterResistance } from './filter.ts'

/** Newton gains digits so fast that this many steps always suffice. */
const MOST_STEPS = 60

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
  const filters = [first, second].filter((one) => one.element !== Infinity)
  // The freer one carries at least its equal share, so the drop is at least this. Each flow rises with the drop along
  // a curve that bends downwards: from below, Newton comes up to the root without overshoot.
  const share = flow / filters.length
  let drop = Math.min(...filters.map((one) => filterDrop(one, share, dynamicViscosity, density)))
  for (let step = 0; step < MOST_STEPS; step++) {
    let missing = flow
    let slope = 0
    for (const one of filters) {
      missing -= filterFlow(one, drop, dynamicViscosity, density)
      const linear = one.element * dynamicViscosity
      slope += 1 / Math.sqrt(linear * linear + 4 * one.housing * density * drop)
    }
    const change = missing / slope
    if (!(change > 1e-15 * drop)) break
    drop += change
  }
  return drop
}
