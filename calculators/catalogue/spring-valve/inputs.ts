import type { Inputs, QuantityInput } from '../../calculator/types.ts'
import { flowingDensity, flowOf } from '../common-inputs.ts'

const gauge = {
  kind: 'gaugePressure',
  physical: { minimum: -101325, maximum: 1e8 },
} as const satisfies Partial<QuantityInput>

export const inputs = {
  cracking: {
    type: 'quantity',
    label: 'Cracking pressure',
    symbol: 'p_s',
    help: 'As the plant data state it: inlet pressure at first flow with an open outlet.',
    kind: 'gaugePressure',
    physical: { minimum: 100, maximum: 1e8 },
    default: 140e3,
    // ISO 4126-1 lets the opening pressure of a type test lie within 3 % or 0.1 bar, the greater.
    accuracy: { absolute: 10e3 },
  },
  override: {
    type: 'quantity',
    label: 'Override at full flow',
    symbol: 'Δp_o',
    help: 'Full-flow pressure less cracking pressure, from the plant data.',
    kind: 'pressureDifference',
    physical: { minimum: 1, maximum: 1e8 },
    default: 20e3,
    // Common practice, no published source.
    accuracy: { relative: 0.2 },
  },
  fullFlow: flowOf('Full flow', 'Q_f', 'The flow at which the override is stated.', 3.45e-4),
  blowdown: {
    type: 'quantity',
    label: 'Blowdown',
    symbol: 'b',
    help: 'Cracking less reseating, as a share of cracking. For liquids ISO 4126-1 allows 2.5 to 20 %.',
    kind: 'ratio',
    units: ['%', '1'],
    physical: { minimum: 0, maximum: 1 },
    valid: { minimum: 0.025, maximum: 0.2 },
    default: 0.1,
    accuracy: { absolute: 0.05 },
  },
  backPressure: {
    type: 'quantity',
    label: 'Pressure at the outlet of the valve',
    symbol: 'p_b',
    help: 'In the line behind it. It adds one to one.',
    ...gauge,
    default: 5e3,
    accuracy: { absolute: 2e3 },
  },
  height: {
    type: 'quantity',
    label: 'Gauge above the valve',
    symbol: 'h',
    help: 'Height of the gauge over the valve; negative if it hangs lower.',
    kind: 'length',
    physical: { minimum: -100, maximum: 100 },
    default: 0.6,
    accuracy: { absolute: 0.05 },
  },
  filling: {
    type: 'choice',
    label: 'Gauge line filled with',
    help: 'A line bled through is full of fuel. A line full of air adds no height.',
    options: [
      { value: 'fuel', label: 'Fuel' },
      { value: 'air', label: 'Air' },
    ],
    default: 'fuel',
  },
  density: flowingDensity,
  flow: flowOf('A flow', 'Q', 'For which the gauge reading is asked.', 2e-4, 0),
  reading: {
    type: 'quantity',
    label: 'A gauge reading',
    symbol: 'p_g',
    help: 'For which the flow through the valve is asked.',
    ...gauge,
    default: 155e3,
    accuracy: { absolute: 3e3 },
  },
} as const satisfies Inputs
