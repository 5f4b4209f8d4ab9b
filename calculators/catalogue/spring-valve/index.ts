import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'spring-valve',
  title: 'Spring valve: what the gauge shows',
  purpose: 'What does the gauge show when this valve opens, at a flow, and when it shuts again?',
  alsoCalled: ['cracking pressure', 'override', 'reseat pressure', 'blowdown', 'valve opening pressure'],
  equation: {
    tex: String.raw`p_g = p_s + \Delta p_o\,\frac{Q}{Q_f} + p_b - \rho g h`,
    words:
      'The gauge shows the cracking pressure, plus the override in proportion to flow, plus the pressure behind the valve, less the column of fuel in the gauge line.',
  },
  sources: ['iso-4126-1'],
  validity:
    'Direct spring valves without bellows or balance piston, up to about 1.2 of full flow. The straight override line and its accuracy are common practice, no published source.',
  inputs,
  outputs: {
    readingAtFlow: { type: 'quantity', label: 'Gauge at the flow', symbol: 'p_gQ', kind: 'gaugePressure' },
    readingAtCracking: {
      type: 'quantity',
      label: 'Gauge at first flow',
      symbol: 'p_g0',
      kind: 'gaugePressure',
    },
    readingAtReseat: { type: 'quantity', label: 'Gauge as it shuts', symbol: 'p_gr', kind: 'gaugePressure' },
    flowAtReading: { type: 'quantity', label: 'Flow at the reading', symbol: 'Q₁', kind: 'volumeFlow' },
  },
  compute,
  chart: {
    x: 'flow',
    y: 'readingAtFlow',
    yScale: 'linear',
    range: (input) => ({ minimum: 0, maximum: 1.2 * Math.max(input.fullFlow, input.flow) }),
    limits: (input) => [{ label: 'Gauge reading asked about', y: input.reading }],
  },
  fromFuel: (fuel) => ({ density: fuel.densityAt15 }),
  cases,
})
