import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'calculated-cetane-index',
  title: 'Calculated cetane index',
  purpose: 'How readily will this distillate ignite, as far as its density and distillation tell?',
  alsoCalled: ['cetane index', 'cetane number', 'ASTM D4737', 'ASTM D976', 'CCI'],
  equation: {
    tex: String.raw`\begin{aligned}\text{CCI} &= 45.2 + 0.0892\,T_{10N} + (0.131 + 0.901B)\,T_{50N} + (0.0523 - 0.420B)\,T_{90N}\\ &\quad + 0.00049\,(T_{10N}^2 - T_{90N}^2) + 107B + 60B^2\end{aligned}`,
    words:
      'Procedure A: from the temperatures at which 10, 50 and 90 per cent have come over, less 215, 260 and 310 °C, and from B, which is e to the power of −3.5 times the density in g/mL less 0.85, minus one. At those temperatures and 850 kg/m³ the index is 45.2.',
  },
  sources: ['astm-d4737', 'astm-d976', 'nz-cetane-review'],
  validity:
    'Distillate fuels of mineral oil without cetane improver; correlated with cetane numbers from 32.5 to 56.5. Not for residual fuel, nor for synthetic fuel, fatty acid methyl ester or pure hydrocarbons. Procedure B stands here from memory. Distillation temperatures corrected to standard atmospheric pressure.',
  inputs,
  outputs: {
    index: { type: 'quantity', label: 'Calculated cetane index', symbol: 'CCI', kind: 'ratio', units: ['1'] },
  },
  compute,
  chart: {
    x: 'density',
    y: 'index',
    yScale: 'linear',
    range: (input) => ({
      minimum: Math.max(650, Math.min(800, input.density - 10)),
      maximum: Math.min(1050, Math.max(900, input.density + 10)),
    }),
  },
  fromFuel: (fuel) => ({ density: fuel.densityAt15 }),
  cases,
})
