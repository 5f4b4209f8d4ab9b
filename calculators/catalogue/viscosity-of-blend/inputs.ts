import type { Inputs, QuantityInput } from '../../calculator/types.ts'

const viscosity = {
  type: 'quantity',
  kind: 'kinematicViscosity',
  // From where the equation begins. It also keeps clear of 0.2 mm²/s, where the Refutas index ends.
  physical: { minimum: 0.21e-6, maximum: 1 },
} as const satisfies Partial<QuantityInput>

/** Common practice, rounded up: two laboratories agree within 0.65 % on base oils by ISO 3104. */
const measured = { relative: 0.01 } as const

const share = {
  type: 'quantity',
  kind: 'ratio',
  units: ['%', '1'],
  physical: { minimum: 0, maximum: 1 },
  // Common practice: quantities metered or dipped into a blend.
  accuracy: { absolute: 0.005 },
} as const satisfies Partial<QuantityInput>

export const inputs = {
  wanted: {
    type: 'choice',
    label: 'Wanted',
    help: 'A blend of blends can be worked in steps: the rule gives the same whichever two are mixed first.',
    options: [
      { value: 'blend-of-two', label: 'Viscosity of a blend of two' },
      { value: 'blend-of-three', label: 'Viscosity of a blend of three' },
      { value: 'share', label: 'Share needed for a wanted viscosity' },
    ],
    default: 'blend-of-two',
  },
  firstViscosity: {
    ...viscosity,
    label: 'Viscosity of the first liquid',
    symbol: 'ν₁',
    help: 'At the temperature of the blend, the same for all of them.',
    default: 3e-6,
    accuracy: measured,
  },
  secondViscosity: {
    ...viscosity,
    label: 'Viscosity of the second liquid',
    symbol: 'ν₂',
    help: 'At that same temperature. Bring it there first if the certificate gives another one.',
    default: 10e-6,
    accuracy: measured,
  },
  secondShare: {
    ...share,
    label: 'Share of the second liquid',
    symbol: 'x₂',
    help: 'Of the whole blend; the first liquid is the rest. By mass for fuels, by volume as the standard is stated.',
    default: 0.5,
    when: { input: 'wanted', oneOf: ['blend-of-two', 'blend-of-three'] },
  },
  thirdViscosity: {
    ...viscosity,
    label: 'Viscosity of the third liquid',
    symbol: 'ν₃',
    help: 'At that same temperature.',
    default: 5e-6,
    accuracy: measured,
    when: { input: 'wanted', oneOf: ['blend-of-three'] },
  },
  thirdShare: {
    ...share,
    label: 'Share of the third liquid',
    symbol: 'x₃',
    help: 'Of the whole blend; the first liquid is the rest.',
    default: 0.1,
    when: { input: 'wanted', oneOf: ['blend-of-three'] },
  },
  wantedViscosity: {
    ...viscosity,
    label: 'Wanted viscosity of the blend',
    symbol: 'ν',
    help: 'Between those of the two liquids.',
    default: 5e-6,
    when: { input: 'wanted', oneOf: ['share'] },
  },
} as const satisfies Inputs
