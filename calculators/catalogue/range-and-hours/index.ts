import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'range-and-hours',
  title: 'Hours and range of a tank',
  purpose: 'How long and how far does the fuel in the tank last with this duty?',
  alsoCalled: [
    'endurance',
    'duty cycle',
    'how far on a tank',
    'hours on a tank',
    'how far to go on this fuel',
  ],
  equation: {
    tex: String.raw`t = \frac{V\,(1 - s)}{\sum f_i Q_i}, \qquad d = t \sum f_i v_i`,
    words:
      'The fuel counted on, over the mean of what the states burn, each weighed by its share of the time; the range is that time times the mean speed.',
  },
  sources: ['nist-sp811'],
  validity:
    'A duty that stays as it is written. Weighed means by the meaning of the words; the accuracy of the burn is common practice, no published source. Fuel that is warmer in the tank than at the meter counts for less: litres of the same temperature are meant.',
  inputs,
  outputs: {
    hours: { type: 'quantity', label: 'Running hours', symbol: 't', kind: 'time', units: ['h', 'd'] },
    range: {
      type: 'quantity',
      label: 'Range, where it travels',
      symbol: 'd',
      kind: 'distance',
      units: ['km', 'mi'],
    },
    burn: {
      type: 'quantity',
      label: 'Mean burn',
      symbol: 'Q̄',
      kind: 'volumeFlow',
      units: ['L/h', 'L/min', 'gal/h', 'gal/min'],
    },
    usable: { type: 'quantity', label: 'Fuel counted on', symbol: 'V_u', kind: 'volume' },
  },
  compute,
  chart: {
    x: 'content',
    y: 'hours',
    yScale: 'linear',
    range: (input) => ({ minimum: 0.05 * input.content, maximum: 1.2 * input.content }),
  },
  cases,
})
