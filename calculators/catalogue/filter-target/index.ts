import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

const beta = (size: number, symbol: string) =>
  ({ type: 'quantity', label: `Beta needed at ${size} µm(c)`, symbol, kind: 'ratio', units: ['1'] }) as const

export default defineCalculator({
  id: 'filter-target',
  title: 'What a cleanliness target asks of a filter',
  purpose: 'Which filter brings this fuel to that code, in one pass or by going round?',
  alsoCalled: ['target cleanliness', 'which filter', 'kidney loop', 'beta ratio needed'],
  equation: {
    tex: String.raw`\beta = \frac{N}{N_t} \quad \text{(once)} \qquad \frac{N_t}{N} = e^{-n\,(1 - 1/\beta)} \quad \text{(n turns)}`,
    words:
      'In one pass beta must be the count now over the count wanted. Going round, the count in a mixed tank falls by e for each turn that a perfect filter sees, and more slowly as beta falls.',
  },
  sources: ['iso-4406', 'iso-16889', 'well-mixed-balance'],
  validity:
    'Upper ends of both codes. Once: all the fuel passes the filter. Again and again: the tank is well mixed and no dirt comes in; a tank that is not stirred needs more turns. The limit of 1000 and the margin are common practice, no published source.',
  inputs,
  outputs: {
    beta4: beta(4, 'β₄'),
    beta6: beta(6, 'β₆'),
    beta14: beta(14, 'β₁₄'),
    verdict: {
      type: 'verdict',
      label: 'The target',
      options: {
        none: { label: 'Met already', grade: 'good' },
        possible: { label: 'Within what filters are rated for', grade: 'information' },
        beyond: { label: 'More than one filter can be trusted with', grade: 'action' },
      },
    },
    leastTurns: {
      type: 'quantity',
      label: 'Turns of a mixed tank with a perfect filter',
      symbol: 'n₀',
      kind: 'ratio',
      units: ['1'],
    },
  },
  compute,
  cases,
})
