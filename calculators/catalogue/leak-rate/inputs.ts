import type { Inputs } from '../../calculator/types.ts'
import { openingInputs } from '../opening-inputs.ts'

/** Accuracies: common practice, no published source. */
export const inputs = {
  ...openingInputs,
  pressure: {
    type: 'quantity',
    label: 'Pressure inside',
    symbol: 'p',
    help: 'Gauge pressure of the fuel at the leak, against the open air.',
    kind: 'gaugePressure',
    physical: { minimum: 0, maximum: 1e8 },
    default: 210e3,
    accuracy: { relative: 0.05 },
  },
  kinematicViscosity: {
    type: 'quantity',
    label: 'Viscosity of the fuel',
    symbol: 'ν',
    help: 'At the temperature of the fuel at the leak.',
    kind: 'kinematicViscosity',
    physical: { minimum: 1e-7, maximum: 1 },
    default: 3e-6,
    accuracy: { relative: 0.05 },
  },
  density: {
    type: 'quantity',
    label: 'Density of the fuel',
    symbol: 'ρ',
    help: 'At the same temperature. A few kg/m³ matter little.',
    kind: 'density',
    physical: { minimum: 300, maximum: 2000 },
    default: 828,
  },
} as const satisfies Inputs
