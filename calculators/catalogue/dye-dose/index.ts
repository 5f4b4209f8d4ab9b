import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'dye-dose',
  title: 'Dye for a leak test',
  purpose: 'How much dye does the whole circuit need, and how long does it stay in the fuel?',
  alsoCalled: ['fluorescent dye', 'leak test', 'ultraviolet dye', 'tracer', 'how much dye'],
  equation: {
    tex: String.raw`D = c_0\,(V_{\text{t}} + V_{\text{c}}),\qquad \frac{c_n}{c_0} = \left(\frac{V_{\text{l}} + V_{\text{c}}}{V_{\text{f}} + V_{\text{c}}}\right)^{n}`,
    words:
      'The dose is the share on the label times all the fuel that takes part, circuit included. What is left after a number of fills is the share that stays in each fill, to the power of that number.',
  },
  sources: ['well-mixed-balance'],
  validity:
    'A tank and circuit that mix well through the return, filled with clean fuel each time. Dye that sits in joints does not follow this. Dose and threshold are common practice, no published source; the label of the dye rules.',
  inputs,
  outputs: {
    dose: { type: 'quantity', label: 'Dose of dye', symbol: 'D', kind: 'volume', units: ['mL', 'L', 'gal'] },
    leftShare: {
      type: 'quantity',
      label: 'Left after these fills, share of the dose',
      symbol: 'c_n/c₀',
      kind: 'ratio',
      units: ['%', '1'],
    },
    fillsNeeded: {
      type: 'quantity',
      label: 'Fills until it no longer disturbs',
      symbol: 'n_s',
      kind: 'ratio',
      units: ['1'],
    },
    concentration: {
      type: 'quantity',
      label: 'Dye in the fuel after these fills',
      symbol: 'c_n',
      kind: 'ratio',
      units: ['%', '1'],
    },
    volume: { type: 'quantity', label: 'Fuel that takes part', symbol: 'V', kind: 'volume' },
  },
  compute,
  chart: {
    x: 'fills',
    y: 'leftShare',
    yScale: 'log',
    range: (input) => ({ minimum: 0, maximum: Math.max(6, 2 * input.fills) }),
    limits: (input) => [{ label: 'No longer disturbs', y: input.threshold }],
  },
  cases,
})
