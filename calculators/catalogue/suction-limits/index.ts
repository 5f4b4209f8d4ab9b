import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'suction-limits',
  title: 'Largest lift and smallest bore',
  purpose: 'How high may the pump stand over the fuel, and how small may its suction pipe be?',
  alsoCalled: [
    'suction lift',
    'pipe size',
    'line size',
    'how high can the pump stand',
    'smallest pipe',
    'how high the pump above the tank',
  ],
  equation: {
    tex: String.raw`h_{\max} = \frac{V_{\max} + p_{\text{t}} - \Delta p_L(D) - \Delta p_{\text{s}} - \tfrac{1}{2}\rho v^2}{\rho\,g}`,
    words:
      'The largest lift is the vacuum limit plus the gauge pressure in the tank, less line, strainer and velocity pressure, over density times gravity. The smallest bore is the one with which the lift as built becomes the largest lift.',
  },
  sources: ['darcy-weisbach', 'colebrook-1939', 'hooper-1981', 'iso-2533'],
  validity:
    'As for the suction line: steady flow of solid fuel, pipe and fittings of one bore. Bores under 4 mm are beyond the fittings behind the loss coefficients. The vacuum limit is common practice, no published source, unless the pump maker states one.',
  inputs,
  outputs: {
    largestLift: { type: 'quantity', label: 'Largest lift with this bore', symbol: 'h_max', kind: 'length' },
    smallestBore: {
      type: 'quantity',
      label: 'Smallest bore with this lift',
      symbol: 'D_min',
      kind: 'length',
      units: ['mm', 'in', 'm'],
    },
    vacuum: {
      type: 'quantity',
      label: 'Vacuum of the line as it is',
      symbol: 'V',
      kind: 'pressureDifference',
      units: ['kPa', 'inHg', 'psi', 'bar', 'mbar'],
    },
    verdict: {
      type: 'verdict',
      label: 'The line as it is',
      options: {
        enough: { label: 'Keeps to the limit', grade: 'good' },
        short: { label: 'Does not keep to the limit', grade: 'action' },
      },
    },
  },
  compute,
  chart: {
    x: 'bore',
    y: 'largestLift',
    yScale: 'linear',
    range: (input) => ({ minimum: 0.7 * input.bore, maximum: 2 * input.bore }),
    limits: (input) => [{ label: 'Lift as it is', y: input.lift }],
  },
  fromFuel: (fuel) => ({
    density: fuel.densityAt15,
    ...(fuel.viscosities[0] ? { kinematicViscosity: fuel.viscosities[0].kinematicViscosity } : {}),
  }),
  cases,
})
