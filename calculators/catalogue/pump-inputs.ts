import type { QuantityInput } from '../calculator/types.ts'

/** Pieces that the pump calculators share. Accuracies: common practice, no published source. */
export const displacementInput = {
  type: 'quantity',
  label: 'Displacement',
  symbol: 'V',
  help: 'Volume a turn, from the plate or the pump’s data. ISO 4391 calls the flow that it makes without slip the derived flow.',
  kind: 'volume',
  units: ['mL', 'L', 'gal'],
  physical: { minimum: 1e-9, maximum: 1 },
  default: 20e-6,
  accuracy: { relative: 0.005 },
} as const satisfies QuantityInput

export function speedInput<Label extends string, Symbol extends string>(label: Label, symbol: Symbol) {
  return {
    type: 'quantity',
    label,
    symbol,
    help: 'Measured at the shaft. A motor under load slips behind its no-load speed.',
    kind: 'rotationalSpeed',
    physical: { minimum: 0.01, maximum: 1e4 },
    default: 151.84,
    accuracy: { relative: 0.005 },
  } as const satisfies QuantityInput
}

export function pumpFlowInput<Label extends string, Symbol extends string>(
  label: Label,
  symbol: Symbol,
  standard: number,
) {
  return {
    type: 'quantity',
    label,
    symbol,
    help: 'Timed into a measured can or read on a meter, steady and free of bubbles.',
    kind: 'volumeFlow',
    physical: { minimum: 0, maximum: 100 },
    default: standard,
    accuracy: { relative: 0.01 },
  } as const satisfies QuantityInput
}

export function riseInput<Label extends string, Symbol extends string>(
  label: Label,
  symbol: Symbol,
  standard: number,
) {
  return {
    type: 'quantity',
    label,
    symbol,
    help: 'Outlet less inlet. With vacuum at the inlet the rise is more than the outlet gauge shows.',
    kind: 'pressureDifference',
    physical: { minimum: 10, maximum: 1e8 },
    default: standard,
    accuracy: { relative: 0.03 },
  } as const satisfies QuantityInput
}

export function pumpViscosityInput<Label extends string, Symbol extends string>(
  label: Label,
  symbol: Symbol,
  standard: number,
) {
  return {
    type: 'quantity',
    label,
    symbol,
    help: 'At the temperature of the fuel in the pump.',
    kind: 'kinematicViscosity',
    physical: { minimum: 1e-7, maximum: 1 },
    default: standard,
    accuracy: { relative: 0.05 },
  } as const satisfies QuantityInput
}

export const pumpDensityInput = {
  type: 'quantity',
  label: 'Density of the fuel',
  symbol: 'ρ',
  help: 'One value serves both points; it hardly changes the answer.',
  kind: 'density',
  physical: { minimum: 300, maximum: 2000 },
  default: 840,
} as const satisfies QuantityInput
