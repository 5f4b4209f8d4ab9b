import * as fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import { NO_FINITE_RESULT } from '../../../calculators/calculator/refusal.ts'
import { relevantInputs } from '../../../calculators/calculator/relevant-inputs.ts'
import { isQuantityResult, run } from '../../../calculators/calculator/run.ts'
import type { RunResult } from '../../../calculators/calculator/run.ts'
import type { Calculator, InputValue } from '../../../calculators/calculator/types.ts'
import { functionOf, tube } from './tube.ts'

/** Values as they might come from an address or a script, whatever their type. */
const hostile = (value: unknown) => value as InputValue
const FLOW_TOO_LARGE = 1
const valuesIn = (result: RunResult) => ('refusal' in result ? result : result.outputs)

describe('what is refused before the method is asked', () => {
  it.each<[string, Record<string, InputValue>, string, string]>([
    ['NaN', { flow: Number.NaN }, 'flow', 'Flow is not a finite number'],
    ['∞', { flow: Number.POSITIVE_INFINITY }, 'flow', 'Flow is not a finite number'],
    ['−∞', { flow: Number.NEGATIVE_INFINITY }, 'flow', 'Flow is not a finite number'],
    ['text', { flow: '3' }, 'flow', 'Flow is not a number'],
    ['empty text', { flow: '' }, 'flow', 'Flow is not a number'],
    ['an object', { flow: hostile({}) }, 'flow', 'Flow is not a number'],
    ['a table', { flow: [] }, 'flow', 'Flow is not a number'],
    ['below', { flow: -1e-9 }, 'flow', 'Flow is −6×10⁻⁵\u00a0L/min, below 0\u00a0L/min'],
    ['above', { diameter: 1.01 }, 'diameter', 'Inside diameter is 1010\u00a0mm, above 1000\u00a0mm'],
    [
      'just above',
      { diameter: 1.0000001 },
      'diameter',
      'Inside diameter is 1000.0001\u00a0mm, above 1000\u00a0mm',
    ],
    ['1e308', { diameter: 1e308 }, 'diameter', 'Inside diameter is 1×10³¹¹'.slice(0, 18)],
    ['choice', { form: 'square' }, 'form', 'Form is «square»'],
    ['choice by a name of objects', { form: 'constructor' }, 'form', 'Form is «constructor»'],
    ['choice of another type', { form: 1 }, 'form', 'Form is not a choice'],
    ['unknown input', { wing: 1 }, '', '«wing» is not an input here'],
    ['toString', { toString: 1 }, '', '«toString» is not an input here'],
    ['no table', { readings: 5 }, 'readings', 'Readings is not a table'],
    ['no rows', { readings: [] }, 'readings', 'Readings has 0 rows'],
    [
      'too many rows',
      { readings: Array.from({ length: 4 }, () => ({ time: 1 })) },
      'readings',
      'Readings has 4 rows',
    ],
    ['no cell', { readings: [{ time: 1 }, {}] }, 'readings', 'Readings, row 2: Time is not a number'],
    ['no row', { readings: hostile([null]) }, 'readings', 'Readings, row 1: Time is not a number'],
    [
      'bad cell',
      { readings: [{ time: Number.NaN }] },
      'readings',
      'Readings, row 1: Time is not a finite number',
    ],
    [
      'cell below',
      { readings: [{ time: -1 }] },
      'readings',
      'Readings, row 1: Time is −1\u00a0s, below 0\u00a0s',
    ],
  ])('%s', (_, values, field, reason) => {
    const compute = vi.fn<Calculator['compute']>(tube.compute)
    const result = run({ ...tube, compute }, values)
    expect(result).toMatchObject({ refusal: { field, reason: expect.stringContaining(reason) } })
    expect('refusal' in result && result.refusal.accepted).not.toBe('')
    expect(compute).not.toHaveBeenCalled()
  })

  it('words limits in the unit of the field', () => {
    const units = { diameter: 'in' }
    expect(run(tube, { diameter: 2 }, {}, units)).toEqual({
      refusal: {
        field: 'diameter',
        reason: 'Inside diameter is 78.74\u00a0in, above 39.37\u00a0in',
        accepted: '0.03937\u00a0in to 39.37\u00a0in',
      },
    })
  })

  it.each([0.001, 1])('the ends of the range belong to it: %d', (diameter) => {
    expect(run(tube, { diameter, flow: 1e-6 })).toHaveProperty('outputs')
  })

  it.each([
    [{ diameter: -1 }, 'diameter', 'The accuracy of Inside diameter'],
    [{ diameter: Number.NaN }, 'diameter', 'The accuracy of Inside diameter'],
    [{ wing: 1 }, '', '«wing» has an accuracy but is not an input here'],
  ])('accuracy %j', (accuracies, field, reason) => {
    expect(run(tube, {}, accuracies as Record<string, number>)).toMatchObject({
      refusal: { field, reason: expect.stringContaining(reason) },
    })
  })
})

