import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'spring-shim',
  title: 'Shim or spring for a set point',
  purpose: 'How thick a shim brings this valve to its set point, or does it need another spring?',
  alsoCalled: [
    'shim thickness',
    'washer under the spring',
    'spring change',
    'reset a valve',
    'shim raises the pressure',
  ],
  equation: {
    tex: String.raw`s = \frac{(p_2 - p_1)\,\pi d^2/4}{k}`,
    words:
      'The shim is the change of setting, times the area of the seat, over the spring rate. A negative shim is one to take out.',
  },
  sources: ['iso-4126-1'],
  validity:
    'A plain seat and a straight spring, the setting measured with an open outlet. Seat force, spring rate from wire, accuracies and the shear moduli (81.5 GPa steel, 70 GPa stainless, from memory) are common practice, no published source.',
  inputs,
  outputs: {
    verdict: {
      type: 'verdict',
      label: 'What to do',
      options: {
        leave: { label: 'Nothing: it stands at the wanted setting', grade: 'good' },
        addShim: { label: 'Add a shim', grade: 'information' },
        takeOut: { label: 'Take shims out', grade: 'information' },
        changeSpring: { label: 'Change the spring: it has no room for that', grade: 'action' },
      },
    },
    shim: {
      type: 'quantity',
      label: 'Shim, negative to take out',
      symbol: 's',
      kind: 'length',
      units: ['mm', 'in', 'um'],
    },
    changeByStep: {
      type: 'quantity',
      label: 'What 0.1 mm of shim does',
      symbol: 'Δp',
      kind: 'pressureDifference',
    },
    travelAfter: {
      type: 'quantity',
      label: 'Travel left afterwards, valve shut',
      symbol: 's_t − s',
      kind: 'length',
      units: ['mm', 'in'],
    },
    rateUsed: { type: 'quantity', label: 'Spring rate', symbol: 'k', kind: 'springRate' },
    forceWanted: {
      type: 'quantity',
      label: 'Spring force at the wanted setting',
      symbol: 'F₂',
      kind: 'force',
    },
  },
  compute,
  chart: {
    x: 'wanted',
    y: 'shim',
    yScale: 'linear',
    range: (input) => ({
      minimum: 0.7 * Math.min(input.present, input.wanted),
      maximum: 1.3 * Math.max(input.present, input.wanted) + 1,
    }),
    limits: (input) => [{ label: 'Most the spring has room for', y: input.travelLeft - input.lift }],
  },
  cases,
})
