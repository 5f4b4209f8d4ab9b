import { defineCalculator } from '../../calculator/define-calculator.ts'
import type { QuantityOutput } from '../../calculator/types.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

const margin = (point: string, symbol: string) =>
  ({
    type: 'quantity',
    label: `Margin above the ${point}`,
    symbol,
    kind: 'temperatureDifference',
  }) as const satisfies QuantityOutput

const atStrainer = {
  clear: { label: 'Clear fuel, with a margin', grade: 'good' },
  near: { label: 'Clear, but so near the cloud point that the test itself may be wrong', grade: 'caution' },
  wax: { label: 'Wax in the fuel; a coarse strainer still lets it through', grade: 'caution' },
  plugs: { label: 'Wax that plugs the strainer', grade: 'action' },
  gels: { label: 'At or below the pour point: it will not flow', grade: 'action' },
} as const

export default defineCalculator({
  id: 'cold-margin',
  title: 'Cold margin at the strainer',
  purpose: 'Will wax plug the strainer before the fuel reaches the heater?',
  alsoCalled: [
    'cloud point',
    'CFPP',
    'pour point',
    'waxing',
    'gelled fuel',
    'fuel gelling',
    'will the fuel gel tonight',
  ],
  equation: {
    tex: String.raw`T_s = T_a + (T_t - T_a)\,e^{-hA/\dot m c} \qquad \text{margin} = T_s - T_{\text{point}}`,
    words:
      'On its way from the tank the fuel loses part of its lead over the cold outside, the more the slower it flows. The margin is what the strainer then sees, less the cloud, plugging or pour point of the fuel.',
  },
  sources: ['en-116', 'astm-d2500', 'astm-d97', 'nbs-mp97', 'fourier-cylinder'],
  validity:
    'Distillate fuels; a line in steady flow through air of one temperature. That a strainer finer than 45 µm goes by the cloud point and a coarser one by the CFPP, and the margin of 3 K, are common practice, no published source. The tests cool a fresh sample fast; fuel that stands cold for days can plug warmer than they say.',
  inputs,
  outputs: {
    strainerTemperature: {
      type: 'quantity',
      label: 'Temperature at the strainer, running',
      symbol: 'T_s',
      kind: 'temperature',
    },
    verdict: { type: 'verdict', label: 'At the strainer, running', options: atStrainer },
    standing: { type: 'verdict', label: 'At the strainer, after standing in the cold', options: atStrainer },
    cloudMargin: margin('cloud point', 'T_s − T_cp'),
    filterMargin: margin('CFPP', 'T_s − T_fp'),
    pourMargin: margin('pour point', 'T_s − T_pp'),
  },
  compute,
  chart: {
    x: 'flow',
    y: 'strainerTemperature',
    yScale: 'linear',
    range: (input) => ({ minimum: input.flow / 50, maximum: input.flow * 1.5 }),
    limits: (input) => [
      { label: 'Cloud point', y: input.cloudPoint },
      { label: 'CFPP', y: input.filterPoint },
    ],
  },
  fromFuel: (fuel) => ({ cloudPoint: fuel.cloudPoint, densityAt15: fuel.densityAt15 }),
  cases,
})
