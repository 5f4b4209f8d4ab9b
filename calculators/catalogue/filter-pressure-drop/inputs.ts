import type { Inputs, QuantityInput } from '../../calculator/types.ts'

const drop = {
  kind: 'pressureDifference',
  physical: { minimum: 0, maximum: 1e7 },
} as const satisfies Partial<QuantityInput>

const flow = {
  kind: 'volumeFlow',
  physical: { minimum: 1e-9, maximum: 10 },
} as const satisfies Partial<QuantityInput>

const viscosity = {
  kind: 'kinematicViscosity',
  physical: { minimum: 1e-7, maximum: 1 },
} as const satisfies Partial<QuantityInput>

const density = {
  kind: 'density',
  physical: { minimum: 300, maximum: 2000 },
} as const satisfies Partial<QuantityInput>

/** Accuracies and the housing's share: common practice, no published source. */
export const inputs = {
  drop: {
    type: 'quantity',
    label: 'Pressure drop read',
    symbol: 'Δp',
    help: 'Across the filter, inlet less outlet, at steady flow.',
    ...drop,
    default: 60e3,
    accuracy: { absolute: 2e3 },
  },
  flow: {
    type: 'quantity',
    label: 'Flow during the reading',
    symbol: 'Q',
    help: 'With a positive displacement pump and a shut bypass: the pump delivery at that speed.',
    ...flow,
    default: 4.5e-4,
    accuracy: { relative: 0.05 },
  },
  kinematicViscosity: {
    type: 'quantity',
    label: 'Viscosity during the reading',
    symbol: 'ν',
    help: 'At the temperature of the fuel in the filter; the viscosity calculator gives it.',
    ...viscosity,
    default: 5.5e-6,
    accuracy: { relative: 0.05 },
  },
  density: {
    type: 'quantity',
    label: 'Density during the reading',
    symbol: 'ρ',
    help: 'At the temperature of the fuel in the filter. A few kg/m³ matter little.',
    ...density,
    default: 845,
    accuracy: { relative: 0.01 },
  },
  referenceFlow: {
    type: 'quantity',
    label: 'Reference flow',
    symbol: 'Q₀',
    help: 'The flow at which the clean drop and the change-out drop are stated.',
    ...flow,
    default: 4.5e-4,
  },
  referenceViscosity: {
    type: 'quantity',
    label: 'Reference viscosity',
    symbol: 'ν₀',
    help: 'The viscosity at which the clean drop and the change-out drop are stated.',
    ...viscosity,
    default: 3e-6,
  },
  referenceDensity: {
    type: 'quantity',
    label: 'Reference density',
    symbol: 'ρ₀',
    help: 'The density that goes with the reference viscosity.',
    ...density,
    default: 828,
  },
  cleanDrop: {
    type: 'quantity',
    label: 'Drop of a new element at reference',
    symbol: 'Δp_new',
    help: 'From the plant data, or the first reading after the last change brought to reference.',
    ...drop,
    physical: { minimum: 10, maximum: 1e7 },
    default: 25e3,
    accuracy: { relative: 0.1 },
  },
  housingShare: {
    type: 'quantity',
    label: 'Share of the housing in that drop',
    symbol: 's',
    help: 'Head, ports and bowl without element. The maker may state it; one fifth is a common guess.',
    kind: 'ratio',
    units: ['%', '1'],
    physical: { minimum: 0, maximum: 1 },
    default: 0.2,
    accuracy: { absolute: 0.1 },
  },
  changeOut: {
    type: 'quantity',
    label: 'Drop at which the element is changed',
    symbol: 'Δp_max',
    help: 'Stated at reference flow and viscosity.',
    ...drop,
    physical: { minimum: 10, maximum: 1e7 },
    default: 100e3,
  },
  otherFlow: {
    type: 'quantity',
    label: 'Another flow',
    symbol: 'Q₁',
    help: 'For which the drop with the fuel of the reading is asked.',
    kind: 'volumeFlow',
    physical: { minimum: 0, maximum: 10 },
    default: 3e-4,
  },
} as const satisfies Inputs
