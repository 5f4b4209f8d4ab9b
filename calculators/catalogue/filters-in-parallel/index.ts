import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'filters-in-parallel',
  title: 'Two filters in parallel',
  purpose: 'What does the gauge show when one of two filters is plugged, and how does the flow divide?',
  alsoCalled: ['twin filters', 'duplex filter', 'one filter plugged'],
  equation: {
    tex: String.raw`\Delta p = a_1\,\mu\,Q_1 + b\,\rho\,Q_1^2 = a_2\,\mu\,Q_2 + b\,\rho\,Q_2^2 \qquad Q_1 + Q_2 = Q`,
    words:
      'Both filters stand between the same two points, so both have the same drop; the flow divides so that it comes out. A plugged share of an element raises its resistance as one over what is left open.',
  },
  sources: ['iso-3968', 'darcy-1856'],
  validity:
    'Two equal filters with a common inlet and outlet, steady flow, bypass shut. That a plugged share raises the resistance as one over the open rest, the share of the housing and the thresholds are common practice, no published source.',
  inputs,
  outputs: {
    drop: { type: 'quantity', label: 'Drop across both', symbol: 'Δp', kind: 'pressureDifference' },
    verdict: {
      type: 'verdict',
      label: 'The gauge across both',
      options: {
        below: { label: 'Below the change-out drop', grade: 'information' },
        above: { label: 'At or above the change-out drop: change both elements', grade: 'action' },
      },
    },
    ratioToClean: {
      type: 'quantity',
      label: 'Times the drop of two new ones',
      symbol: 'Δp/Δp_c',
      kind: 'ratio',
    },
    firstFlow: { type: 'quantity', label: 'Flow through the first', symbol: 'Q₁', kind: 'volumeFlow' },
    secondFlow: { type: 'quantity', label: 'Flow through the second', symbol: 'Q₂', kind: 'volumeFlow' },
    secondShare: {
      type: 'quantity',
      label: 'Share of the flow in the second',
      symbol: 'Q₂/Q',
      kind: 'ratio',
      units: ['%', '1'],
    },
  },
  compute,
  chart: {
    x: 'firstPlugged',
    y: 'drop',
    yScale: 'linear',
    range: () => ({ minimum: 0, maximum: 1 }),
    limits: (input) => [{ label: 'Change-out drop', y: input.changeOut }],
  },
  fromFuel: (fuel) => ({ density: fuel.densityAt15, referenceDensity: fuel.densityAt15 }),
  cases,
})
