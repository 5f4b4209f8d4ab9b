import type { Inputs } from '../../calculator/types.ts'
import {
  densityTemperatureLimits,
  editionInput,
  knownDensityInput,
  knownTemperatureInput,
  productInput,
} from '../known-density.ts'

export const inputs = {
  meter: {
    type: 'choice',
    label: 'What the meter shows',
    help: 'Read its plate or its ticket. A meter that corrects to 15 °C says so; correcting its figure again is a double count.',
    options: [
      { value: 'as-run', label: 'The volume as it ran, uncorrected' },
      { value: 'compensated', label: 'The volume already brought to 15 °C' },
    ],
    default: 'as-run',
  },
  volume: {
    type: 'quantity',
    label: 'Metered volume',
    symbol: 'V',
    help: 'The difference of the two readings, before and after.',
    kind: 'volume',
    physical: { minimum: 0, maximum: 1e7 },
    default: 3,
    // Common practice: the error allowed to a delivery meter in service.
    accuracy: { relative: 0.005 },
  },
  meterFactor: {
    type: 'quantity',
    label: 'Meter factor',
    symbol: 'F',
    help: 'True volume over metered volume, from the last proving of the meter. 1 when nothing is known.',
    kind: 'ratio',
    units: ['1'],
    physical: { minimum: 0.5, maximum: 2 },
    valid: { minimum: 0.98, maximum: 1.02 },
    default: 1,
  },
  volumeTemperature: {
    type: 'quantity',
    label: 'Temperature of the fuel at the meter',
    symbol: 't_V',
    help: 'Mean over the delivery, at the meter and not in the tank.',
    ...densityTemperatureLimits,
    accuracy: { absolute: 1 },
    default: 303.15,
    when: { input: 'meter', oneOf: ['as-run'] },
  },
  knownDensity: knownDensityInput,
  knownTemperature: knownTemperatureInput,
  product: productInput,
  edition: editionInput,
} as const satisfies Inputs
