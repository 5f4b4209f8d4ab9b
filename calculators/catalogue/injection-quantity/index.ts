import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'injection-quantity',
  title: 'Injected quantity',
  purpose: 'How much fuel does one injector deliver at each stroke?',
  alsoCalled: ['quantity per stroke', 'rack and fuel', 'fuel delivery'],
  equation: {
    tex: String.raw`q = \frac{2\,Q}{z\,n}\quad\text{(four-stroke)}, \qquad q = q_1 + (q_2 - q_1)\frac{r - r_1}{r_2 - r_1}`,
    words:
      'Fuel burnt over the number of injections in the same time, which in a four-stroke engine is half the number of turns for each cylinder; or, from the rack, on the straight line through two calibrated settings.',
  },
  sources: ['nist-sp811'],
  validity:
    'Steady speed and load. From the fuel burnt it is the mean of all cylinders. From the rack it holds between the two settings, near the speed at which they were calibrated, for an injector in order; the straight line and the accuracies are common practice, no published source. Quantities are volumes at the temperature of the measurement.',
  inputs,
  outputs: {
    quantity: {
      type: 'quantity',
      label: 'Quantity a stroke and cylinder',
      symbol: 'q',
      kind: 'volume',
      units: ['mm3', 'mL'],
    },
    fuelBurnt: { type: 'quantity', label: 'Fuel burnt by all cylinders', symbol: 'Q', kind: 'volumeFlow' },
    injections: {
      type: 'quantity',
      label: 'Injections a minute, all cylinders',
      symbol: 'N',
      kind: 'ratio',
      units: ['1'],
    },
  },
  compute,
  chart: {
    x: 'speed',
    y: 'quantity',
    instead: { y: 'fuelBurnt', when: { input: 'form', oneOf: ['rack'] } },
    yScale: 'linear',
    range: (input) => ({ minimum: 0.4 * input.speed, maximum: 1.3 * input.speed }),
  },
  cases,
})
