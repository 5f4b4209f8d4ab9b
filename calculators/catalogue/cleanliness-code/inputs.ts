import type { Inputs, QuantityInput } from '../../calculator/types.ts'
import { LARGEST_COUNT, LARGEST_SCALE_NUMBER } from '../../cleanliness/iso-4406.ts'

const count = {
  kind: 'particleConcentration',
  physical: { minimum: 0, maximum: LARGEST_COUNT },
  when: { input: 'direction', oneOf: ['from-counts'] },
} as const satisfies Partial<QuantityInput>

const scale = {
  kind: 'ratio',
  units: ['1'],
  physical: { minimum: 0, maximum: LARGEST_SCALE_NUMBER },
  when: { input: 'direction', oneOf: ['from-code'] },
} as const satisfies Partial<QuantityInput>

/** Counts have no accuracy here: the code is itself the grain in which they are told. */
export const inputs = {
  direction: {
    type: 'choice',
    label: 'What is known',
    help: 'A counter gives counts; a report or a target gives the code.',
    options: [
      { value: 'from-counts', label: 'Counts of particles' },
      { value: 'from-code', label: 'The code' },
    ],
    default: 'from-counts',
  },
  count4: {
    type: 'quantity',
    label: 'Count of 4 µm(c) and larger',
    symbol: 'N₄',
    help: 'In each millilitre. A report for each 100 mL: divide by 100.',
    ...count,
    default: 1800e6,
  },
  count6: {
    type: 'quantity',
    label: 'Count of 6 µm(c) and larger',
    symbol: 'N₆',
    help: 'In each millilitre; never more than of 4 µm(c) and larger.',
    ...count,
    default: 500e6,
  },
  count14: {
    type: 'quantity',
    label: 'Count of 14 µm(c) and larger',
    symbol: 'N₁₄',
    help: 'In each millilitre; never more than of 6 µm(c) and larger.',
    ...count,
    default: 45e6,
  },
  sample: {
    type: 'quantity',
    label: 'Volume that was counted',
    symbol: 'V_s',
    help: 'Of the sample itself, without what it was diluted with. With fewer than 20 particles seen, the number gets the sign ≥.',
    kind: 'volume',
    units: ['mL', 'L'],
    physical: { minimum: 1e-8, maximum: 0.1 },
    default: 25e-6,
    when: { input: 'direction', oneOf: ['from-counts'] },
  },
  code4: {
    type: 'quantity',
    label: 'First number, 4 µm(c)',
    symbol: 'R₄',
    help: 'A whole number of 0 to 28.',
    ...scale,
    default: 18,
  },
  code6: {
    type: 'quantity',
    label: 'Second number, 6 µm(c)',
    symbol: 'R₆',
    help: 'A whole number; never above the first.',
    ...scale,
    default: 16,
  },
  code14: {
    type: 'quantity',
    label: 'Third number, 14 µm(c)',
    symbol: 'R₁₄',
    help: 'A whole number; never above the second.',
    ...scale,
    default: 13,
  },
} as const satisfies Inputs
