import type { UnitSystem } from '../../calculators/quantity/types.ts'

/** The unit system that the person has set for the whole site. */
export function unitSystem(): UnitSystem {
  const { units } = document.documentElement.dataset
  return units === 'us' || units === 'mixed' ? units : 'si'
}
