import type { Inputs } from '../../calculator/types.ts'

export const inputs = {
  density: {
    type: 'quantity',
    label: 'Density at 15 °C',
    symbol: 'ρ',
    help: 'From the certificate or the bunker note. It moves the result most.',
    kind: 'density',
    physical: { minimum: 700, maximum: 1200 },
    valid: { minimum: 900, maximum: 1010 },
    default: 991,
    // Common practice: what two density meters differ by, as commonly quoted.
    accuracy: { absolute: 1 },
  },
  viscosity: {
    type: 'quantity',
    label: 'Viscosity',
    symbol: 'ν',
    help: 'Kinematic, at the temperature below.',
    kind: 'kinematicViscosity',
    physical: { minimum: 1e-6, maximum: 1 },
    valid: { minimum: 5e-6, maximum: 1e-3 },
    default: 380e-6,
    // Common practice: two laboratories on a residual fuel.
    accuracy: { relative: 0.05 },
  },
  temperature: {
    type: 'quantity',
    label: 'Temperature of the viscosity',
    symbol: 't',
    help: 'Residual fuels are graded at 50 °C; older papers give 100 °C.',
    kind: 'temperature',
    physical: { minimum: 273.15, maximum: 473.15 },
    valid: { minimum: 313.15, maximum: 403.15 },
    default: 323.15,
  },
  limit: {
    type: 'quantity',
    label: 'Highest CCAI the engine may burn',
    symbol: 'L',
    help: 'The engine maker’s figure. 870 is the usual outer one.',
    kind: 'ratio',
    units: ['1'],
    physical: { minimum: 700, maximum: 1100 },
    default: 870,
  },
} as const satisfies Inputs
