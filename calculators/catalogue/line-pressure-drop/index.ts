import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

export default defineCalculator({
  id: 'line-pressure-drop',
  title: 'Pressure drop of a line',
  purpose: 'How much pressure does this pipe with its fittings take at this flow and viscosity?',
  alsoCalled: [
    'pipe friction',
    'head loss',
    'fittings',
    'equivalent length',
    'friction factor',
    'Reynolds number',
    'line size',
  ],
  equation: {
    tex: String.raw`\Delta p = \left(f\,\frac{L}{D} + \sum K\right)\frac{\rho\,v^2}{2}`,
    words:
      'The drop is the friction factor times length over bore, plus the sum of the loss coefficients, times half the density times the square of the velocity.',
  },
  sources: [
    'darcy-weisbach',
    'hagen-poiseuille',
    'colebrook-1939',
    'hooper-1981',
    'crane-tp410',
    'moody-1944',
  ],
  validity:
    'A full pipe of one bore, steady flow, liquid without gas. Laminar to Re 2000, turbulent from 4000; between them a smooth join that predicts nothing. Fittings wide open. The factor itself is good to about 10 % in new pipe, fittings to a quarter. Accuracies are common practice, no published source.',
  inputs,
  outputs: {
    drop: { type: 'quantity', label: 'Drop by friction', symbol: 'Δp', kind: 'pressureDifference' },
    total: {
      type: 'quantity',
      label: 'Drop with the rise',
      symbol: 'Δp + ρgh',
      kind: 'pressureDifference',
    },
    fittingsDrop: {
      type: 'quantity',
      label: 'Part that fittings, entrance and exit take',
      symbol: 'Δp_K',
      kind: 'pressureDifference',
    },
    velocity: { type: 'quantity', label: 'Velocity', symbol: 'v', kind: 'velocity' },
    reynolds: { type: 'quantity', label: 'Reynolds number', symbol: 'Re', kind: 'ratio', units: ['1'] },
    factor: { type: 'quantity', label: 'Friction factor', symbol: 'f', kind: 'ratio', units: ['1'] },
    regime: {
      type: 'verdict',
      label: 'Flow',
      options: {
        laminar: { label: 'Laminar: the drop goes with flow and viscosity', grade: 'information' },
        between: { label: 'Between laminar and turbulent: not to be predicted', grade: 'caution' },
        turbulent: {
          label: 'Turbulent: the drop goes nearly with the square of the flow',
          grade: 'information',
        },
      },
    },
  },
  compute,
  chart: {
    x: 'flow',
    y: 'drop',
    yScale: 'linear',
    range: (input) => ({ minimum: 0, maximum: Math.max(2 * input.flow, 1e-6) }),
  },
  fromFuel: (fuel) => ({
    density: fuel.densityAt15,
    ...(fuel.viscosities[0] ? { kinematicViscosity: fuel.viscosities[0].kinematicViscosity } : {}),
  }),
  cases,
})
