import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'real-difference',
  title: 'Is this difference real?',
  purpose: 'Two readings differ: has something changed, or is it only the gauges?',
  alsoCalled: [
    'gauge accuracy',
    'two gauges disagree',
    'measurement uncertainty',
    'two readings really different',
  ],
  equation: {
    tex: String.raw`E = \frac{|x_2 - x_1|}{\sqrt{U_1^2 + U_2^2 + 2U_p^2}}`,
    words:
      'The difference over the root of the sum of squares of the two accuracies and of the unrest of both readings. Above one the difference is more than these would make in nineteen cases of twenty.',
  },
  sources: ['gum-2008', 'iso-iec-17043'],
  validity:
    'Readings of the same quantity at the same place, in the same unit, each accuracy taken as the half-width of an interval that holds the true value in about 95 % of cases, errors independent. Two gauges of one make from one batch may share an error; then the sum promises too much. How accuracies are guessed is common practice, no published source.',
  inputs,
  outputs: {
    verdict: {
      type: 'verdict',
      label: 'The difference',
      weighsAccuracy: true,
      options: {
        real: { label: 'Is real: the gauges alone would hardly make it', grade: 'information' },
        cannotBeTold: { label: 'Cannot be told from none with these gauges', grade: 'caution' },
      },
    },
    difference: {
      type: 'quantity',
      label: 'Difference, second less first',
      symbol: 'd',
      kind: 'ratio',
      units: ['1'],
    },
    smallest: {
      type: 'quantity',
      label: 'Smallest difference that can be told',
      symbol: 'U',
      kind: 'ratio',
      units: ['1'],
    },
    ratio: {
      type: 'quantity',
      label: 'Difference over what is left open',
      symbol: 'E',
      kind: 'ratio',
      units: ['1'],
    },
    chance: {
      type: 'quantity',
      label: 'Chance of so large a difference where there is none',
      symbol: 'P',
      kind: 'ratio',
      units: ['%', '1'],
    },
  },
  compute,
  chart: {
    x: 'secondReading',
    y: 'ratio',
    yScale: 'linear',
    range: (input) => {
      const reach =
        1.5 *
        Math.max(
          Math.abs(input.secondReading - input.firstReading),
          input.gauges === 'two'
            ? Math.hypot(input.firstAccuracy, input.secondAccuracy)
            : 2 * input.repeatability,
          input.unrest,
        )
      return { minimum: input.firstReading - reach, maximum: input.firstReading + reach }
    },
    limits: () => [{ label: 'Real above', y: 1 }],
  },
  cases,
})
