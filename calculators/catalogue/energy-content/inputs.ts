import type { Inputs, QuantityInput } from '../../calculator/types.ts'

const share = {
  type: 'quantity',
  kind: 'massFraction',
  units: ['%', 'mg/kg'],
} as const satisfies Partial<QuantityInput>

export const inputs = {
  fuel: {
    type: 'choice',
    label: 'Fuel',
    help: 'A fuel that needs heating before it can be pumped and cleaned is a residual one.',
    options: [
      { value: 'distillate', label: 'Distillate: gas oil, diesel, light marine fuel' },
      { value: 'residual', label: 'Residual: heavy fuel' },
    ],
    default: 'distillate',
  },
  density: {
    type: 'quantity',
    label: 'Density at 15 °C',
    symbol: 'ρ',
    help: 'From the certificate. It carries most of what the estimate knows about the fuel.',
    kind: 'density',
    physical: { minimum: 620, maximum: 1150 },
    valid: { minimum: 750, maximum: 1010 },
    default: 845,
    // Common practice: what two density meters differ by, as commonly quoted.
    accuracy: { absolute: 0.5 },
  },
  water: {
    ...share,
    label: 'Water',
    symbol: 'w',
    help: 'By mass. For a clear and bright distillate take zero.',
    physical: { minimum: 0, maximum: 0.3 },
    valid: { minimum: 0, maximum: 0.02 },
    default: 0,
  },
  ash: {
    ...share,
    label: 'Ash',
    symbol: 'a',
    help: 'By mass. Seldom above 0.01 % in a distillate and 0.1 % in a residual fuel.',
    physical: { minimum: 0, maximum: 0.3 },
    valid: { minimum: 0, maximum: 0.005 },
    default: 0,
  },
  sulfur: {
    ...share,
    label: 'Sulfur',
    symbol: 's',
    help: 'By mass. It burns too, but gives less than a quarter of what oil gives.',
    physical: { minimum: 0, maximum: 0.3 },
    valid: { minimum: 0, maximum: 0.05 },
    default: 0.001,
  },
  temperature: {
    type: 'quantity',
    label: 'Temperature of the fuel',
    symbol: 't',
    help: 'Where the litre is measured: the tank, the meter or the injection pump. It does not change the energy of a kilogram.',
    kind: 'temperature',
    physical: { minimum: 223.15, maximum: 423.15 },
    default: 288.15,
    // Common practice: a tank thermometer read with care.
    accuracy: { absolute: 0.5 },
  },
} as const satisfies Inputs