describe('what the method gives', () => {
  it('comes back with steps and notices', () => {
    const result = run(tube, { form: 'measured', area: 0.5, flow: 2, readings: [{ time: 3 }] })
    expect(result).toMatchObject({
      outputs: { speed: { value: 4 }, sum: { value: 3, uncertainty: 0.5 }, verdict: { value: 'fast' } },
      steps: [{ label: 'Area', value: 0.5 }],
      notices: [{ grade: 'information' }],
    })
  })

  it('takes defaults for what is missing', () => {
    expect(valuesIn(run(tube, {}))).toMatchObject({ sum: { value: 3 }, verdict: { value: 'slow' } })
  })

  it('does not look at what does not count, and puts its default there', () => {
    const seen: unknown[] = []
    const watched: Calculator = {
      ...tube,
      compute: (input) => {
        seen.push(input['diameter'])
        return tube.compute(input)
      },
    }
    expect(run(watched, { form: 'measured', diameter: Number.NaN })).toHaveProperty('outputs')
    expect(new Set(seen)).toEqual(new Set([0.1]))
  })

  it('says when a value is outside the range for which the method is stated', () => {
    const result = run(tube, { diameter: 0.6, readings: [{ time: 60 }] })
    expect('notices' in result && result.notices.map((notice) => notice.text)).toEqual([
      'Inside diameter is 600\u00a0mm, above 500\u00a0mm: outside the range for which the method is stated.',
      'Readings, row 1: Time is 60\u00a0s, above 50\u00a0s: outside the range for which the method is stated.',
      'Plain arithmetic.',
    ])
  })

  it('hands on a refusal of the method', () => {
    expect(run(tube, { flow: 10, diameter: 0.001 })).toEqual({
      refusal: { field: 'flow', reason: 'Too fast', accepted: 'less' },
    })
  })

  it.each<[string, () => unknown]>([
    ['NaN', () => ({ outputs: { speed: Number.NaN, sum: 1, verdict: 'slow' }, steps: [], notices: [] })],
    ['∞', () => ({ outputs: { speed: 1 / 0, sum: 1, verdict: 'slow' }, steps: [], notices: [] })],
    ['nothing', () => ({ outputs: {}, steps: [], notices: [] })],
    [
      'an unknown verdict',
      () => ({ outputs: { speed: 1, sum: 1, verdict: 'toString' }, steps: [], notices: [] }),
    ],
    [
      'NaN in the working',
      () => ({
        outputs: { speed: 1, sum: 1, verdict: 'slow' },
        steps: [{ label: 'A', symbol: 'A', rule: '', value: Number.NaN, kind: 'ratio' }],
        notices: [],
      }),
    ],
    [
      'an error',
      () => {
        throw new RangeError('no root')
      },
    ],
  ])('refuses honestly when the method gives %s', (_, compute) => {
    const broken = { ...tube, compute } as Calculator
    expect(run(broken, {})).toMatchObject({
      refusal: { field: '', reason: expect.stringContaining(NO_FINITE_RESULT) },
    })
  })

  it('names the output that has no finite value, and the input that alone is at fault', () => {
    const compute = ({ flow }: { readonly flow: number }) => ({
      outputs: { speed: flow > FLOW_TOO_LARGE ? Number.NaN : 1, sum: 1, verdict: 'slow' },
      steps: [],
      notices: [],
    })
    const broken = { ...tube, compute } as unknown as Calculator
    expect(run(broken, { flow: 2 * FLOW_TOO_LARGE, diameter: 0.02 })).toMatchObject({
      refusal: { field: 'flow', reason: `${NO_FINITE_RESULT}: «${tube.outputs['speed']?.label}» has none` },
    })
    expect(run(broken, { flow: FLOW_TOO_LARGE })).not.toHaveProperty('refusal')
  })

  it('a half-width that the method works out itself stands with those outputs, and is joined by an accuracy', () => {
    const own = (values: Record<string, number>) =>
      ({
        ...tube,
        compute: (input: Parameters<typeof tube.compute>[0]) => ({
          ...tube.compute(input),
          uncertainties: values,
        }),
      }) as unknown as Calculator
    const uncertaintyOf = (calculator: Calculator, id: string) => {
      const result = run(calculator, {})
      const output = 'refusal' in result ? undefined : result.outputs[id]
      return isQuantityResult(output) ? output.uncertainty : undefined
    }
    const plain = uncertaintyOf(tube, 'speed') ?? Number.NaN
    expect(plain).toBeGreaterThan(0)
    expect(uncertaintyOf(own({ speed: 2 * plain }), 'speed')).toBeCloseTo(Math.sqrt(5) * plain, 12)
    expect(uncertaintyOf(own({ sum: 1 }), 'speed')).toBe(plain)
  })
})

