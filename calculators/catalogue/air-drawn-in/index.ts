import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'air-drawn-in',
  title: 'Air drawn in',
  purpose: 'How much air does a leak on the suction side draw in, and what will the glass show?',
  alsoCalled: ['suction leak', 'air leak', 'bubbles', 'foam in the glass', 'pump sucking air'],
  equation: {
    tex: String.raw`\dot m = C A\,p_{\text{a}}\sqrt{\frac{2\gamma}{(\gamma-1)R T}\left(r^{2/\gamma}-r^{(\gamma+1)/\gamma}\right)},\quad r=\max\!\left(\frac{p_{\text{a}}-V}{p_{\text{a}}},\,0.528\right)`,
    words:
      'The mass of air goes with area, coefficient and the pressure of the air outside, times a factor of the pressure ratio that no longer grows once the ratio falls to 0.528. In fine openings less comes, because the air creeps.',
  },
  sources: ['air-orifice-table', 'sampson-1891', 'hagen-poiseuille', 'iso-2533'],
  validity:
    'Dry air as an ideal gas. The equation is for openings in which speed takes the pressure; where the air creeps the two flows are joined, exact in both limits, which is common practice between them. A joint covered with fuel draws fuel, not air. What a glass shows, the coefficient and the accuracies are common practice, no published source.',
  inputs,
  outputs: {
    glassShare: {
      type: 'quantity',
      label: 'Air at the return glass, share of the flow',
      symbol: 'φ_g',
      kind: 'ratio',
      units: ['%', '1'],
    },
    verdict: {
      type: 'verdict',
      label: 'The glass and the pump',
      options: {
        single: { label: 'Single bubbles, easy to miss', grade: 'caution' },
        bubbles: { label: 'A steady stream of bubbles', grade: 'action' },
        foam: { label: 'Foam: the glass does not clear', grade: 'action' },
        lost: { label: 'So much air that the pump loses its suction', grade: 'action' },
      },
    },
    pumpShare: {
      type: 'quantity',
      label: 'Pump displacement lost to air',
      symbol: 'φ_i',
      kind: 'ratio',
      units: ['%', '1'],
    },
    freeAir: { type: 'quantity', label: 'Free air drawn in', symbol: 'Q_a', kind: 'volumeFlow' },
    atGlass: { type: 'quantity', label: 'Air at the glass', symbol: 'Q_g', kind: 'volumeFlow' },
    mass: { type: 'quantity', label: 'Mass of air', symbol: 'ṁ', kind: 'massFlow' },
  },
  compute,
  chart: {
    x: 'vacuum',
    y: 'glassShare',
    yScale: 'linear',
    range: (input) => ({ minimum: 0, maximum: 0.9 * input.atmosphere }),
  },
  cases,
})
