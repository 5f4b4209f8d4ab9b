import { defineCalculator } from '../../../calculators/calculator/define-calculator.ts'
import type { Calculator, Inputs, Outputs } from '../../../calculators/calculator/types.ts'

/** Invented for these tests: it has every kind of input and output, and its results are plain arithmetic. */
export const inputs = {
  form: {
    type: 'choice',
    label: 'Form',
    help: 'Which one.',
    options: [
      { value: 'round', label: 'Round' },
      { value: 'measured', label: 'Measured' },
    ],
    default: 'round',
  },
  diameter: {
    type: 'quantity',
    label: 'Inside diameter',
    symbol: 'd',
    help: 'Of the tube.',
    kind: 'length',
    units: ['mm', 'in'],
    physical: { minimum: 0.001, maximum: 1 },
    valid: { minimum: 0.005, maximum: 0.5 },
    default: 0.1,
    accuracy: { absolute: 0.001 },
    when: { input: 'form', oneOf: ['round'] },
  },
  area: {
    type: 'quantity',
    label: 'Measured area',
    symbol: 'A',
    help: 'Of the tube.',
    kind: 'area',
    physical: { minimum: 1e-6, maximum: 1 },
    default: 0.01,
    accuracy: { relative: 0.02 },
    when: { input: 'form', oneOf: ['measured'] },
  },
  flow: {
    type: 'quantity',
    label: 'Flow',
    symbol: 'Q',
    help: 'Through the tube.',
    kind: 'volumeFlow',
    physical: { minimum: 0, maximum: 10 },
    default: 0.001,
  },
  readings: {
    type: 'table',
    label: 'Readings',
    help: 'Times and lengths.',
    rows: { minimum: 1, maximum: 3 },
    columns: {
      time: {
        type: 'quantity',
        label: 'Time',
        symbol: 't',
        help: 'When.',
        kind: 'time',
        physical: { minimum: 0, maximum: 100 },
        valid: { minimum: 0, maximum: 50 },
        accuracy: { absolute: 0.5 },
      },
    },
    default: [{ time: 1 }, { time: 2 }],
  },
} as const satisfies Inputs

const outputs = {
  speed: { type: 'quantity', label: 'Speed', symbol: 'v', kind: 'ratio' },
  sum: { type: 'quantity', label: 'Sum of times', symbol: 'Σt', kind: 'time' },
  verdict: {
    type: 'verdict',
    label: 'Verdict',
    options: { slow: { label: 'Slow', grade: 'good' }, fast: { label: 'Fast', grade: 'caution' } },
  },
} as const satisfies Outputs

export const tube = defineCalculator({
  id: 'tube',
  title: 'Tube',
  purpose: 'How fast?',
  equation: { tex: 'v = Q / A', words: 'Speed is flow over area.' },
  sources: ['common-practice'],
  validity: 'Anywhere.',
  inputs,
  outputs,
  compute: (input) => {
    const area = input.form === 'round' ? (Math.PI / 4) * input.diameter ** 2 : input.area
    const speed = input.flow / area
    if (speed > 5000) return { refusal: { field: 'flow', reason: 'Too fast', accepted: 'less' } }
    return {
      outputs: {
        speed,
        sum: input.readings.reduce((sum, row) => sum + (row['time'] ?? 0), 0),
        verdict: speed > 2 ? 'fast' : 'slow',
      },
      steps: [{ label: 'Area', symbol: 'A', rule: 'π d²/4', value: area, kind: 'area' }],
      notices: [{ grade: 'information', text: 'Plain arithmetic.' }],
    }
  },
  chart: {
    x: 'diameter',
    y: 'speed',
    yScale: 'log',
    range: (input) => ({ minimum: 0, maximum: input.diameter * 2 }),
  },
  cases: [
    {
      description: 'One square metre',
      source: 'common-practice',
      place: 'arithmetic',
      input: { form: 'measured', area: '1 m2', flow: '3 m3/s', readings: [{ time: '1 min' }] },
      expected: { speed: '3', sum: '60 s', verdict: 'fast' },
      relativeTolerance: 1e-12,
      whyTolerance: 'arithmetic',
    },
  ],
})

/** One quantity in, one out, with whatever function and accuracy a test needs. */
export function functionOf(
  compute: (x: number) => number | 'refused',
  options: { default: number; accuracy: number; minimum?: number; maximum?: number },
): Calculator {
  return defineCalculator({
    ...tube,
    id: 'function',
    inputs: {
      x: {
        type: 'quantity',
        label: 'X',
        symbol: 'x',
        help: 'Any.',
        kind: 'ratio',
        physical: { minimum: options.minimum ?? -1e6, maximum: options.maximum ?? 1e6 },
        default: options.default,
        accuracy: { absolute: options.accuracy },
      },
    },
    outputs: { y: { type: 'quantity', label: 'Y', symbol: 'y', kind: 'ratio' } },
    compute: (input) => {
      const y = compute(Number(input['x']))
      if (y === 'refused') return { refusal: { field: 'x', reason: 'Refused', accepted: 'others' } }
      return { outputs: { y }, steps: [], notices: [] }
    },
    chart: { x: 'x', y: 'y', yScale: 'linear', range: () => ({ minimum: 0, maximum: 10 }) },
    cases: [{ ...tube.cases[0], input: {}, expected: {} }] as Calculator['cases'],
  } as Calculator)
}