describe('relevantInputs', () => {
  const chained: Calculator = {
    ...tube,
    inputs: {
      ...tube.inputs,
      detail: {
        type: 'choice',
        label: 'Detail',
        help: '',
        options: [
          { value: 'no', label: 'No' },
          { value: 'yes', label: 'Yes' },
        ],
        default: 'yes',
        when: { input: 'form', oneOf: ['measured'] },
      },
      flow: {
        ...tube.inputs['flow'],
        when: { input: 'detail', oneOf: ['yes'] },
      } as Calculator['inputs'][string],
    },
  }

  it('follows choices, in the order of the declaration', () => {
    expect(relevantInputs(tube, {})).toEqual(['form', 'diameter', 'flow', 'readings'])
    expect(relevantInputs(tube, { form: 'measured' })).toEqual(['form', 'area', 'flow', 'readings'])
    expect(relevantInputs(tube, { form: 'square' })).toEqual(['form', 'flow', 'readings'])
  })

  it('leaves out what hangs on a choice that does not count itself', () => {
    expect(relevantInputs(chained, { detail: 'yes' })).toEqual(['form', 'diameter', 'readings'])
    expect(relevantInputs(chained, { form: 'measured' })).toEqual([
      'form',
      'area',
      'flow',
      'readings',
      'detail',
    ])
  })
})

describe('law: no NaN for any input', () => {
  const anything = fc.oneof(fc.double(), fc.double({ min: 0, max: 1 }), fc.string(), fc.constant(undefined))
  const values = fc.record({
    form: fc.oneof(fc.constantFrom('round', 'measured'), anything),
    diameter: anything,
    area: anything,
    flow: anything,
    readings: fc.oneof(
      fc.array(fc.record({ time: fc.double({ min: 0, max: 100 }) }), { maxLength: 4 }),
      anything,
    ),
  })

  it('gives finite numbers or a refusal', () => {
    fc.assert(
      fc.property(values, (given) => {
        const result = run(tube, given as Record<string, InputValue>)
        const text = JSON.stringify(result, (_, value: unknown) =>
          typeof value === 'number' && !Number.isFinite(value) ? 'NOT FINITE' : value,
        )
        expect(text).not.toContain('NOT FINITE')
        expect(text).not.toContain('NaN')
      }),
    )
  })

  it('even where the method overflows, has poles or stops', () => {
    const wild = functionOf((x) => (x === 0 ? 'refused' : Math.exp(1000 / x)), { default: 100, accuracy: 5 })
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (x) => {
        const result = run(wild, { x })
        const y = 'outputs' in result ? result.outputs['y'] : undefined
        const numbers = y === undefined ? [] : Object.values(y).filter((value) => typeof value === 'number')
        expect(numbers.every(Number.isFinite)).toBe(true)
      }),
    )
  })
})
