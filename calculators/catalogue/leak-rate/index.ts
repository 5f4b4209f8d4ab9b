import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'leak-rate',
  title: 'Leak rate',
  purpose: 'How much does a pinhole or a cracked nipple lose, in a minute and in a day?',
  alsoCalled: ['pinhole', 'cracked nipple', 'litres a day', 'drops a minute', 'fuel loss'],
  equation: {
    tex: String.raw`p = R\,\mu\,Q + \frac{\rho}{2}\left(\frac{Q}{C A}\right)^2`,
    words:
      'The pressure is spent on viscosity, in proportion to the flow, and on speed, with the square of the flow. The first rules in pinholes and cracks, the second in larger holes.',
  },
  sources: ['sampson-1891', 'hagen-poiseuille', 'water-leak-table'],
  validity:
    'Steady flow of fuel into open air, low-pressure circuit. Exact where viscosity alone or speed alone counts; between them the two drops are added, which is common practice, no published source. Holes of 0.05 to 20 mm. Thresholds of the words, and the accuracies, are common practice.',
  inputs,
  outputs: {
    flow: {
      type: 'quantity',
      label: 'Leak',
      symbol: 'Q',
      kind: 'volumeFlow',
      units: ['L/h', 'L/min', 'gal/h', 'gal/min', 'm3/s'],
    },
    perDay: { type: 'quantity', label: 'Lost in a day', symbol: 'Q · 24 h', kind: 'volume' },
    verdict: {
      type: 'verdict',
      label: 'It shows as',
      options: {
        wet: { label: 'Wetness, less than a drop a minute', grade: 'information' },
        drops: { label: 'Drops', grade: 'caution' },
        stream: { label: 'A stream or a spray', grade: 'action' },
      },
    },
    viscousShare: {
      type: 'quantity',
      label: 'Share of the pressure that viscosity takes',
      symbol: 's',
      kind: 'ratio',
      units: ['%', '1'],
    },
  },
  compute,
  chart: {
    x: 'pressure',
    y: 'flow',
    yScale: 'linear',
    range: (input) => ({ minimum: 0, maximum: Math.max(2 * input.pressure, 1000) }),
  },
  fromFuel: (fuel) => ({
    density: fuel.densityAt15,
    ...(fuel.viscosities[1] ? { kinematicViscosity: fuel.viscosities[1].kinematicViscosity } : {}),
  }),
  cases,
})
