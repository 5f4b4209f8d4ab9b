import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'specific-consumption',
  title: 'Specific fuel consumption',
  purpose: 'How much fuel does the engine burn for its work, brought to reference fuel and conditions?',
  alsoCalled: ['BSFC', 'SFOC', 'specific fuel oil consumption', 'grams per kilowatt hour'],
  equation: {
    tex: String.raw`b = \frac{m}{P\,t},\qquad b_r = \frac{b}{\beta}\,\frac{H}{H_r},\qquad \beta = \frac{k}{k - 0.7\,(1 - k)\left(\frac{1}{\eta_m} - 1\right)}`,
    words:
      'Fuel burnt divided by work done, times the energy of the fuel over that of the reference fuel. Where ambient conditions are corrected, the result is divided by β, which is above one in hot or thin air.',
  },
  sources: ['iso-3046-1', 'consumption-example'],
  validity:
    'Diesel engines at a steady load. The correction for the fuel holds while efficiency does not change with the fuel. The correction for ambient conditions follows ISO 3046-1 from memory, for four-stroke engines of low and medium speed at rated power, and is meant for small differences. Compare only figures of the same load and speed.',
  inputs,
  outputs: {
    atReference: {
      type: 'quantity',
      label: 'On reference fuel, at the conditions chosen',
      symbol: 'b_r',
      kind: 'specificConsumption',
    },
    onFuel: {
      type: 'quantity',
      label: 'On reference fuel, ambient conditions as measured',
      symbol: 'b_f',
      kind: 'specificConsumption',
    },
    asMeasured: {
      type: 'quantity',
      label: 'As measured',
      symbol: 'b',
      kind: 'specificConsumption',
    },
    efficiency: {
      type: 'quantity',
      label: 'Share of the fuel’s energy at the shaft',
      symbol: 'η',
      kind: 'ratio',
      units: ['%', '1'],
    },
  },
  compute,
  chart: {
    x: 'netEnergy',
    y: 'atReference',
    yScale: 'linear',
    range: (input) => ({
      minimum: Math.min(39e6, input.netEnergy - 1e6),
      maximum: Math.max(44e6, input.netEnergy + 1e6),
    }),
  },
  cases,
})
