import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'carbon-aromaticity-index',
  title: 'Ignition quality of residual fuel, CCAI and CII',
  purpose: 'How late will this residual fuel ignite, as far as its density and viscosity tell?',
  alsoCalled: ['CCAI', 'CII', 'heavy fuel ignition'],
  equation: {
    tex: String.raw`\text{CCAI} = \rho - 81 - 141\,\log\log(\nu + 0.85) - 483\,\log\frac{t + 273}{323}`,
    words:
      'Density at 15 °C in kg/m³, less 81, less 141 times the double logarithm of the viscosity in mm²/s with 0.85 added, less a term for the temperature of the viscosity, which vanishes at 50 °C. The higher, the later the fuel ignites.',
  },
  sources: ['iso-8217', 'ccai-nomogram', 'calculated-ignition-index'],
  validity:
    'Residual fuels of mineral oil, above 900 kg/m³ and from 5 mm²/s to 1000 mm²/s. Not for distillates and not for cetane numbers. CCAI is a ranking from two properties: blends of unusual components ignite otherwise than it says. The equation of CII stands here from memory.',
  inputs,
  outputs: {
    ccai: {
      type: 'quantity',
      label: 'Calculated carbon aromaticity index',
      symbol: 'CCAI',
      kind: 'ratio',
      units: ['1'],
    },
    inHand: { type: 'quantity', label: 'In hand to the limit', symbol: 'Δ', kind: 'ratio', units: ['1'] },
    cii: {
      type: 'quantity',
      label: 'Calculated ignition index',
      symbol: 'CII',
      kind: 'ratio',
      units: ['1'],
    },
  },
  compute,
  chart: {
    x: 'density',
    y: 'ccai',
    yScale: 'linear',
    range: (input) => ({
      minimum: Math.min(920, input.density - 10),
      maximum: Math.max(1010, input.density + 10),
    }),
    limits: (input) => [{ label: 'Limit', y: input.limit }],
  },
  cases,
})
