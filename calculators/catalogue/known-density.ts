import type { ChoiceInput, QuantityInput, Refusal } from '../calculator/types.ts'
import type { BaseDensity, BaseDensityResult, Edition } from '../fuel/density-correction.ts'
import type { Product } from '../fuel/density-groups.ts'
import { inWords } from './words.ts'

/** −58 to 302 °F, the range of the 2004 edition. */
export const densityTemperatureLimits = {
  kind: 'temperature',
  physical: { minimum: 150, maximum: 700 },
  valid: { minimum: 223.15, maximum: 423.15 },
  // Common practice: a tank thermometer read with care.
  accuracy: { absolute: 0.5 },
} as const satisfies Partial<QuantityInput>

export const productInput = {
  type: 'choice',
  label: 'Product',
  help: 'The standard chooses a refined group by density, not by name: a light winter diesel falls among the jet fuels.',
  options: [
    { value: 'refined', label: 'Refined product, group by density' },
    { value: 'fuelOils', label: 'Fuel oils and heavier diesel' },
    { value: 'jetFuels', label: 'Jet fuels, kerosines and light diesel' },
    { value: 'transition', label: 'Between gasolines and jet fuels' },
    { value: 'gasolines', label: 'Gasolines' },
    { value: 'crude', label: 'Crude oil' },
    { value: 'lubricating', label: 'Lubricating oil' },
  ],
  default: 'refined',
} as const satisfies ChoiceInput

export const editionInput = {
  type: 'choice',
  label: 'Edition',
  help: 'Name it when you quote a result. For diesel and heavier fuels up to 60 °C the two differ by up to 3 parts in 100 000.',
  options: [
    { value: '2004', label: 'API MPMS 11.1, 2004 (base 60 °F)' },
    { value: '1980', label: 'Tables 53 and 54, 1980 (base 15 °C)' },
  ],
  default: '2004',
} as const satisfies ChoiceInput

export const knownDensityInput = {
  type: 'quantity',
  label: 'Known density',
  symbol: 'ρ₁',
  help: 'From the certificate or a density meter. A glass hydrometer reading must first be corrected for its glass.',
  kind: 'density',
  physical: { minimum: 300, maximum: 2000 },
  default: 845,
  // Common practice: what two density meters differ by, as commonly quoted.
  accuracy: { absolute: 0.5 },
} as const satisfies QuantityInput

export const knownTemperatureInput = {
  type: 'quantity',
  label: 'Temperature of the known density',
  symbol: 't₁',
  help: '15 °C or 60 °F on most certificates; otherwise the temperature at which it was measured.',
  ...densityTemperatureLimits,
  accuracy: { absolute: 0.1 },
  default: 288.15,
} as const satisfies QuantityInput

interface KnownDensity {
  readonly knownDensity: number
  readonly knownTemperature: number
  readonly product: Product
  readonly edition: Edition
}

export function groupLabel(product: Product): string {
  return productInput.options.find((option) => option.value === product)?.label ?? product
}

/** Why a known density leads to no base density, in words for the field `knownDensity`. */
export function whyNoBase(
  input: KnownDensity,
  result: Exclude<BaseDensityResult, { found: BaseDensity }>,
): Refusal {
  const read = `${knownDensityInput.label} is ${inWords(input.knownDensity, 'density')} at ${inWords(input.knownTemperature, 'temperature')}`
  if ('between' in result) {
    const [lighter, heavier] = result.between
    return {
      field: 'knownDensity',
      reason: `${read}, which falls into the step between «${groupLabel(lighter.group)}» and «${groupLabel(heavier.group)}»`,
      accepted: `one of these two groups${input.edition === '1980' ? ', or the 2004 edition, in which the step is not felt' : ''}`,
    }
  }
  const { minimum, maximum } = result.outside
  const range =
    minimum < maximum
      ? `${inWords(minimum, 'density')} to ${inWords(maximum, 'density')} at that temperature`
      : 'a temperature within the range of the standard'
  const byDensity =
    input.product === 'refined' ? '' : ', or the refined product whose group follows from its density'
  return {
    field: 'knownDensity',
    reason: `${read}, which is not a density of the product «${groupLabel(input.product)}»`,
    accepted: `${range}${byDensity}`,
  }
}
