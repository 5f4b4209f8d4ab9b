import { describe, expect, it } from 'vitest'
import { readCase, readExpected } from '../../../calculators/calculator/cases.ts'
import { run } from '../../../calculators/calculator/run.ts'
import { sampleChart } from '../../../calculators/calculator/sample.ts'
import type { Calculator, PublishedCase } from '../../../calculators/calculator/types.ts'
import { functionOf, tube } from './tube.ts'

const published = tube.cases[0] as PublishedCase

describe('readCase', () => {
  it.each([
    [{ area: '1' }, 'area: «1» has no unit'],
    [{ area: '1 kPa' }, 'area: «1 kPa» is a pressure'],
    [{ readings: 'none' }, 'readings: not a table'],
    [{ readings: [{}] }, 'readings: not a text with a number and a unit'],
    [{ flow: [{ time: '1 s' }] }, 'flow: not a text with a number and a unit'],
    [{ form: [{ time: '1 s' }] }, 'form: not a choice'],
  ])('%j stops with calculator, case and field', (input, message) => {
    const wrong = { ...published, input } as PublishedCase
    expect(() => readCase(tube, wrong)).toThrow(`Calculator tube, case «One square metre», ${message}`)
  })

  it('reads figures, choices and tables, and takes defaults for the rest', () => {
    expect(readCase(tube, published)).toEqual({
      form: 'measured',
      diameter: 0.1,
      area: 1,
      flow: 3,
      readings: [{ time: 60 }],
    })
  })

  it('gives what `run` needs to come to what the source prints', () => {
    const result = run(tube, readCase(tube, published))
    const expected = readExpected(tube, published)
    expect(expected).toEqual({ speed: 3, sum: 60, verdict: 'fast' })
    for (const [id, value] of Object.entries(expected))
      expect('outputs' in result && result.outputs[id]).toMatchObject({ value })
  })

  it('stops at an expected figure without a unit', () => {
    expect(() => readExpected(tube, { ...published, expected: { sum: '60' } })).toThrow(
      'sum: «60» has no unit',
    )
  })
})

describe('sampleChart', () => {
  it('gives nothing for refused values, too few points, no chart or an empty range', () => {
    expect(sampleChart(tube, { flow: -1 }, 10)).toEqual([])
    expect(sampleChart(tube, {}, 1)).toEqual([])
    expect(sampleChart(tube, {}, Number.NaN)).toEqual([])
    const { chart, ...bare } = tube
    expect(sampleChart(bare as Calculator, {}, 10)).toEqual([])
    const empty = {
      ...tube,
      chart: { ...chart, range: () => ({ minimum: 1, maximum: Number.NaN }) },
    } as Calculator
    expect(sampleChart(empty, {}, 10)).toEqual([])
  })

  it('leaves out points that are refused', () => {
    const gap = functionOf((x) => (x > 3 && x < 6 ? 'refused' : 2 * x), { default: 1, accuracy: 1 })
    expect(sampleChart(gap, {}, 11).map((point) => point.x)).toEqual([0, 1, 2, 3, 6, 7, 8, 9, 10])
  })

  it('runs from one end of the range to the other', () => {
    const points = sampleChart(tube, { flow: 0.001 }, 3)
    // The first one, a diameter of zero, is not possible.
    expect(points.map((point) => point.x)).toEqual([0.1, 0.2])
    expect(points[0]?.y).toBeCloseTo(0.1273, 4)
  })
})
