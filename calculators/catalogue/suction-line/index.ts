import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'suction-line',
  title: 'Suction line',
  purpose: 'What vacuum will the pump see, and does it leave enough before air comes out of the fuel?',
  alsoCalled: [
    'suction vacuum',
    'vacuum gauge',
    'NPSH',
    'suction lift',
    'net positive suction head',
    'altitude',
  ],
  equation: {
    tex: String.raw`p_{\text{i}} = p_{\text{a}} + p_{\text{t}} - \rho g h - \left(f\frac{L}{D} + \sum K\right)\frac{\rho v^2}{2} - \Delta p_{\text{s}} - \frac{\rho v^2}{2}`,
    words:
      'Pressure at the pump inlet is the atmosphere plus the gauge pressure in the tank, less the lift, less pipe and fittings, less the strainer, less the pressure that became speed. The vacuum is the atmosphere less that.',
  },
  sources: [
    'darcy-weisbach',
    'colebrook-1939',
    'hooper-1981',
    'crane-tp410',
    'astm-d2779',
    'hicks-calculations',
    'epa-ap42',
    'iso-2533',
  ],
  validity:
    'Steady flow of solid fuel in a line of one bore. The gas set free is the most that can come, for fuel saturated with air in the tank. Solubility of air and vapour pressure follow equations from memory. The vacuum limit and the accuracies are common practice, no published source.',
  inputs,
  outputs: {
    vacuum: {
      type: 'quantity',
      label: 'Vacuum at the pump inlet',
      symbol: 'V',
      kind: 'pressureDifference',
      units: ['kPa', 'inHg', 'psi', 'bar', 'mbar'],
    },
    verdict: {
      type: 'verdict',
      label: 'Against the limit',
      options: {
        within: { label: 'Within the limit', grade: 'good' },
        near: { label: 'Within, but four fifths of the limit are used', grade: 'caution' },
        beyond: { label: 'Beyond the limit: air will come out of the fuel', grade: 'action' },
        boils: { label: 'The fuel boils at the inlet', grade: 'action' },
      },
    },
    margin: {
      type: 'quantity',
      label: 'Left to the limit',
      symbol: 'V_max − V',
      kind: 'pressureDifference',
      units: ['kPa', 'inHg', 'psi', 'bar', 'mbar'],
    },
    gas: {
      type: 'quantity',
      label: 'Gas set free, for a volume of fuel',
      symbol: 'φ',
      kind: 'ratio',
      units: ['%', '1'],
    },
    lost: {
      type: 'quantity',
      label: 'Pump displacement lost to it',
      symbol: 'φ/(1 + φ)',
      kind: 'ratio',
      units: ['%', '1'],
    },
    head: { type: 'quantity', label: 'Head above boiling (NPSH available)', symbol: 'NPSH', kind: 'length' },
    lineDrop: {
      type: 'quantity',
      label: 'Taken by pipe and fittings',
      symbol: 'Δp_L',
      kind: 'pressureDifference',
    },
    velocity: { type: 'quantity', label: 'Velocity in the line', symbol: 'v', kind: 'velocity' },
  },
  compute,
  chart: {
    x: 'flow',
    y: 'vacuum',
    yScale: 'linear',
    range: (input) => ({ minimum: Math.min(input.flow, 1e-6), maximum: 2 * input.flow }),
    limits: (input) => [{ label: 'Vacuum limit', y: input.limit }],
  },
  fromFuel: (fuel) => ({
    density: fuel.densityAt15,
    ...(fuel.viscosities[0]
      ? {
          kinematicViscosity: fuel.viscosities[0].kinematicViscosity,
          temperature: fuel.viscosities[0].temperature,
        }
      : {}),
  }),
  cases,
})
