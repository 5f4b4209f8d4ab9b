import type { Inputs, QuantityInput } from '../../calculator/types.ts'

/** Two automatic counters agree to about a tenth: common practice, no published source. */
const count = {
  kind: 'particleConcentration',
  accuracy: { relative: 0.1 },
} as const satisfies Partial<QuantityInput>

export const inputs = {
  upstream: {
    type: 'quantity',
    label: 'Count before the filter',
    symbol: 'N_u',
    help: 'Particles of the chosen size and larger in each millilitre, sampled while the fuel flows.',
    ...count,
    physical: { minimum: 0, maximum: 1e15 },
    default: 400e6,
  },
  downstream: {
    type: 'quantity',
    label: 'Count after the filter',
    symbol: 'N_d',
    help: 'The same size and larger, sampled at the same time.',
    ...count,
    physical: { minimum: 1, maximum: 1e15 },
    default: 2e6,
  },
  countedVolume: {
    type: 'quantity',
    label: 'Volume that was counted',
    symbol: 'V_s',
    help: 'Of each sample. It decides whether enough particles were seen behind the filter.',
    kind: 'volume',
    units: ['mL', 'L'],
    physical: { minimum: 1e-8, maximum: 0.1 },
    default: 25e-6,
  },
  serviceFlow: {
    type: 'quantity',
    label: 'Flow through the filter',
    symbol: 'Q',
    help: 'In service: the pump delivery, or what passes this filter of it.',
    kind: 'volumeFlow',
    physical: { minimum: 1e-9, maximum: 10 },
    default: 4.5e-4,
    accuracy: { relative: 0.05 },
  },
  dirt: {
    type: 'quantity',
    label: 'Dirt in the fuel before the filter',
    symbol: 'c',
    help: 'By mass, from a laboratory (EN 12662 or kin). Fuel that comes back from the tank again and again carries far less than a delivery.',
    kind: 'massConcentration',
    physical: { minimum: 1e-7, maximum: 10 },
    default: 1e-3,
    accuracy: { relative: 0.1 },
  },
  caughtShare: {
    type: 'quantity',
    label: 'Share of that dirt that the filter keeps, by mass',
    symbol: 'e',
    help: 'Mass sits in the large particles, so a fine filter keeps nearly all; 100 % is on the safe side for life.',
    kind: 'ratio',
    units: ['%', '1'],
    physical: { minimum: 0.001, maximum: 1 },
    default: 1,
  },
  capacity: {
    type: 'quantity',
    label: 'Dirt that the element holds',
    symbol: 'm',
    help: 'From the maker, at the change-out drop. Test dust is kinder than the sticky dirt of fuel.',
    kind: 'mass',
    units: ['g', 'kg', 'lb'],
    physical: { minimum: 1e-6, maximum: 1000 },
    default: 0.2,
    accuracy: { relative: 0.1 },
  },
} as const satisfies Inputs
