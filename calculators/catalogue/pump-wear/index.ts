import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'pump-wear',
  title: 'Pump wear',
  purpose: 'Is this pump worn, or is the fuel only thinner and the pressure higher than when it was new?',
  alsoCalled: ['worn pump', 'pump test', 'slip', 'low delivery', 'pump efficiency', 'pump worn out'],
  equation: {
    tex: String.raw`r = \frac{V\,n - Q}{V\,n_0 - Q_0}\cdot\frac{\Delta p_0}{\Delta p}\cdot\frac{\nu}{\nu_0}`,
    words:
      'The slip of now over the slip when new, both at the pressure and viscosity of the new pump. Slip is displacement times speed less the measured flow.',
  },
  sources: ['gear-pump-slip-model', 'iso-4391', 'hagen-poiseuille'],
  validity:
    'Positive displacement pumps with narrow clearances, solid fuel at the inlet, relief valve shut. The growth of the clearance assumes that all clearances grew alike. Thresholds and accuracies are common practice, no published source.',
  inputs,
  outputs: {
    delivery: {
      type: 'quantity',
      label: 'Delivery now at the conditions of the new pump',
      symbol: 'Q′',
      kind: 'volumeFlow',
    },
    verdict: {
      type: 'verdict',
      label: 'Pump',
      options: {
        fit: { label: 'Delivers what the circuit needs', grade: 'good' },
        near: { label: 'Delivers it, with almost nothing in hand', grade: 'caution' },
        worn: { label: 'Delivers less than the circuit needs', grade: 'action' },
      },
    },
    ratio: {
      type: 'quantity',
      label: 'Times the slip when new',
      symbol: 'r',
      kind: 'ratio',
      units: ['1'],
    },
    slip: { type: 'quantity', label: 'Slip during the measurement', symbol: 'Q_s', kind: 'volumeFlow' },
    efficiency: {
      type: 'quantity',
      label: 'Volumetric efficiency during the measurement',
      symbol: 'η',
      kind: 'ratio',
      units: ['%', '1'],
    },
    growth: {
      type: 'quantity',
      label: 'Clearance over clearance when new',
      symbol: 'h/h₀',
      kind: 'ratio',
      units: ['1'],
    },
  },
  compute,
  chart: {
    x: 'flow',
    y: 'delivery',
    yScale: 'linear',
    range: (input) => ({ minimum: 0.8 * input.flow, maximum: Math.max(1.05 * input.flow, 1e-6) }),
    limits: (input) => [{ label: 'Least delivery', y: input.least }],
  },
  fromFuel: (fuel) => ({ density: fuel.densityAt15 }),
  cases,
})
