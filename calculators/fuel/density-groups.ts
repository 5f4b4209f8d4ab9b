export type ProductGroup = 'crude' | 'fuelOils' | 'jetFuels' | 'transition' | 'gasolines' | 'lubricating'

/** 'refined' leaves the choice among the four refined groups to the density, as the standard does. */
export type Product = ProductGroup | 'refined'

/** α = K₀/ρ² + K₁/ρ + K₂ at the edition's base temperature, for densities from minimum to under maximum. */
export interface ExpansionConstants {
  readonly group: ProductGroup
  /** [kg/m³] */
  readonly minimum: number
  /** [kg/m³] */
  readonly maximum: number
  readonly k0: number
  readonly k1: number
  readonly k2: number
}

/** Base 60 °F, α per °F. @source astm-d1250 (2004) */
export const GROUPS_2004: readonly ExpansionConstants[] = [
  { group: 'crude', minimum: 610.6, maximum: 1163.5, k0: 341.0957, k1: 0, k2: 0 },
  { group: 'gasolines', minimum: 610.6, maximum: 770.352, k0: 192.4571, k1: 0.2438, k2: 0 },
  { group: 'transition', minimum: 770.352, maximum: 787.5195, k0: 1489.067, k1: 0, k2: -0.0018684 },
  { group: 'jetFuels', minimum: 787.5195, maximum: 838.3127, k0: 330.301, k1: 0, k2: 0 },
  { group: 'fuelOils', minimum: 838.3127, maximum: 1163.5, k0: 103.872, k1: 0.2701, k2: 0 },
  { group: 'lubricating', minimum: 800.9, maximum: 1163.5, k0: 0, k1: 0.34878, k2: 0 },
]

/**
 * Base 15 °C, α per °C: Tables 53A/54A, 53B/54B and 53D/54D. The tables step by 0.5 kg/m³ and leave the half
 * step between two groups open; here the lighter group runs up to the heavier one's first entry.
 * Limits of tables 54A and 54D from memory. @source astm-d1250 (1980)
 */
export const GROUPS_1980: readonly ExpansionConstants[] = [
  { group: 'crude', minimum: 610.5, maximum: 1075, k0: 613.9723, k1: 0, k2: 0 },
  { group: 'gasolines', minimum: 653, maximum: 770, k0: 346.4228, k1: 0.4388, k2: 0 },
  { group: 'transition', minimum: 770, maximum: 788, k0: 2680.3206, k1: 0, k2: -0.00336312 },
  { group: 'jetFuels', minimum: 788, maximum: 839, k0: 594.5418, k1: 0, k2: 0 },
  { group: 'fuelOils', minimum: 839, maximum: 1075, k0: 186.9696, k1: 0.48618, k2: 0 },
  { group: 'lubricating', minimum: 800, maximum: 1164, k0: 0, k1: 0.6278, k2: 0 },
]

const REFINED: ReadonlySet<ProductGroup> = new Set(['gasolines', 'transition', 'jetFuels', 'fuelOils'])

/**
 * The groups among which a product's density chooses, lightest first.
 * @param product a group, or 'refined' for the four refined ones [-]
 * @param table GROUPS_2004 or GROUPS_1980 [-]
 * @returns the rows of the table, in rising density
 * @source astm-d1250
 */
export function groupsOf(
  product: Product,
  table: readonly ExpansionConstants[],
): readonly ExpansionConstants[] {
  return table.filter((row) => (product === 'refined' ? REFINED.has(row.group) : row.group === product))
}

/**
 * The group that a density at base temperature falls in.
 * @param baseDensity density at the edition's base temperature [kg/m³]
 * @param groups rows in rising density, from groupsOf [-]
 * @returns the row; the nearest one for a density outside all of them
 * @source astm-d1250
 */
export function groupAt(baseDensity: number, groups: readonly ExpansionConstants[]): ExpansionConstants {
  const found = groups.find((row) => baseDensity < row.maximum) ?? groups.at(-1)
  if (found === undefined) throw new RangeError('a product needs at least one group')
  return found
}

/**
 * Thermal expansion coefficient at base temperature, α = K₀/ρ² + K₁/ρ + K₂, in the table's unit
 * (per °F in the 2004 table, per °C in the 1980 one).
 * @param baseDensity density at the edition's base temperature [kg/m³]
 * @param constants row of the table [-]
 * @returns α [1/°F] or [1/°C]
 * @source astm-d1250
 */
export function expansionCoefficient(baseDensity: number, constants: ExpansionConstants): number {
  return (constants.k0 / baseDensity + constants.k1) / baseDensity + constants.k2
}
