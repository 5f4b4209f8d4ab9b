import { defineCalculator } from '../../calculator/define-calculator.ts'
import type { ChartMark } from '../../calculator/types.ts'
import { lineFromFuel } from '../measured-line.ts'
import cases from './cases.json' with { type: 'json' }
import { compute, type Values } from './compute.ts'
import { inputs } from './inputs.ts'

/** The chart runs so far beyond the points and the wanted temperature. [K] */
const MARGIN = 10

function temperaturesOf(input: Values): number[] {
  const known = input.form === 'two-points' ? [input.secondTemperature] : []
  return [input.firstTemperature, ...known, input.wantedTemperature]
}

function marksOf(input: Values): ChartMark[] {
  const first = { label: 'First point', x: input.firstTemperature, y: input.firstViscosity }
  if (input.form !== 'two-points') return [first]
  return [first, { label: 'Second point', x: input.secondTemperature, y: input.secondViscosity }]
}

export default defineCalculator({
  id: 'viscosity-at-temperature',
  title: 'Viscosity at a temperature',
  purpose: 'How thick is this fuel at another temperature than the one it was measured at?',
  alsoCalled: [
    'cSt',
    'centistokes',
    'viscosity correction',
    'ASTM D341',
    'Walther equation',
    'thick fuel',
    'how thick is the fuel when cold',
    'fuel viscosity at degrees',
  ],
  equation: {
    tex: String.raw`\log\log\left(\nu + 0.7 + e^{-1.47 - 1.84\nu - 0.51\nu^2}\right) = A - B\,\log T`,
    words:
      'The double logarithm of the viscosity in mm²/s, with 0.7 and a small term for thin liquids added, falls along a straight line with the logarithm of the absolute temperature.',
  },
  sources: ['astm-d341', 'iso-3104'],
  validity:
    'Petroleum liquids from 0.21 mm²/s to 20 million mm²/s, between the cloud point and the temperature at which the fuel begins to boil, and between the two measured points or close beyond them. Not for fuel with wax, water or gas in it.',
  inputs,
  outputs: {
    kinematicViscosity: {
      type: 'quantity',
      label: 'Viscosity at the wanted temperature',
      symbol: 'ν',
      kind: 'kinematicViscosity',
    },
  },
  compute,
  chart: {
    x: 'wantedTemperature',
    y: 'kinematicViscosity',
    yScale: 'log',
    range: (input) => ({
      minimum: Math.min(...temperaturesOf(input)) - MARGIN,
      maximum: Math.max(...temperaturesOf(input)) + MARGIN,
    }),
    marks: marksOf,
  },
  fromFuel: lineFromFuel,
  cases,
})
