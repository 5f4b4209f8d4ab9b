import { defineCalculator } from '../../calculator/define-calculator.ts'
import type { ChartMark } from '../../calculator/types.ts'
import { lineFromFuel } from '../measured-line.ts'
import cases from './cases.json' with { type: 'json' }
import { compute, type Values } from './compute.ts'
import { inputs } from './inputs.ts'

function marksOf(input: Values): ChartMark[] {
  const inWindow = (viscosity: number) =>
    viscosity >= input.lowestViscosity && viscosity <= input.highestViscosity
  const points = [
    { label: 'First point', x: input.firstViscosity, y: input.firstTemperature },
    ...(input.form === 'two-points'
      ? [{ label: 'Second point', x: input.secondViscosity, y: input.secondTemperature }]
      : []),
  ]
  return points.filter((point) => inWindow(point.x))
}

export default defineCalculator({
  id: 'temperature-for-viscosity',
  title: 'Temperature for a viscosity',
  purpose: 'Where must the heater be set so that this fuel reaches the injectors as thin as they need it?',
  alsoCalled: ['heater set point', 'preheat temperature', 'injection viscosity', 'how hot to heat the fuel'],
  equation: {
    tex: String.raw`T = 10^{\frac{A - \log\log Z}{B}},\qquad Z = \nu + 0.7 + e^{-1.47 - 1.84\nu - 0.51\nu^2}`,
    words:
      'The straight line of the viscosity-temperature equation is read backwards: from the double logarithm of the wanted viscosity to the logarithm of the absolute temperature.',
  },
  sources: ['astm-d341', 'iso-3104'],
  validity:
    'Petroleum liquids from 0.21 mm²/s to 20 million mm²/s, between the cloud point and the temperature at which the fuel begins to boil, and between the two measured points or close beyond them. The limits of viscosity and of temperature come from the engine maker; the ones shown at first were chosen for the invented PQ-12.',
  inputs,
  outputs: {
    setPoint: {
      type: 'quantity',
      label: 'Set point for the wanted viscosity',
      symbol: 'T',
      kind: 'temperature',
    },
    verdict: {
      type: 'verdict',
      label: 'Control',
      options: {
        fits: { label: 'The swing of the control fits in the window', grade: 'good' },
        tooTight: {
          label:
            'The swing of the control reaches beyond the window: move the set point or steady the control',
          grade: 'caution',
        },
        outside: {
          label: 'The wanted viscosity lies outside its own window',
          grade: 'action',
        },
        aboveLimit: { label: 'The set point lies above the highest temperature allowed', grade: 'action' },
      },
    },
    coldest: {
      type: 'quantity',
      label: 'Cold end: temperature at the highest viscosity allowed',
      symbol: 'T_cold',
      kind: 'temperature',
    },
    warmest: {
      type: 'quantity',
      label: 'Warm end: temperature at the lowest viscosity allowed',
      symbol: 'T_warm',
      kind: 'temperature',
    },
    room: {
      type: 'quantity',
      label: 'Room from the set point to the nearer end',
      symbol: 'ΔT',
      kind: 'temperatureDifference',
    },
  },
  compute,
  chart: {
    x: 'wantedViscosity',
    y: 'setPoint',
    yScale: 'linear',
    range: (input) => ({
      minimum: Math.min(input.lowestViscosity, input.wantedViscosity),
      maximum: Math.max(input.highestViscosity, input.wantedViscosity),
    }),
    marks: marksOf,
    limits: (input) => [{ label: 'Highest temperature allowed', y: input.highestTemperature }],
  },
  fromFuel: lineFromFuel,
  cases,
})
