import type { Inputs } from '../../calculator/types.ts'
import {
  densityTemperatureLimits,
  knownDensityInput,
  knownTemperatureInput,
  productInput,
} from '../known-density.ts'

const corrected = { input: 'density', oneOf: ['corrected'] } as const

export const inputs = {
  direction: {
    type: 'choice',
    label: 'Wanted',
    help: 'A certificate gives the kinematic figure. A pump, a filter and a rotating viscometer feel the dynamic one.',
    options: [
      { value: 'dynamic', label: 'Dynamic from kinematic viscosity' },
      { value: 'kinematic', label: 'Kinematic from dynamic viscosity' },
    ],
    default: 'dynamic',
  },
  kinematicViscosity: {
    type: 'quantity',
    label: 'Kinematic viscosity',
    symbol: 'ν',
    help: 'At the temperature below. In mm²/s, which is the same as cSt.',
    kind: 'kinematicViscosity',
    physical: { minimum: 1e-8, maximum: 100 },
    default: 3e-6,
    // Common practice, rounded up: two laboratories agree within 0.65 % on base oils by ISO 3104.
    accuracy: { relative: 0.01 },
    when: { input: 'direction', oneOf: ['dynamic'] },
  },
  dynamicViscosity: {
    type: 'quantity',
    label: 'Dynamic viscosity',
    symbol: 'μ',
    help: 'At the temperature below. In mPa·s, which is the same as cP.',
    kind: 'dynamicViscosity',
    physical: { minimum: 1e-5, maximum: 1e5 },
    default: 2.5e-3,
    // Common practice: a rotating viscometer read with care.
    accuracy: { relative: 0.02 },
    when: { input: 'direction', oneOf: ['kinematic'] },
  },
  density: {
    type: 'choice',
    label: 'Density',
    help: 'Both viscosities and the density must stand at one temperature. The certificate gives it at 15 °C or 60 °F.',
    options: [
      { value: 'corrected', label: 'Known at another temperature, to be corrected' },
      { value: 'measured', label: 'Known at the temperature of the viscosity' },
    ],
    default: 'corrected',
  },
  knownDensity: knownDensityInput,
  knownTemperature: { ...knownTemperatureInput, when: corrected },
  product: { ...productInput, when: corrected },
  temperature: {
    type: 'quantity',
    label: 'Temperature of the viscosity',
    symbol: 't',
    help: 'Temperature at which the viscosity stands.',
    ...densityTemperatureLimits,
    default: 313.15,
    when: corrected,
  },
} as const satisfies Inputs
