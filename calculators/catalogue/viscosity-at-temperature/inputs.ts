import type { Inputs } from '../../calculator/types.ts'
import { lineInputs, temperatureLimits } from '../measured-line.ts'

export const inputs = {
  ...lineInputs,
  wantedTemperature: {
    type: 'quantity',
    label: 'Wanted temperature',
    symbol: 'T',
    help: 'Temperature for which the viscosity is asked.',
    ...temperatureLimits,
    default: 313.15,
  },
  cloudPoint: {
    type: 'quantity',
    label: 'Cloud point of the fuel',
    symbol: 'T_c',
    help: 'From the certificate. Under it wax separates and the fuel is no longer one liquid. It changes no number.',
    kind: 'temperature',
    physical: { minimum: 150, maximum: 800 },
    default: 273.15,
  },
} as const satisfies Inputs
