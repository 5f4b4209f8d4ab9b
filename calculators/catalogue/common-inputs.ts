import type { QuantityInput } from '../calculator/types.ts'

/** Ranges and accuracies that several calculators of valves and of heat share. Accuracies: common practice. */

export const flowOf = (label: string, symbol: string, help: string, value: number, minimum = 1e-9) =>
  ({
    type: 'quantity',
    label,
    symbol,
    help,
    kind: 'volumeFlow',
    physical: { minimum, maximum: 1 },
    default: value,
    accuracy: { relative: 0.05 },
  }) as const satisfies QuantityInput

/** Within these the equations of heat give numbers; the fuel itself is another matter. [K] */
const POSSIBLE = { minimum: 150, maximum: 800 }

export const temperatureOf = (label: string, symbol: string, help: string, value: number) =>
  ({
    type: 'quantity',
    label,
    symbol,
    help,
    kind: 'temperature',
    physical: POSSIBLE,
    valid: { minimum: 255.37, maximum: 477.59 },
    default: value,
    accuracy: { absolute: 1 },
  }) as const satisfies QuantityInput

export const density15 = {
  type: 'quantity',
  label: 'Density of the fuel at 15 °C',
  symbol: 'ρ₁₅',
  help: 'From the certificate. It sets the specific heat and, with the temperature, the mass that flows.',
  kind: 'density',
  physical: { minimum: 600, maximum: 1200 },
  valid: { minimum: 653, maximum: 1075 },
  default: 845,
} as const satisfies QuantityInput

export const flowingDensity = {
  type: 'quantity',
  label: 'Density of the fuel',
  symbol: 'ρ',
  help: 'At its temperature there; a few kg/m³ matter little.',
  kind: 'density',
  physical: { minimum: 300, maximum: 2000 },
  default: 845,
  accuracy: { relative: 0.01 },
} as const satisfies QuantityInput

export const flowingViscosity = {
  type: 'quantity',
  label: 'Viscosity of the fuel',
  symbol: 'ν',
  help: 'At its temperature there; the viscosity calculator gives it.',
  kind: 'kinematicViscosity',
  physical: { minimum: 1e-7, maximum: 1 },
  default: 3e-6,
  accuracy: { relative: 0.05 },
} as const satisfies QuantityInput
