import { describe, expect, it } from 'vitest'
import { bendCircuit } from '../../../calculators/faults/bend-circuit.ts'
import type { Bend, FaultData } from '../../../calculators/faults/types.ts'
import { conditionsOf, modelOf, sourceOf } from '../circuit-model/shipped.ts'

const model = modelOf('pq-12')
const conditions = conditionsOf(model, 'full')
const { setPoints } = sourceOf('pq-12')

const fault = (id: string, ...bends: Bend[]): FaultData => ({
  id,
  title: `Fault ${id}`,
  frequency: 'rare',
  bends: { 'pq-12': bends },
})

const bent = (faults: readonly { readonly fault: FaultData; readonly severity: number }[]) =>
  bendCircuit(model, 'pq-12', faults, conditions, setPoints)

const plugged = fault('b-plugged', { part: 'suction-strainer', parameter: 'loading', times: 100 })
const squeezed = fault('a-squeezed', { part: 'return-line', parameter: 'opening', to: '20 %' })

describe('the course from health to the fault', () => {
  it.each([
    [0.5, 10],
    [1, 100],
  ])('times^severity, at %f', (severity, value) => {
    const read = bent([{ fault: plugged, severity }])
    if (!read.ok) throw new Error(read.reason)
    expect(read.bent.parameters).toMatchObject([{ part: 'suction-strainer', parameter: 'loading' }])
    expect(read.bent.parameters[0]?.value).toBeCloseTo(value, 9)
  })

  it.each([
    [0.25, 0.8],
    [1, 0.2],
  ])('straight to a figure, at %f', (severity, value) => {
    const read = bent([{ fault: squeezed, severity }])
    if (!read.ok) throw new Error(read.reason)
    expect(read.bent.parameters[0]?.value).toBeCloseTo(value, 12)
  })

  it('bends nothing at severity 0', () => {
    expect(bent([{ fault: plugged, severity: 0 }])).toEqual({
      ok: true,
      bent: { parameters: [], conditions: {} },
    })
  })

  it('bends the named cylinders, or all', () => {
    const two = fault('two', { part: 'injectors', parameter: 'gasHole', to: '0.2 mm', cylinders: [3, 5] })
    const all = fault('all', { part: 'injectors', parameter: 'gasHole', to: '0.2 mm', cylinders: 'all' })
    const cylinders = (one: FaultData) => {
      const read = bent([{ fault: one, severity: 1 }])
      return read.ok ? read.bent.parameters.map(({ cylinder }) => cylinder) : []
    }
    expect(cylinders(two)).toEqual([3, 5])
    expect(cylinders(all)).toHaveLength(12)
  })

  it('starts from the conditions that were chosen', () => {
    const low = fault('low', { condition: 'tankLevel', to: '0 %' })
    expect(bent([{ fault: low, severity: 0.5 }])).toMatchObject({
      ok: true,
      bent: { conditions: { tankLevel: 0.3 } },
    })
  })

  it('delivers another fuel from severity 0.5 on', () => {
    const wrong = fault('wrong', { condition: 'fuel', to: 'heavy-distillate' })
    expect(bent([{ fault: wrong, severity: 0.4 }])).toMatchObject({ bent: { conditions: {} } })
    expect(bent([{ fault: wrong, severity: 0.5 }])).toMatchObject({
      bent: { conditions: { fuel: 'heavy-distillate' } },
    })
  })
})

describe('several at once', () => {
  const waxed = fault('c-waxed', { part: 'suction-strainer', parameter: 'loading', times: 3 })

  it('two that multiply the same resistance multiply it together', () => {
    const read = bent([
      { fault: plugged, severity: 0.5 },
      { fault: waxed, severity: 1 },
    ])
    if (!read.ok) throw new Error(read.reason)
    expect(read.bent.parameters).toHaveLength(1)
    expect(read.bent.parameters[0]?.value).toBeCloseTo(30, 9)
  })

  it('their order does not count', () => {
    const other = fault('d-other', { part: 'return-line', parameter: 'opening', to: '50 %' })
    const pair = [
      { fault: squeezed, severity: 0.7 },
      { fault: other, severity: 0.4 },
    ]
    expect(bent(pair)).toEqual(bent(pair.toReversed()))
  })

  it('what both ask for stays within what can be', () => {
    const huge = fault('huge', { part: 'suction-strainer', parameter: 'loading', times: 5000 })
    const read = bent([
      { fault: plugged, severity: 1 },
      { fault: huge, severity: 1 },
    ])
    expect(read).toMatchObject({ ok: true, bent: { parameters: [{ value: 5000 }] } })
  })
})

describe('refused with a sentence', () => {
  it.each<[string, FaultData, number, RegExp]>([
    ['a severity of 7', plugged, 7, /Fault b-plugged: read the severity 7; accepted: 0 to 1/],
    ['no number', plugged, Number.NaN, /severity NaN/],
    ['another circuit’s fault', { ...plugged, bends: {} }, 1, /cannot have this fault/],
    [
      'a part that is none',
      fault('x', { part: 'funnel', parameter: 'bore', times: 2 }),
      1,
      /«funnel» is no part/,
    ],
    [
      'a parameter that is none',
      fault('x', { part: 'return-line', parameter: 'colour', times: 2 }),
      1,
      /«colour» is no parameter of Common return line; accepted: length/,
    ],
    [
      'a figure without a unit',
      fault('x', { part: 'return-line', parameter: 'bore', to: '3' }),
      1,
      /«3» has no unit; accepted/,
    ],
  ])('%s', (_, one, severity, reason) => {
    expect(bent([{ fault: one, severity }])).toEqual({ ok: false, reason: expect.stringMatching(reason) })
  })
})
