import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'injector-cooling',
  title: 'Injector cooling',
  purpose: 'How much heat does each injector give to the fuel, and how much flow does that need?',
  alsoCalled: ['injector heat', 'hot injectors', 'cooling flow', 'injector temperature'],
  equation: {
    tex: String.raw`n P = (Q_h - Q_b)\,\rho\,\left(h(T_2) - h(T_1)\right)`,
    words:
      'The heat of all injectors is the flow that passes them unburnt, times density, times the rise of its heat content.',
  },
  sources: ['nbs-mp97', 'astm-d1250'],
  validity:
    'Steady load, injectors fed side by side. Specific heat of petroleum to ±4 %, from memory of its source. That all heat goes to the returning fuel, and the accuracies, are common practice, no published source.',
  inputs,
  outputs: {
    heatAtFullLoad: {
      type: 'quantity',
      label: 'Heat from an injector at full load',
      symbol: 'P',
      kind: 'power',
      units: ['W', 'kW', 'hp'],
    },
    heatAtIdle: {
      type: 'quantity',
      label: 'Heat from an injector at idle',
      symbol: 'P_i',
      kind: 'power',
      units: ['W', 'kW', 'hp'],
    },
    outletAtFullLoad: {
      type: 'quantity',
      label: 'Return header at full load',
      symbol: 'T₂',
      kind: 'temperature',
    },
    outletAtIdle: { type: 'quantity', label: 'Return header at idle', symbol: 'T_i', kind: 'temperature' },
    flowNeeded: {
      type: 'quantity',
      label: 'Header flow needed at full load',
      symbol: 'Q_n',
      kind: 'volumeFlow',
    },
    inHand: { type: 'quantity', label: 'Flow in hand', symbol: 'Q_h − Q_n', kind: 'volumeFlow' },
  },
  compute,
  chart: {
    x: 'inlet',
    y: 'flowNeeded',
    yScale: 'linear',
    range: (input) => ({ minimum: input.inlet - 20, maximum: Math.min(input.limit - 5, input.inlet + 20) }),
    limits: (input) => [{ label: 'Flow into the header', y: input.headerFlow }],
  },
  fromFuel: (fuel) => ({ density15: fuel.densityAt15 }),
  cases,
})
