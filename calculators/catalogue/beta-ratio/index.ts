import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'beta-ratio',
  title: 'Beta ratio and dirt held',
  purpose: 'What does this filter stop, and how long can its element take the dirt?',
  alsoCalled: ['filtration ratio', 'multi-pass test', 'filter efficiency', 'dirt holding capacity'],
  equation: {
    tex: String.raw`\beta_x = \frac{N_u}{N_d} \qquad E = 1 - \frac{1}{\beta_x} \qquad t = \frac{m}{Q\,c\,e}`,
    words:
      'Beta is the count before the filter over the count after it, at one size and larger; the share stopped is one less one over beta. Life is the dirt that the element holds, over flow times dirt in the fuel times the share kept.',
  },
  sources: ['iso-16889', 'well-mixed-balance'],
  validity:
    'Counts of the same size and larger, sampled at the same time in steady flow. ISO 16889 tests with oil and dust, steady flow and filters of β 75 and more; in service expect less. The life holds for even dirt; wax, water, gum and one bad delivery end it sooner.',
  inputs,
  outputs: {
    beta: { type: 'quantity', label: 'Beta at this size', symbol: 'β', kind: 'ratio' },
    verdict: {
      type: 'verdict',
      label: 'The filter',
      options: {
        sheds: { label: 'Gives off more than it takes: find out why', grade: 'action' },
        hardly: { label: 'Stops less than half at this size', grade: 'caution' },
        some: { label: 'Stops part at this size', grade: 'information' },
        most: { label: 'Stops nearly all at this size', grade: 'good' },
      },
    },
    efficiency: {
      type: 'quantity',
      label: 'Share stopped',
      symbol: 'E',
      kind: 'ratio',
      units: ['%', '1'],
    },
    passed: { type: 'quantity', label: 'Share passed', symbol: '1/β', kind: 'ratio', units: ['%', '1'] },
    dirtRate: {
      type: 'quantity',
      label: 'Dirt taken up',
      symbol: 'ṁ',
      kind: 'massFlow',
      units: ['g/h', 'kg/h', 'lb/h'],
    },
    life: {
      type: 'quantity',
      label: 'Running time until the element is full',
      symbol: 't',
      kind: 'time',
      units: ['h', 'd'],
    },
  },
  compute,
  chart: {
    x: 'dirt',
    y: 'life',
    yScale: 'log',
    range: (input) => ({ minimum: input.dirt / 5, maximum: input.dirt * 5 }),
  },
  cases,
})
