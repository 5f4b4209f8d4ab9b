import type { Inputs, QuantityInput } from '../../calculator/types.ts'

const viscosity = {
  type: 'quantity',
  kind: 'kinematicViscosity',
  // Common practice, rounded up: two laboratories agree within 0.65 % on base oils by ISO 3104.
  accuracy: { relative: 0.01 },
} as const satisfies Partial<QuantityInput>

export const inputs = {
  newViscosity: {
    ...viscosity,
    label: 'Viscosity of the new oil',
    symbol: 'ν_new',
    help: 'Of the batch in the sump, measured if you can: oils of one grade differ by 10 % and more.',
    physical: { minimum: 1e-6, maximum: 0.1 },
    default: 140e-6,
  },
  usedViscosity: {
    ...viscosity,
    label: 'Viscosity of the used oil',
    symbol: 'ν_used',
    help: 'At the same temperature and by the same method as the new oil.',
    physical: { minimum: 1e-6, maximum: 0.1 },
    default: 120e-6,
  },
  fuelViscosity: {
    ...viscosity,
    label: 'Viscosity of the fuel',
    symbol: 'ν_fuel',
    help: 'At that same temperature. Fuel that has lain in hot oil has lost its thinnest part and is thicker than fresh fuel.',
    physical: { minimum: 0.21e-6, maximum: 1e-3 },
    default: 3e-6,
    accuracy: { relative: 0.15 },
  },
  thickening: {
    type: 'quantity',
    label: 'Thickening by soot and age',
    symbol: 's',
    help: 'By how much the oil would be thicker than new without any fuel. 0 % when nothing is known; its accuracy then carries the doubt.',
    kind: 'ratio',
    units: ['%', '1'],
    physical: { minimum: -0.5, maximum: 2 },
    valid: { minimum: 0, maximum: 0.4 },
    default: 0,
    // Common practice: what oil in sound service commonly thickens or shears by between changes.
    accuracy: { absolute: 0.05 },
  },
  oilVolume: {
    type: 'quantity',
    label: 'Oil in the sump',
    symbol: 'V',
    help: 'As it is now, with the fuel in it: to say how much fuel that is.',
    kind: 'volume',
    physical: { minimum: 0, maximum: 1000 },
    default: 0.6,
  },
} as const satisfies Inputs
