import type { Inputs, QuantityInput } from '../../calculator/types.ts'

/** Any reading at all: only that both stand in the same unit matters. */
const number = {
  kind: 'ratio',
  units: ['1'],
  physical: { minimum: -1e9, maximum: 1e9 },
} as const satisfies Partial<QuantityInput>

const spread = { ...number, physical: { minimum: 1e-9, maximum: 1e9 } } as const

export const inputs = {
  gauges: {
    type: 'choice',
    label: 'Read with',
    help: 'What one gauge shows too high it shows too high both times. Two gauges may be wrong in opposite ways.',
    options: [
      { value: 'two', label: 'Two gauges' },
      { value: 'one', label: 'One gauge, read twice' },
    ],
    default: 'two',
  },
  firstReading: {
    type: 'quantity',
    label: 'First reading',
    symbol: 'x₁',
    help: 'As a plain number. All numbers here stand in one unit, whichever it is: kPa, °C, L/min.',
    ...number,
    default: 210,
  },
  secondReading: {
    type: 'quantity',
    label: 'Second reading',
    symbol: 'x₂',
    help: 'In the same unit, taken in the same state of the engine.',
    ...number,
    default: 199,
  },
  firstAccuracy: {
    type: 'quantity',
    label: 'Accuracy of the first gauge',
    symbol: 'U₁',
    help: 'Plus or minus so much, from its dial or certificate. A class of 1.6 means 1.6 % of the full scale.',
    ...spread,
    default: 10,
    when: { input: 'gauges', oneOf: ['two'] },
  },
  secondAccuracy: {
    type: 'quantity',
    label: 'Accuracy of the second gauge',
    symbol: 'U₂',
    help: 'Plus or minus so much.',
    ...spread,
    default: 6,
    when: { input: 'gauges', oneOf: ['two'] },
  },
  repeatability: {
    type: 'quantity',
    label: 'Repeatability of the gauge',
    symbol: 'U_r',
    help: 'How far apart two readings of one unchanged state can lie: stick the needle, tap, read again. Often a quarter of the accuracy, as a guess.',
    ...spread,
    default: 3,
    when: { input: 'gauges', oneOf: ['one'] },
  },
  unrest: {
    type: 'quantity',
    label: 'Unrest of what is measured',
    symbol: 'U_p',
    help: 'How far it swings by itself while nothing changes: plus or minus so much. Zero if the needle stands still.',
    ...number,
    physical: { minimum: 0, maximum: 1e9 },
    default: 2,
  },
} as const satisfies Inputs
