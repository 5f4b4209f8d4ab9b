import type { Inputs, QuantityInput } from '../../calculator/types.ts'

const fourVariables = { input: 'method', oneOf: ['d4737-a', 'd4737-b'] } as const

const recovery = {
  type: 'quantity',
  kind: 'temperature',
  physical: { minimum: 323.15, maximum: 773.15 },
  // Common practice: about what two laboratories differ by on a middle distillate.
  accuracy: { absolute: 3 },
} as const satisfies Partial<QuantityInput>

export const inputs = {
  method: {
    type: 'choice',
    label: 'Method',
    help: 'Name it with the result: the methods differ by up to a unit on the same fuel.',
    options: [
      { value: 'd4737-a', label: 'ASTM D4737, procedure A (the same as ISO 4264)' },
      { value: 'd4737-b', label: 'ASTM D4737, procedure B: grade 2-D of low sulfur' },
      { value: 'd976', label: 'ASTM D976: density and mid-boiling point only' },
    ],
    default: 'd4737-a',
  },
  density: {
    type: 'quantity',
    label: 'Density at 15 °C',
    symbol: 'D',
    help: 'From the certificate.',
    kind: 'density',
    physical: { minimum: 650, maximum: 1050 },
    valid: { minimum: 800, maximum: 900 },
    default: 845,
    // Common practice: what two density meters differ by, as commonly quoted.
    accuracy: { absolute: 0.5 },
  },
  t10: {
    ...recovery,
    label: '10 % recovered',
    symbol: 'T₁₀',
    help: 'Temperature at which 10 % by volume has come over in the distillation.',
    valid: { minimum: 423.15, maximum: 553.15 },
    default: 493.15,
    when: fourVariables,
  },
  t50: {
    ...recovery,
    label: '50 % recovered',
    symbol: 'T₅₀',
    help: 'The mid-boiling point.',
    valid: { minimum: 473.15, maximum: 593.15 },
    default: 548.15,
  },
  t90: {
    ...recovery,
    label: '90 % recovered',
    symbol: 'T₉₀',
    help: 'Temperature at which 90 % by volume has come over.',
    valid: { minimum: 533.15, maximum: 653.15 },
    default: 608.15,
    when: fourVariables,
  },
} as const satisfies Inputs
