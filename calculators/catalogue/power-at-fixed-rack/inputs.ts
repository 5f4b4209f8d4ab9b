import type { Inputs, QuantityInput } from '../../calculator/types.ts'

const density = {
  type: 'quantity',
  kind: 'density',
  physical: { minimum: 620, maximum: 1150 },
  valid: { minimum: 750, maximum: 1010 },
  // Common practice: what two density meters differ by, as commonly quoted.
  accuracy: { absolute: 0.5 },
} as const satisfies Partial<QuantityInput>

const temperature = {
  type: 'quantity',
  kind: 'temperature',
  physical: { minimum: 223.15, maximum: 423.15 },
  valid: { minimum: 243.15, maximum: 423.15 },
  // Common practice: a thermometer in the header, read with care.
  accuracy: { absolute: 1 },
} as const satisfies Partial<QuantityInput>

const energy = {
  type: 'quantity',
  kind: 'specificEnergy',
  physical: { minimum: 2e7, maximum: 5e7 },
  valid: { minimum: 3.9e7, maximum: 4.4e7 },
  default: 42.7e6,
  // Common practice: two laboratories with bomb calorimeters.
  accuracy: { relative: 0.005 },
  when: { input: 'energyFrom', oneOf: ['known'] },
} as const satisfies Partial<QuantityInput>

export const inputs = {
  energyFrom: {
    type: 'choice',
    label: 'Energy of the two fuels',
    help: 'A measured value is better where there is one; the estimate is for clean distillates.',
    options: [
      { value: 'density', label: 'Estimated from their densities' },
      { value: 'known', label: 'Known for both' },
    ],
    default: 'density',
  },
  referencePower: {
    type: 'quantity',
    label: 'Power on the reference fuel',
    symbol: 'P₀',
    help: 'At the rack in question, usually rated power at full rack.',
    kind: 'power',
    physical: { minimum: 1, maximum: 1e9 },
    default: 1.5e6,
  },
  referenceDensity: {
    ...density,
    label: 'Density of the reference fuel at 15 °C',
    symbol: 'ρ₀',
    help: 'The fuel on which the power was set or declared.',
    default: 845,
  },
  referenceTemperature: {
    ...temperature,
    label: 'Temperature of the reference fuel where it is metered',
    symbol: 't₀',
    help: 'At the injectors or the injection pump, not in the tank.',
    default: 313.15,
  },
  referenceEnergy: {
    ...energy,
    label: 'Net energy of the reference fuel',
    symbol: 'H₀',
    help: 'Net, not gross: the engine never gets the heat of the condensed water.',
  },
  density: {
    ...density,
    label: 'Density of the fuel burnt at 15 °C',
    symbol: 'ρ',
    help: 'From its certificate.',
    default: 830,
  },
  temperature: {
    ...temperature,
    label: 'Temperature of the fuel burnt where it is metered',
    symbol: 't',
    help: 'Hot fuel is light fuel: the injector meters a volume.',
    default: 333.15,
  },
  netEnergy: {
    ...energy,
    label: 'Net energy of the fuel burnt',
    symbol: 'H',
    help: 'Net, not gross.',
  },
} as const satisfies Inputs
