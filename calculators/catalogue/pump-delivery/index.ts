import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'pump-delivery',
  title: 'Pump delivery',
  purpose: 'What does this pump deliver at another speed, pressure or fuel temperature?',
  alsoCalled: ['slip', 'volumetric efficiency', 'displacement', 'pump flow', 'gear pump', 'pump speed'],
  equation: {
    tex: String.raw`Q = V\,n - Q_{\text{s1}}\,\frac{\Delta p}{\Delta p_1}\,\frac{\nu_1}{\nu}`,
    words:
      'Delivery is displacement times speed, less the slip. The slip grows with the pressure rise and falls with viscosity, and does not change with speed.',
  },
  sources: ['gear-pump-slip-model', 'iso-4391'],
  validity:
    'Positive displacement pumps with narrow clearances, solid fuel at the inlet, relief valve shut. The straight rule is a rough approximation; best within a factor of five of the known slip. Thresholds and accuracies are common practice, no published source.',
  inputs,
  outputs: {
    delivery: { type: 'quantity', label: 'Delivery', symbol: 'Q', kind: 'volumeFlow' },
    slip: { type: 'quantity', label: 'Slip', symbol: 'Q_s', kind: 'volumeFlow' },
    efficiency: {
      type: 'quantity',
      label: 'Volumetric efficiency',
      symbol: 'η',
      kind: 'ratio',
      units: ['%', '1'],
    },
    derived: { type: 'quantity', label: 'Derived flow, without slip', symbol: 'V n', kind: 'volumeFlow' },
    slowest: {
      type: 'quantity',
      label: 'Speed at which it only just holds this pressure',
      symbol: 'n₀',
      kind: 'rotationalSpeed',
    },
  },
  compute,
  chart: {
    x: 'viscosity',
    y: 'delivery',
    yScale: 'linear',
    range: (input) => ({
      minimum: 0.5 * Math.min(input.viscosity, input.knownViscosity),
      maximum: 2 * Math.max(input.viscosity, input.knownViscosity),
    }),
  },
  fromFuel: (fuel) => ({
    density: fuel.densityAt15,
    ...(fuel.viscosities.at(-1) ? { viscosity: fuel.viscosities.at(-1)?.kinematicViscosity ?? 0 } : {}),
  }),
  cases,
})
