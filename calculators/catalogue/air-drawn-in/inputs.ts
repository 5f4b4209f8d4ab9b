import type { Inputs } from '../../calculator/types.ts'
import { openingInputs } from '../opening-inputs.ts'

/** Accuracies: common practice, no published source. */
export const inputs = {
  ...openingInputs,
  vacuum: {
    type: 'quantity',
    label: 'Vacuum in the line at the leak',
    symbol: 'V',
    help: 'At that place: near the tank it is less than at the pump.',
    kind: 'pressureDifference',
    units: ['kPa', 'inHg', 'psi', 'bar', 'mbar'],
    physical: { minimum: 0, maximum: 1e7 },
    default: 10e3,
    accuracy: { absolute: 1e3 },
  },
  atmosphere: {
    type: 'quantity',
    label: 'Pressure of the air outside',
    symbol: 'p_a',
    help: 'Absolute: 101.3 kPa at sea level, 89.9 at 1000 m.',
    kind: 'absolutePressure',
    physical: { minimum: 1e4, maximum: 1e7 },
    default: 101_325,
  },
  temperature: {
    type: 'quantity',
    label: 'Temperature of the air',
    symbol: 't',
    help: 'Outside, and taken for the glass too; it matters little.',
    kind: 'temperature',
    physical: { minimum: 200, maximum: 450 },
    default: 293.15,
    accuracy: { absolute: 5 },
  },
  flow: {
    type: 'quantity',
    label: 'Flow of fuel',
    symbol: 'Q',
    help: 'Through pump and glass. When priming that is the delivery of the pump.',
    kind: 'volumeFlow',
    physical: { minimum: 1e-9, maximum: 10 },
    default: 4.5e-4,
    accuracy: { relative: 0.05 },
  },
  glassPressure: {
    type: 'quantity',
    label: 'Pressure in the return glass',
    symbol: 'p_g',
    help: 'Gauge pressure in the common return line.',
    kind: 'gaugePressure',
    physical: { minimum: -1e7, maximum: 1e7 },
    default: 10e3,
  },
} as const satisfies Inputs
