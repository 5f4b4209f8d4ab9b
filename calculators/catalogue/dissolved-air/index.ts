import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'dissolved-air',
  title: 'Dissolved air',
  purpose: 'How much air is dissolved in the fuel, and how much comes out at a suction vacuum?',
  alsoCalled: ['air release', 'entrained air', 'Ostwald coefficient', 'gas in fuel'],
  equation: {
    tex: String.raw`\varphi = L\,\frac{p_0 - p}{p} + \frac{e}{1-e}\,\frac{p_0}{p}`,
    words:
      'The gas for each volume of fuel is the solubility times the fall of pressure over the pressure that is left, plus the bubbles that were carried already, grown as the pressure fell.',
  },
  sources: ['astm-d2779', 'hicks-calculations'],
  validity:
    'Air in petroleum liquids of 630 to 900 kg/m³, 228 to 423 K; ideal gas; all of the excess comes out. Equation and constants of the solubility are from memory. Thresholds and accuracies are common practice, no published source.',
  inputs,
  outputs: {
    gas: {
      type: 'quantity',
      label: 'Free gas for a volume of fuel',
      symbol: 'φ',
      kind: 'ratio',
      units: ['%', '1'],
    },
    verdict: {
      type: 'verdict',
      label: 'At this vacuum',
      options: {
        none: { label: 'Nothing comes out', grade: 'good' },
        little: { label: 'Little: under a fiftieth of the pump', grade: 'information' },
        some: { label: 'The pump loses a part of its delivery and may grow loud', grade: 'caution' },
        much: {
          label: 'The pump loses more than a tenth: foam in the glass, worn parts in time',
          grade: 'action',
        },
      },
    },
    lost: {
      type: 'quantity',
      label: 'Pump displacement lost',
      symbol: '1 − x',
      kind: 'ratio',
      units: ['%', '1'],
    },
    liquid: {
      type: 'quantity',
      label: 'Pump displacement filled with fuel',
      symbol: 'x',
      kind: 'ratio',
      units: ['%', '1'],
    },
    solubility: {
      type: 'quantity',
      label: 'Air dissolved, volume for a volume of fuel',
      symbol: 'L',
      kind: 'ratio',
      units: ['%', '1'],
    },
  },
  compute,
  chart: {
    x: 'vacuum',
    y: 'lost',
    yScale: 'linear',
    range: (input) => ({ minimum: 0, maximum: 0.9 * input.saturation }),
  },
  fromFuel: (fuel) => ({ densityAt15: fuel.densityAt15 }),
  cases,
})
