import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'filter-pressure-drop',
  title: 'Filter pressure drop',
  purpose: 'Is this filter loaded, or is the fuel only cold or the flow high today?',
  alsoCalled: ['delta p', 'differential pressure', 'clogged filter', 'cold reading of a filter'],
  equation: {
    tex: String.raw`\Delta p = a\,\mu\,Q + b\,\rho\,Q^2`,
    words:
      'The element takes a drop in proportion to dynamic viscosity and flow; the housing takes one in proportion to density and the square of the flow. Dirt raises the first and leaves the second alone.',
  },
  sources: ['iso-3968', 'darcy-1856', 'hydraulics-lexicon-filters'],
  validity:
    'Steady flow through one filter, or through equal ones in parallel read together, with the bypass shut. Readings within a factor of three of the reference flow and viscosity. Share of the housing, thresholds and accuracies are common practice, no published source.',
  inputs,
  outputs: {
    dropAtReference: {
      type: 'quantity',
      label: 'Drop at reference flow and viscosity',
      symbol: 'Δp₀',
      kind: 'pressureDifference',
    },
    verdict: {
      type: 'verdict',
      label: 'Element',
      options: {
        inOrder: { label: 'In order', grade: 'good' },
        plan: { label: 'Plan the change: four fifths of the permitted drop are used', grade: 'caution' },
        change: { label: 'Change the element now', grade: 'action' },
      },
    },
    shareUsed: {
      type: 'quantity',
      label: 'Share of the permitted drop used',
      symbol: 'Δp₀/Δp_max',
      kind: 'ratio',
      units: ['%', '1'],
    },
    ratioToClean: {
      type: 'quantity',
      label: 'Times the drop of a new element',
      symbol: 'Δp₀/Δp_new',
      kind: 'ratio',
    },
    dropAtOtherFlow: {
      type: 'quantity',
      label: 'Drop at the other flow, with the fuel of the reading',
      symbol: 'Δp₁',
      kind: 'pressureDifference',
    },
  },
  compute,
  chart: {
    x: 'otherFlow',
    y: 'dropAtOtherFlow',
    yScale: 'linear',
    range: (input) => ({
      minimum: 0,
      maximum: 1.3 * Math.max(input.flow, input.referenceFlow, input.otherFlow),
    }),
    marks: (input) => [{ label: 'Reading', x: input.flow, y: input.drop }],
    limits: (input) => [{ label: 'Change-out drop (at reference)', y: input.changeOut }],
  },
  fromFuel: (fuel) => ({ density: fuel.densityAt15, referenceDensity: fuel.densityAt15 }),
  cases,
})
