import type { ChoiceInput, QuantityInput } from '../calculator/types.ts'
import { narrowGap, roundHole, type SmallOpening } from '../hydraulics/orifice-small.ts'

/** The shape of a leak, shared by fuel going out and air coming in. Accuracies: common practice, no published source. */
export const openingInputs = {
  shape: {
    type: 'choice',
    label: 'Opening',
    help: 'A pinhole is round. A cracked nipple, a lifted flare or a cut seal is a long narrow gap.',
    options: [
      { value: 'hole', label: 'Round hole' },
      { value: 'gap', label: 'Crack or gap' },
    ],
    default: 'hole',
  },
  diameter: {
    type: 'quantity',
    label: 'Diameter of the hole',
    symbol: 'd',
    help: 'By a drill’s shank or a wire that just enters. The leak goes with its square and, in pinholes, with its fourth power.',
    kind: 'length',
    units: ['mm', 'um', 'in'],
    physical: { minimum: 1e-6, maximum: 0.1 },
    valid: { minimum: 5e-5, maximum: 0.02 },
    default: 5e-4,
    accuracy: { relative: 0.05 },
    when: { input: 'shape', oneOf: ['hole'] },
  },
  gap: {
    type: 'quantity',
    label: 'Width of the gap',
    symbol: 'b',
    help: 'By a feeler gauge. A hair is about 0.07 mm. The leak goes with its third power.',
    kind: 'length',
    units: ['mm', 'um', 'in'],
    physical: { minimum: 1e-6, maximum: 0.01 },
    default: 5e-5,
    accuracy: { relative: 0.1 },
    when: { input: 'shape', oneOf: ['gap'] },
  },
  crackLength: {
    type: 'quantity',
    label: 'Length of the crack',
    symbol: 'w',
    help: 'Along the surface, as far as it is wet.',
    kind: 'length',
    units: ['mm', 'cm', 'in'],
    physical: { minimum: 1e-5, maximum: 10 },
    default: 0.01,
    accuracy: { relative: 0.1 },
    when: { input: 'shape', oneOf: ['gap'] },
  },
  wall: {
    type: 'quantity',
    label: 'Thickness of the wall',
    symbol: 't_w',
    help: 'The way through the hole or crack.',
    kind: 'length',
    units: ['mm', 'in'],
    physical: { minimum: 1e-6, maximum: 1 },
    default: 1.5e-3,
    accuracy: { relative: 0.1 },
  },
  coefficient: {
    type: 'quantity',
    label: 'Coefficient of discharge',
    symbol: 'C',
    help: 'About 0.62 for a sharp edge, 0.8 for a short bored hole, near 1 for a rounded inlet.',
    kind: 'ratio',
    units: ['1'],
    physical: { minimum: 0.05, maximum: 1 },
    default: 0.62,
    accuracy: { absolute: 0.06 },
  },
} as const satisfies Record<string, QuantityInput | ChoiceInput>

interface Shape {
  readonly shape: 'hole' | 'gap'
  readonly diameter: number
  readonly gap: number
  readonly crackLength: number
  readonly wall: number
}

/** The opening as the physics sees it. */
export function openingOf({ shape, diameter, gap, crackLength, wall }: Shape): SmallOpening {
  return shape === 'hole' ? roundHole(diameter, wall) : narrowGap(gap, crackLength, wall)
}
