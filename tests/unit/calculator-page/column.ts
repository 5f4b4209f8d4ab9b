import { defineCalculator } from '../../../calculators/calculator/define-calculator.ts'

/** A column of liquid, small enough to check in the head, with each kind of input that the form has. */
export const column = defineCalculator({
  id: 'column',
  title: 'Column of liquid',
  purpose: 'What does a column of liquid weigh on its foot?',
  equation: { tex: 'p = \\rho g h', words: 'Pressure is density times gravity times height.' },
  sources: ['nist-sp811'],
  validity: 'A liquid at rest.',
  inputs: {
    liquid: {
      type: 'choice',
      label: 'Liquid',
      help: 'What fills the column.',
      options: [
        { value: 'water', label: 'Water' },
        { value: 'other', label: 'Another liquid' },
      ],
      default: 'water',
    },
    height: {
      type: 'quantity',
      label: 'Height',
      symbol: 'h',
      help: 'From the foot to the surface.',
      kind: 'length',
      physical: { minimum: 0, maximum: 1000 },
      default: 2,
      accuracy: { absolute: 0.01 },
    },
    density: {
      type: 'quantity',
      label: 'Density',
      symbol: 'ρ',
      help: 'Of the other liquid.',
      kind: 'density',
      physical: { minimum: 100, maximum: 20000 },
      default: 850,
      accuracy: { relative: 0.01 },
      when: { input: 'liquid', oneOf: ['other'] },
    },
    temperature: {
      type: 'quantity',
      label: 'Temperature',
      symbol: 'T',
      help: 'Only written down.',
      kind: 'temperature',
      physical: { minimum: 200, maximum: 400 },
      default: 288.15,
      accuracy: { absolute: 1 },
    },
  },
  outputs: {
    pressure: { type: 'quantity', label: 'Pressure at the foot', symbol: 'p', kind: 'pressureDifference' },
    size: {
      type: 'verdict',
      label: 'Size',
      options: {
        small: { label: 'Below one bar', grade: 'good' },
        large: { label: 'One bar or more', grade: 'caution' },
      },
    },
  },
  compute: (input) => {
    const density = input.liquid === 'water' ? 1000 : input.density
    const pressure = density * 9.80665 * input.height
    return {
      outputs: { pressure, size: pressure < 1e5 ? ('small' as const) : ('large' as const) },
      steps: [
        {
          label: 'Pressure at the foot',
          symbol: 'p',
          rule: 'ρ g h',
          value: pressure,
          kind: 'pressureDifference',
        },
      ],
      notices: input.height > 5 ? [{ grade: 'caution' as const, text: '=A tall column' }] : [],
    }
  },
  cases: [
    {
      description: 'Two metres of water',
      source: 'nist-sp811',
      place: 'inch of water',
      input: { height: '2 m' },
      expected: { pressure: '19.6133 kPa' },
      relativeTolerance: 1e-9,
      whyTolerance: 'exact',
    },
  ],
})
