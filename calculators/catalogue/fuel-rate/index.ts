import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'fuel-rate',
  title: 'Fuel burnt at a power',
  purpose: 'How much fuel does the engine burn at this power?',
  alsoCalled: ['fuel consumption', 'BSFC', 'litres an hour', 'how much fuel the engine burns'],
  equation: {
    tex: String.raw`\dot{m} = P\,b, \qquad Q = \frac{\dot{m}}{\rho}`,
    words: 'The mass burnt is power times specific consumption; divided by the density it is a volume.',
  },
  sources: ['nist-sp811'],
  validity:
    'Steady load, the specific consumption being that of this load, this fuel and this air. Two multiplications by the meaning of the words; accuracies are common practice, no published source.',
  inputs,
  outputs: {
    volumeFlow: { type: 'quantity', label: 'Fuel burnt, by volume', symbol: 'Q', kind: 'volumeFlow' },
    massFlow: { type: 'quantity', label: 'Fuel burnt, by mass', symbol: 'ṁ', kind: 'massFlow' },
    inAnHour: { type: 'quantity', label: 'In an hour', symbol: 'V', kind: 'volume' },
  },
  compute,
  chart: {
    x: 'power',
    y: 'volumeFlow',
    yScale: 'linear',
    range: (input) => ({ minimum: 0.2 * input.power, maximum: 1.2 * input.power }),
  },
  fromFuel: (fuel) => ({ density: fuel.densityAt15 }),
  cases,
})
