import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'pump-motor-power',
  title: 'Pump motor power',
  purpose: 'What power does the pump take, and does its motor carry it?',
  alsoCalled: ['motor rating', 'pump horsepower', 'torque', 'motor trips', 'size of motor for the pump'],
  equation: {
    tex: String.raw`P = \frac{Q\,\Delta p}{\eta}`,
    words: 'Shaft power is flow times pressure rise over the overall efficiency of the pump.',
  },
  sources: ['crane-tp410', 'iso-4391', 'pump-exercises'],
  validity:
    'Any pump at one steady point. The efficiency decides the answer and changes with viscosity and pressure; take it from the pump’s data. Margin and accuracies are common practice, no published source.',
  inputs,
  outputs: {
    shaft: { type: 'quantity', label: 'Shaft power', symbol: 'P', kind: 'power' },
    verdict: {
      type: 'verdict',
      label: 'Motor',
      options: {
        enough: { label: 'Carries it with a margin', grade: 'good' },
        tight: { label: 'Carries it with little in hand', grade: 'caution' },
        over: { label: 'Is overloaded', grade: 'action' },
      },
    },
    load: {
      type: 'quantity',
      label: 'Share of the rated output',
      symbol: 'P/P_r',
      kind: 'ratio',
      units: ['%', '1'],
    },
    hydraulic: {
      type: 'quantity',
      label: 'Hydraulic power',
      symbol: 'P_h',
      kind: 'power',
      units: ['W', 'kW', 'hp'],
    },
    electrical: { type: 'quantity', label: 'Electrical power', symbol: 'P_e', kind: 'power' },
    torque: { type: 'quantity', label: 'Torque at the shaft', symbol: 'M', kind: 'torque' },
  },
  compute,
  chart: {
    x: 'rise',
    y: 'shaft',
    yScale: 'linear',
    range: (input) => ({ minimum: 100, maximum: 1.5 * Math.max(input.rise, 100) }),
    limits: (input) => [{ label: 'Rated output', y: input.rating }],
  },
  cases,
})
