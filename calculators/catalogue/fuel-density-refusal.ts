import type { Refusal } from '../calculator/types.ts'
import { inWords } from './words.ts'

/** Why no density at a temperature can be given for a fuel of this density at 15 °C. */
export function noRefinedDensity(field: string, label: string, density15: number): Refusal {
  return {
    field,
    reason: `${label} is ${inWords(density15, 'density')}, which the standard for petroleum densities does not cover`,
    accepted: 'about 612 to 1163 kg/m³ at 15 °C',
  }
}
