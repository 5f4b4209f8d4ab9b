import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { changesOf, compute, realOnes, threshold } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'exhaust-before-and-after',
  title: 'Exhaust temperatures before and after a change',
  purpose: 'Did changing these injectors do anything, or was it the load and the pyrometer?',
  alsoCalled: ['injector change', 'EGT before and after', 'did the repair help'],
  equation: {
    tex: String.raw`\Delta_i = (T_{2,i} - T_{1,i}) - \tilde{\delta}, \qquad \left|\Delta_i\right| > 3.5\,\max\left(\sigma_\delta,\ \frac{\sqrt{2}\,U_r}{1.96}\right)`,
    words:
      'From the change of each cylinder the median change of all is taken off, which removes load and weather. What is left counts as real when it is more than 3.5 times the larger of the scatter among the cylinders and the scatter of the probe.',
  },
  sources: ['iglewicz-hoaglin-1993', 'gum-2008'],
  validity:
    'The same probes in the same places, two steady runs at nearly the same load, and fewer than half of the cylinders touched in between. Taking off the common change is common practice, no published source. With a hand-held pyrometer the repeatability includes how the probe is held.',
  inputs,
  outputs: {
    verdict: {
      type: 'verdict',
      label: 'The change',
      weighsAccuracy: true,
      options: {
        some: { label: 'Real in at least one cylinder', grade: 'information' },
        none: { label: 'No cylinder changed by more than the readings scatter', grade: 'caution' },
      },
    },
    real: {
      type: 'quantity',
      label: 'Cylinders that really changed',
      symbol: 'k',
      kind: 'ratio',
      units: ['1'],
    },
    cylinder: {
      type: 'quantity',
      label: 'Cylinder that changed most',
      symbol: 'i',
      kind: 'ratio',
      units: ['1'],
    },
    change: {
      type: 'quantity',
      label: 'Its change against the others',
      symbol: 'Δ',
      kind: 'temperatureDifference',
    },
    score: { type: 'quantity', label: 'Its modified z', symbol: 'M', kind: 'ratio', units: ['1'] },
    smallest: {
      type: 'quantity',
      label: 'Smallest change that counts as real',
      symbol: 'Δ_min',
      kind: 'temperatureDifference',
    },
    common: {
      type: 'quantity',
      label: 'What all cylinders did together',
      symbol: 'δ̃',
      kind: 'temperatureDifference',
    },
    spreadBefore: { type: 'quantity', label: 'Spread before', symbol: 'σ₁', kind: 'temperatureDifference' },
    spreadAfter: { type: 'quantity', label: 'Spread after', symbol: 'σ₂', kind: 'temperatureDifference' },
  },
  compute,
  points: {
    x: { label: 'Cylinder', symbol: '', kind: 'ratio' },
    y: { label: 'Change against the others', symbol: 'Δ', kind: 'temperatureDifference' },
    points: (input) => {
      const set = changesOf(input)
      const real = realOnes(set)
      return set.departures.map((y, at) => ({
        label: `Cylinder ${at + 1}`,
        x: at + 1,
        y,
        standsOut: real.includes(at),
      }))
    },
    limits: (input) => {
      const reach = threshold(changesOf(input), input)
      return [
        { label: 'Really hotter above', y: reach },
        { label: 'Really colder below', y: -reach },
      ]
    },
  },
  cases,
})
