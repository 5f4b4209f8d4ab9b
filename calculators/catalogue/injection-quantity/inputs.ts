import type { Inputs, QuantityInput } from '../../calculator/types.ts'

const quantity = {
  kind: 'volume',
  units: ['mm3', 'mL'],
  physical: { minimum: 0, maximum: 1e-3 },
} as const satisfies Partial<QuantityInput>

const rack = {
  kind: 'length',
  units: ['mm', 'in'],
  physical: { minimum: 0, maximum: 0.5 },
} as const satisfies Partial<QuantityInput>

const byRack = { when: { input: 'form', oneOf: ['rack'] } } as const
const byRate = { when: { input: 'form', oneOf: ['rate'] } } as const

/** Accuracies: common practice, no published source. */
export const inputs = {
  form: {
    type: 'choice',
    label: 'What is known',
    help: 'The fuel that the engine burns, or the rack and two points of the calibration.',
    options: [
      { value: 'rate', label: 'Fuel burnt in a time' },
      { value: 'rack', label: 'Rack, and two calibrated settings' },
    ],
    default: 'rate',
  },
  speed: {
    type: 'quantity',
    label: 'Engine speed',
    symbol: 'n',
    help: 'Of the crankshaft.',
    kind: 'rotationalSpeed',
    physical: { minimum: 0.1, maximum: 1000 },
    default: 94.24777960769379,
    accuracy: { relative: 0.005 },
  },
  cylinders: {
    type: 'quantity',
    label: 'Cylinders',
    symbol: 'z',
    help: 'That fire.',
    kind: 'ratio',
    units: ['1'],
    physical: { minimum: 1, maximum: 24 },
    default: 12,
  },
  strokes: {
    type: 'choice',
    label: 'Working cycle',
    help: 'A four-stroke engine injects once in two turns, a two-stroke one once a turn.',
    options: [
      { value: 'four', label: 'Four-stroke' },
      { value: 'two', label: 'Two-stroke' },
    ],
    default: 'four',
  },
  fuelBurnt: {
    type: 'quantity',
    label: 'Fuel burnt',
    symbol: 'Q',
    help: 'By all cylinders: supply less return, or from power and specific consumption.',
    kind: 'volumeFlow',
    physical: { minimum: 0, maximum: 0.1 },
    default: 1.05e-4,
    accuracy: { relative: 0.03 },
    ...byRate,
  },
  rack: {
    type: 'quantity',
    label: 'Rack now',
    symbol: 'r',
    help: 'As the scale on the rack shows it, counted the same way as the two settings below.',
    ...rack,
    default: 0.018,
    accuracy: { absolute: 0.0002 },
    ...byRack,
  },
  firstRack: {
    type: 'quantity',
    label: 'First calibrated rack',
    symbol: 'r₁',
    help: 'From the injector’s calibration.',
    ...rack,
    default: 0.008,
    ...byRack,
  },
  firstQuantity: {
    type: 'quantity',
    label: 'Quantity a stroke there',
    symbol: 'q₁',
    help: 'Measured volume over counted strokes.',
    ...quantity,
    default: 0.25e-6,
    accuracy: { relative: 0.02 },
    ...byRack,
  },
  secondRack: {
    type: 'quantity',
    label: 'Second calibrated rack',
    symbol: 'r₂',
    help: 'Far from the first one.',
    ...rack,
    default: 0.02,
    ...byRack,
  },
  secondQuantity: {
    type: 'quantity',
    label: 'Quantity a stroke there',
    symbol: 'q₂',
    help: 'At the same speed as the first.',
    ...quantity,
    default: 1.3e-6,
    accuracy: { relative: 0.02 },
    ...byRack,
  },
} as const satisfies Inputs
