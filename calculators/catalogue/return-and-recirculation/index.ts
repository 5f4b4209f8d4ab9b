import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'return-and-recirculation',
  title: 'Return flow and heat to the tank',
  purpose: 'How much fuel comes back, how hot is it, and how much heat does it bring to the tank?',
  alsoCalled: ['spill flow', 'recirculation ratio', 'return temperature', 'heat to the tank'],
  equation: {
    tex: String.raw`P_t = (Q - Q_b)\,\rho\,\left(h(T_r) - h(T_t)\right)`,
    words:
      'The heat brought to the tank is the flow that returns, times density, times its heat content over that of the fuel in the tank.',
  },
  sources: ['nbs-mp97', 'astm-d1250'],
  validity:
    'Steady load; heat lost by the lines is left out when the heat is given, and included when the return is measured. Specific heat of petroleum to ±4 %, from memory of its source. Accuracies and marks are common practice, no published source.',
  inputs,
  outputs: {
    returnFlow: { type: 'quantity', label: 'Return flow', symbol: 'Q_r', kind: 'volumeFlow' },
    returned: { type: 'quantity', label: 'Temperature of the return', symbol: 'T_r', kind: 'temperature' },
    heatToTank: { type: 'quantity', label: 'Heat to the tank', symbol: 'P_t', kind: 'power' },
    shareReturned: {
      type: 'quantity',
      label: 'Share of the delivery that returns',
      symbol: 'Q_r/Q',
      kind: 'ratio',
      units: ['%', '1'],
    },
    turnoverTime: {
      type: 'quantity',
      label: 'Time in which the tank goes round once',
      symbol: 'V/Q',
      kind: 'time',
      units: ['h', 'min', 's'],
    },
    risePerHour: {
      type: 'quantity',
      label: 'Tank warms in the first hour by, no loss',
      symbol: 'ΔT',
      kind: 'temperatureDifference',
    },
  },
  compute,
  chart: {
    x: 'burnt',
    y: 'returned',
    instead: { y: 'heatToTank', when: { input: 'known', oneOf: ['temperature'] } },
    yScale: 'linear',
    range: (input) => ({ minimum: 0, maximum: 0.9 * input.delivery }),
  },
  fromFuel: (fuel) => ({ density15: fuel.densityAt15 }),
  cases,
})
