import type { Inputs } from '../../calculator/types.ts'
import {
  densityTemperatureLimits,
  editionInput,
  knownDensityInput,
  knownTemperatureInput,
  productInput,
} from '../known-density.ts'

export const inputs = {
  product: productInput,
  edition: editionInput,
  knownDensity: knownDensityInput,
  knownTemperature: knownTemperatureInput,
  volume: {
    type: 'quantity',
    label: 'Volume',
    symbol: 'V',
    help: 'As read from the tank or the meter, not yet corrected.',
    kind: 'volume',
    physical: { minimum: 0, maximum: 1e7 },
    default: 1,
    // Common practice: a dipped or metered delivery.
    accuracy: { relative: 0.005 },
  },
  volumeTemperature: {
    type: 'quantity',
    label: 'Temperature of that volume',
    symbol: 't_V',
    help: 'Temperature of the fuel when the volume was read.',
    ...densityTemperatureLimits,
    default: 303.15,
  },
  targetTemperature: {
    type: 'quantity',
    label: 'Wanted temperature',
    symbol: 't',
    help: 'Temperature at which density and volume are asked.',
    ...densityTemperatureLimits,
    default: 313.15,
  },
  pressure: {
    type: 'quantity',
    label: 'Pressure at the wanted temperature',
    symbol: 'p',
    help: 'Nil in a tank. At the pressures of a low-pressure circuit it changes a density by a few parts in 10 000.',
    kind: 'gaugePressure',
    physical: { minimum: -101325, maximum: 2e7 },
    valid: { minimum: -101325, maximum: 10342136 },
    default: 0,
    when: { input: 'edition', oneOf: ['2004'] },
  },
} as const satisfies Inputs
