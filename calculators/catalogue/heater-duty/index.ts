import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'heater-duty',
  title: 'Fuel heater: duty and outlet',
  purpose: 'How much heat does a temperature rise need, and what does this heater reach at this flow?',
  alsoCalled: [
    'heater power',
    'heat exchanger',
    'preheater',
    'effectiveness NTU',
    'specific heat of fuel',
    'how big a heater',
  ],
  equation: {
    tex: String.raw`P = \dot m\,\left(h(T_2) - h(T_1)\right),\qquad T_2 = T_1 + \varepsilon\,\frac{C_{\min}}{C_f}\,(T_h - T_1)`,
    words:
      'The duty is the mass flow times the rise of heat content. An exchanger brings the fuel a part of the way to the hot side’s temperature: effectiveness times the lesser capacity rate over that of the fuel.',
  },
  sources: ['nbs-mp97', 'ht-library', 'astm-d1250', 'en-590'],
  validity:
    'Steady flow, no loss to the air, no wax that melts on the way. Specific heat of petroleum to ±4 % up to 204 °C, from memory of its source. Accuracies are common practice, no published source.',
  inputs,
  outputs: {
    outlet: { type: 'quantity', label: 'Fuel at the outlet', symbol: 'T₂', kind: 'temperature' },
    duty: { type: 'quantity', label: 'Duty', symbol: 'P', kind: 'power' },
    rise: { type: 'quantity', label: 'Rise', symbol: 'T₂ − T₁', kind: 'temperatureDifference' },
    meanHeat: {
      type: 'quantity',
      label: 'Specific heat, which itself is known to ±4 %',
      symbol: 'c',
      kind: 'specificHeat',
    },
  },
  compute,
  chart: {
    x: 'flow',
    y: 'outlet',
    instead: { y: 'duty', when: { input: 'form', oneOf: ['wanted'] } },
    yScale: 'linear',
    range: (input) => ({ minimum: 0.2 * input.flow, maximum: 2 * input.flow }),
  },
  fromFuel: (fuel) => ({ density15: fuel.densityAt15 }),
  cases,
})
