import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'orifice-flow',
  title: 'Orifice flow and drop',
  purpose: 'What passes this orifice at this drop, and how sure is that with cold fuel?',
  alsoCalled: ['orifice plate', 'restrictor', 'choke', 'jet', 'bleed hole', 'ISO 5167'],
  equation: {
    tex: String.raw`Q = \frac{C}{\sqrt{1-\beta^4}}\,\frac{\pi d^2}{4}\sqrt{\frac{2\,\Delta p}{\rho}}`,
    words:
      'Flow is a coefficient, times the approach factor, times the area of the bore, times the root of twice the drop over density.',
  },
  sources: ['iso-5167-2', 'orifice-smooth-transition', 'crane-tp410'],
  validity:
    'Measuring plate: ISO 5167-2, bore from 12.5 mm, line 50 to 1000 mm, 0.1 to 0.75 of the line, Reynolds number from 5000 or 16000β². Small restrictors lie outside every standard: their coefficients, 0.58 to 0.70 sharp and 0.70 to 0.86 drilled in turbulent flow and falling in laminar flow, and all accuracies are common practice, no published source.',
  inputs,
  outputs: {
    flow: { type: 'quantity', label: 'Flow', symbol: 'Q', kind: 'volumeFlow' },
    drop: { type: 'quantity', label: 'Pressure drop', symbol: 'Δp', kind: 'pressureDifference' },
    flowLow: {
      type: 'quantity',
      label: 'Flow with the lowest coefficient',
      symbol: 'Q_low',
      kind: 'volumeFlow',
    },
    flowHigh: {
      type: 'quantity',
      label: 'Flow with the highest coefficient',
      symbol: 'Q_high',
      kind: 'volumeFlow',
    },
    coefficient: { type: 'quantity', label: 'Coefficient', symbol: 'C', kind: 'ratio', units: ['1'] },
    coefficientLow: {
      type: 'quantity',
      label: 'Lowest coefficient it may have',
      symbol: 'C_low',
      kind: 'ratio',
      units: ['1'],
    },
    coefficientHigh: {
      type: 'quantity',
      label: 'Highest coefficient it may have',
      symbol: 'C_high',
      kind: 'ratio',
      units: ['1'],
    },
    reynolds: { type: 'quantity', label: 'Reynolds number', symbol: 'Re', kind: 'ratio', units: ['1'] },
  },
  compute,
  chart: {
    x: 'kinematicViscosity',
    y: 'coefficient',
    yScale: 'linear',
    range: (input) => ({ minimum: 1e-6, maximum: Math.min(1, Math.max(5e-5, 2 * input.kinematicViscosity)) }),
  },
  fromFuel: (fuel) => ({ density: fuel.densityAt15 }),
  cases,
})
