import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'tank-temperature',
  title: 'Tank temperature through a shift',
  purpose: 'How warm does the tank get by the end of the shift?',
  alsoCalled: ['hot tank', 'tank heating up', 'fuel temperature in the tank'],
  equation: {
    tex: String.raw`m\,c\,\frac{\mathrm{d}T}{\mathrm{d}t} = P - U A\,(T - T_a)`,
    words:
      'The fuel in the tank warms by the heat of the return less what the wetted walls give to the air. Mass and wetted area fall as fuel is burnt.',
  },
  sources: ['nbs-mp97', 'oil-tank-heat-loss', 'en-590'],
  validity:
    'An upright box, its fuel well mixed, steady heat and burning. The air space and the fuel surface count as insulated, sun and wind are not counted. Heat transfer rates of tanks: published table. Accuracies are common practice, no published source; specific heat from memory of its source.',
  inputs,
  outputs: {
    final: { type: 'quantity', label: 'Temperature at the end', symbol: 'T', kind: 'temperature' },
    verdict: {
      type: 'verdict',
      label: 'Against the highest wanted',
      options: {
        inOrder: { label: 'Stays below it', grade: 'good' },
        tooWarm: { label: 'Passes it', grade: 'action' },
      },
    },
    rise: { type: 'quantity', label: 'Rise', symbol: 'T − T₀', kind: 'temperatureDifference' },
    left: { type: 'quantity', label: 'Fuel left', symbol: 'V', kind: 'volume' },
    lossAtEnd: { type: 'quantity', label: 'Heat lost to the air at the end', symbol: 'P_l', kind: 'power' },
  },
  compute,
  chart: {
    x: 'time',
    y: 'final',
    yScale: 'linear',
    range: (input) => ({ minimum: 0, maximum: Math.max(3600, input.time) }),
    limits: (input) => [{ label: 'Highest wanted', y: input.limit }],
  },
  fromFuel: (fuel) => ({ density15: fuel.densityAt15 }),
  cases,
})
