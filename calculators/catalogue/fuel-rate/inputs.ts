import type { Inputs } from '../../calculator/types.ts'

/** Accuracies: common practice, no published source. */
export const inputs = {
  power: {
    type: 'quantity',
    label: 'Power',
    symbol: 'P',
    help: 'At the shaft, or at the terminals if the consumption is stated for the terminals.',
    kind: 'power',
    physical: { minimum: 1, maximum: 1e8 },
    default: 1.5e6,
    accuracy: { relative: 0.02 },
  },
  consumption: {
    type: 'quantity',
    label: 'Specific fuel consumption',
    symbol: 'b',
    help: 'At this power, from the engine’s test sheet. It rises at part load. Makers often allow themselves 5 %.',
    kind: 'specificConsumption',
    units: ['g/(kW.h)', 'lb/(hp.h)'],
    physical: { minimum: 1e-8, maximum: 1e-6 },
    valid: { minimum: 160e-6 / 3600, maximum: 600e-6 / 3600 },
    default: 212e-6 / 3600,
    accuracy: { relative: 0.03 },
  },
  density: {
    type: 'quantity',
    label: 'Density of the fuel where it is measured by volume',
    symbol: 'ρ',
    help: 'At the temperature of the meter or tank, not at 15 °C, if litres are counted there.',
    kind: 'density',
    physical: { minimum: 300, maximum: 2000 },
    default: 845,
    accuracy: { relative: 0.005 },
  },
} as const satisfies Inputs
