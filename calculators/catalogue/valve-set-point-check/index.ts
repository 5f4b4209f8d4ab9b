import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

/** The chart runs so far to either side of the reading. [Pa] */
const AROUND = 30e3

export default defineCalculator({
  id: 'valve-set-point-check',
  title: 'Valve set point check',
  purpose: 'Is this back-pressure or bypass valve set right, as far as this gauge can tell?',
  alsoCalled: [
    'relief valve setting',
    'opening pressure of a valve',
    'regulator check',
    'gauge height correction',
    'gauge good enough',
  ],
  equation: {
    tex: String.raw`p_s = p_g + \rho g h - \Delta p_L - p_b - \Delta p_o`,
    words:
      'The setting of the spring is the gauge reading, plus the column of fuel in the gauge line, less the loss on the way to the valve, less the pressure behind the valve, less the override at that flow.',
  },
  sources: ['iso-4126-1', 'jcgm-106', 'darcy-weisbach', 'colebrook-1939', 'moody-1944'],
  validity:
    'Direct spring valves without bellows or balance piston, on which back pressure counts one to one. Reading and back pressure steady and taken together. The half-widths for height (0.05 m) and override (20 %) are common practice, no published source.',
  inputs,
  outputs: {
    verdict: {
      type: 'verdict',
      label: 'Set point',
      weighsAccuracy: true,
      options: {
        within: { label: 'Within tolerance', grade: 'good' },
        outside: { label: 'Outside tolerance', grade: 'action' },
        cannotBeTold: { label: 'Cannot be told with this gauge', grade: 'caution' },
      },
    },
    setting: {
      type: 'quantity',
      label: 'Cracking pressure the spring is set to',
      symbol: 'p_s',
      kind: 'gaugePressure',
    },
    deviation: {
      type: 'quantity',
      label: 'Deviation from the wanted one',
      symbol: 'd',
      kind: 'pressureDifference',
    },
    inletPressure: {
      type: 'quantity',
      label: 'Pressure at the valve inlet',
      symbol: 'p_i',
      kind: 'gaugePressure',
    },
    lineLoss: {
      type: 'quantity',
      label: 'Loss between tapping and valve',
      symbol: 'Δp_L',
      kind: 'pressureDifference',
    },
  },
  compute,
  chart: {
    x: 'reading',
    y: 'setting',
    yScale: 'linear',
    range: (input) => ({ minimum: input.reading - AROUND, maximum: input.reading + AROUND }),
    limits: (input) => [
      { label: 'Highest allowed', y: input.wanted + input.tolerance },
      { label: 'Lowest allowed', y: input.wanted - input.tolerance },
    ],
  },
  fromFuel: (fuel) => ({ density: fuel.densityAt15 }),
  cases,
})
