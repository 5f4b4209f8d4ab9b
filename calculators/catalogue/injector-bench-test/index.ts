import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

const pressureUnits = ['MPa', 'bar', 'psi', 'kgf/cm2'] as const

export default defineCalculator({
  id: 'injector-bench-test',
  title: 'Injector on the test bench',
  purpose: 'Does this injector pass, is it to be set again, or is it rejected?',
  alsoCalled: ['pop test', 'nozzle tester', 'leak-off time', 'back leakage', 'dribble'],
  equation: {
    tex: String.raw`t_0 = t\,\frac{\nu_0}{\nu(T)}`,
    words:
      'The leak-off time grows in the ratio of the viscosity of the oil: the time read is multiplied by the viscosity for which the limit is stated and divided by that of the oil during the test.',
  },
  sources: ['hagen-poiseuille', 'astm-d341', 'army-injection-nozzle-test'],
  validity:
    'Spring-loaded injectors that open by pressure, tested on a hand-pumped tester. The leak-off correction holds while the leak is laminar, which narrow clearances make sure. The rule of pass, reset and reject, the accuracies and the thresholds are common practice, no published source: the injector maker’s limits go first.',
  inputs,
  outputs: {
    verdict: {
      type: 'verdict',
      label: 'Injector',
      options: {
        pass: { label: 'Pass', grade: 'good' },
        reset: { label: 'Reset: set the opening pressure again and repeat the whole test', grade: 'caution' },
        reject: { label: 'Reject: to the injector shop', grade: 'action' },
      },
    },
    correctedTime: {
      type: 'quantity',
      label: 'Leak-off time at the stated oil',
      symbol: 't₀',
      kind: 'time',
      units: ['s'],
    },
    fromMiddle: {
      type: 'quantity',
      label: 'Opening pressure from the middle of its limits',
      symbol: 'p_o − p_m',
      kind: 'pressureDifference',
      units: pressureUnits,
    },
    fromSet: {
      type: 'quantity',
      label: 'Opening pressure from the median of the rest of the set',
      symbol: 'Δp',
      kind: 'pressureDifference',
      units: pressureUnits,
    },
    viscosity: {
      type: 'quantity',
      label: 'Viscosity of the oil during the test',
      symbol: 'ν',
      kind: 'kinematicViscosity',
    },
  },
  compute,
  chart: {
    x: 'oilTemperature',
    y: 'correctedTime',
    yScale: 'linear',
    range: (input) => ({
      minimum: Math.min(283.15, input.oilTemperature),
      maximum: Math.max(323.15, input.oilTemperature),
    }),
    limits: (input) => [{ label: 'Shortest permitted', y: input.shortestLeakOff }],
  },
  cases,
})
