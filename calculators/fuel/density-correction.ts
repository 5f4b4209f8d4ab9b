import { FIFTEEN_CELSIUS, volumeFactor1980 } from './density-1980.ts'
import { SIXTY_FAHRENHEIT, volumeFactor2004 } from './density-2004.ts'
import {
  GROUPS_1980,
  GROUPS_2004,
  groupAt,
  groupsOf,
  type ExpansionConstants,
  type Product,
} from './density-groups.ts'

/** '2004': API MPMS 11.1, base 60 °F. '1980': Tables 54A, 54B and 54D, base 15 °C. */
export type Edition = '2004' | '1980'

interface Method {
  readonly groups: readonly ExpansionConstants[]
  /** [K] */
  readonly baseTemperature: number
  readonly factor: (baseDensity: number, temperature: number, constants: ExpansionConstants) => number
}

const METHODS: Readonly<Record<Edition, Method>> = {
  '2004': { groups: GROUPS_2004, baseTemperature: SIXTY_FAHRENHEIT, factor: volumeFactor2004 },
  '1980': { groups: GROUPS_1980, baseTemperature: FIFTEEN_CELSIUS, factor: volumeFactor1980 },
}

/**
 * An observed density may lie in the step between two groups, where no base density fits exactly. The 2004 borders are
 * rounded so finely that the step stays under this share of the density; the 1980 steps do not.
 */
const STEP_NOT_FELT = 5e-6

export interface BaseDensity {
  /** At the edition's base temperature and atmospheric pressure. [kg/m³] */
  readonly density: number
  /** [K] */
  readonly temperature: number
  readonly constants: ExpansionConstants
}

export type BaseDensityResult =
  | { readonly found: BaseDensity }
  /** No base density in the product's range gives what was observed. The limits are those at that temperature. */
  | { readonly outside: { readonly minimum: number; readonly maximum: number } }
  /** It falls into the step between two groups, which the 1980 tables have. */
  | { readonly between: readonly [ExpansionConstants, ExpansionConstants] }

/**
 * Density at base temperature from a density observed at another one, by halving: the observed density rises with the
 * base density, and halving also holds at the borders between groups, where faster iterations can swing to and fro.
 * No correction for a glass hydrometer: the density is taken as true at the observed temperature.
 * @param observedDensity [kg/m³]
 * @param temperature at which it was observed [K]
 * @param product group, or 'refined' [-]
 * @param edition '2004' or '1980' [-]
 * @returns the base density with its group, or why there is none
 * @source astm-d1250
 */
export function baseDensity(
  observedDensity: number,
  temperature: number,
  product: Product,
  edition: Edition,
): BaseDensityResult {
  const method = METHODS[edition]
  const groups = groupsOf(product, method.groups)
  const observed = (density: number) =>
    density * method.factor(density, temperature, groupAt(density, groups))
  let low = groups[0]?.minimum ?? NaN
  let high = groups.at(-1)?.maximum ?? NaN
  const limits = { minimum: observed(low), maximum: observed(high) }
  if (!(observedDensity >= limits.minimum && observedDensity <= limits.maximum)) return { outside: limits }
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2
    if (observed(middle) < observedDensity) low = middle
    else high = middle
  }
  const near =
    Math.abs(observed(low) - observedDensity) < Math.abs(observed(high) - observedDensity) ? low : high
  if (Math.abs(observed(near) / observedDensity - 1) > STEP_NOT_FELT) {
    return { between: [groupAt(low * (1 - 1e-9), groups), groupAt(high * (1 + 1e-9), groups)] }
  }
  return { found: { density: near, temperature: method.baseTemperature, constants: groupAt(near, groups) } }
}

/**
 * Density at a temperature, at atmospheric pressure, from a base density. [kg/m³]
 * @param base density [kg/m³] at base temperature, with its group, from baseDensity
 * @param temperature [K]; see the edition's factor for its range
 * @param edition '2004' or '1980' [-], the one that the base density was found with
 * @returns the density
 * @source astm-d1250
 */
export function densityAt(base: BaseDensity, temperature: number, edition: Edition): number {
  return base.density * METHODS[edition].factor(base.density, temperature, base.constants)
}
