import type { Inputs, QuantityInput } from '../../calculator/types.ts'

function volume<Label extends string, Symbol extends string>(
  label: Label,
  symbol: Symbol,
  help: string,
  standard: number,
) {
  return {
    type: 'quantity',
    label,
    symbol,
    help,
    kind: 'volume',
    units: ['L', 'm3', 'gal', 'impgal'],
    physical: { minimum: 0, maximum: 1e5 },
    default: standard,
    accuracy: { relative: 0.02 },
  } as const satisfies QuantityInput
}

/** Accuracies: common practice, no published source. */
export const inputs = {
  tank: volume('Fuel in the tank, as dipped', 'V_t', 'At the time of the dose.', 1),
  circuit: volume(
    'Volume of the circuit outside the tank',
    'V_c',
    'Lines, filters and headers: they mix with the tank and keep their dye.',
    0.025,
  ),
  share: {
    type: 'quantity',
    label: 'Dye by volume',
    symbol: 'c₀',
    help: 'From the label of the dye; the label rules.',
    kind: 'ratio',
    units: ['%', '1'],
    physical: { minimum: 1e-7, maximum: 0.1 },
    default: 0.0008,
  },
  left: volume('Fuel in the tank before each fill', 'V_l', 'How far it is burnt down.', 1),
  full: volume('Fuel in the tank after each fill', 'V_f', 'With clean fuel, mixed by the return.', 4),
  fills: {
    type: 'quantity',
    label: 'Number of fills',
    symbol: 'n',
    help: 'After the test.',
    kind: 'ratio',
    units: ['1'],
    physical: { minimum: 0, maximum: 1000 },
    default: 3,
  },
  threshold: {
    type: 'quantity',
    label: 'Share of the dose that no longer disturbs',
    symbol: 's',
    help: 'For the next test. The lamp and the kept card decide.',
    kind: 'ratio',
    units: ['%', '1'],
    physical: { minimum: 1e-6, maximum: 0.99 },
    default: 0.05,
  },
} as const satisfies Inputs
