import type { Inputs, QuantityInput } from '../../calculator/types.ts'

/** −58 to 302 °F, the range of the 2004 edition. */
const temperatureLimits = {
  kind: 'temperature',
  physical: { minimum: 150, maximum: 700 },
  valid: { minimum: 223.15, maximum: 423.15 },
  // Common practice: a tank thermometer read with care.
  accuracy: { absolute: 0.5 },
} as const satisfies Partial<QuantityInput>

export const inputs = {
  product: {
    type: 'choice',
    label: 'Product',
    help: 'The standard chooses a refined group by density, not by name: a light winter diesel falls among the jet fuels.',
    options: [
      { value: 'refined', label: 'Refined product, group by density' },
      { value: 'fuelOils', label: 'Fuel oils and heavier diesel' },
      { value: 'jetFuels', label: 'Jet fuels, kerosines and light diesel' },
      { value: 'transition', label: 'Between gasolines and jet fuels' },
      { value: 'gasolines', label: 'Gasolines' },
      { value: 'crude', label: 'Crude oil' },
      { value: 'lubricating', label: 'Lubricating oil' },
    ],
    default: 'refined',
  },
  edition: {
    type: 'choice',
    label: 'Edition',
    help: 'Name it when you quote a result. For diesel and heavier fuels up to 60 °C the two differ by up to 3 parts in 100 000.',
    options: [
      { value: '2004', label: 'API MPMS 11.1, 2004 (base 60 °F)' },
      { value: '1980', label: 'Tables 53 and 54, 1980 (base 15 °C)' },
    ],
    default: '2004',
  },
  knownDensity: {
    type: 'quantity',
    label: 'Known density',
    symbol: 'ρ₁',
    help: 'From the certificate or a density meter. A glass hydrometer reading must first be corrected for its glass.',
    kind: 'density',
    physical: { minimum: 300, maximum: 2000 },
    default: 845,
    // Common practice: what two density meters differ by, as commonly quoted.
    accuracy: { absolute: 0.5 },
  },
  knownTemperature: {
    type: 'quantity',
    label: 'Temperature of the known density',
    symbol: 't₁',
    help: '15 °C or 60 °F on most certificates; otherwise the temperature at which it was measured.',
    ...temperatureLimits,
    accuracy: { absolute: 0.1 },
    default: 288.15,
  },
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
    ...temperatureLimits,
    default: 303.15,
  },
  targetTemperature: {
    type: 'quantity',
    label: 'Wanted temperature',
    symbol: 't',
    help: 'Temperature at which density and volume are asked.',
    ...temperatureLimits,
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
