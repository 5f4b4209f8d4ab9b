import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isQuantityResult, run } from '../../calculators/calculator/run.ts'
import type { Calculator, InputValue, TableInput } from '../../calculators/calculator/types.ts'
import { catalogue } from '../../calculators/catalogue/index.ts'
import { chanceOfDeparture, departureUncertainty, robustSet } from '../../calculators/engine/exhaust.ts'
import { dutyCycle, injectionRate, quantityAtRack } from '../../calculators/engine/burn.ts'
import { leakOffAtReference } from '../../calculators/engine/leak-off.ts'
import { ratioFromStraightened, straightened } from '../../calculators/hydraulics/filter-loading.ts'
import { crossing, trendOf } from '../../calculators/statistics/crossing.ts'
import { median } from '../../calculators/statistics/median.ts'
import { normalQuantile, normalTail } from '../../calculators/statistics/normal.ts'
import { theilSen } from '../../calculators/statistics/theil-sen.ts'
import { drawWith } from './draws.ts'

/** Many more, each time others, in the long run of the laws. */
const long = import.meta.env.MODE === 'long'
drawWith(long ? { numRuns: 10_000 } : { seed: 1968, numRuns: 300 })

const reading = fc.double({ min: -1e4, max: 1e4, noNaN: true })
const values = fc.array(reading, { minLength: 1, maxLength: 30 })
const points = fc
  .array(fc.record({ x: fc.integer({ min: 0, max: 5000 }), y: fc.integer({ min: -500, max: 500 }) }), {
    minLength: 3,
    maxLength: 20,
  })
  .filter((all) => new Set(all.map((point) => point.x)).size > 1)
const law = fc.constantFrom('cake', 'intermediate', 'standard', 'complete')

describe('statistics', () => {
  test('half of the values lie on each side of the median', () => {
    fc.assert(
      fc.property(values, (all) => {
        const middle = median(all)
        expect(all.filter((value) => value < middle).length).toBeLessThanOrEqual(all.length / 2)
        expect(all.filter((value) => value > middle).length).toBeLessThanOrEqual(all.length / 2)
      }),
    )
  })

  test('the normal quantile undoes the tail', () => {
    fc.assert(
      fc.property(fc.double({ min: -6, max: 6, noNaN: true }), (z) => {
        expect(normalQuantile(normalTail(-z))).toBeCloseTo(z, 6)
      }),
    )
  })

  test('the slope lies in its interval; shifted readings shift the line, turned ones turn it', () => {
    fc.assert(
      fc.property(points, (all) => {
        const line = theilSen(all, 0.95)
        if (!line) throw new Error('no line')
        expect(line.lowSlope).toBeLessThanOrEqual(line.slope)
        expect(line.highSlope).toBeGreaterThanOrEqual(line.slope)
        const turned = theilSen(
          all.map(({ x, y }) => ({ x, y: 7 - 3 * y })),
          0.95,
        )
        expect(turned?.slope).toBeCloseTo(-3 * line.slope, 6)
        expect(turned?.intercept).toBeCloseTo(7 - 3 * line.intercept, 6)
        expect(turned?.lowSlope).toBeCloseTo(-3 * line.highSlope, 6)
      }),
    )
  })

  test('earliest, likely and latest stand in order, within the look-ahead, and a minimum mirrors a maximum', () => {
    fc.assert(
      fc.property(points, fc.integer({ min: -600, max: 600 }), (all, limit) => {
        const mirrored = all.map(({ x, y }) => ({ x, y: -y }))
        const [trend, mirror] = [trendOf(all), trendOf(mirrored)]
        if (!trend || !mirror) throw new Error('no trend')
        const up = crossing(trend, limit, 'maximum', 1000)
        expect(up.earliest).toBeGreaterThanOrEqual(0)
        expect(up.earliest).toBeLessThanOrEqual(up.likely)
        expect(up.likely).toBeLessThanOrEqual(up.latest)
        expect(up.latest).toBeLessThanOrEqual(1000)
        expect(crossing(mirror, -limit, 'minimum', 1000).likely).toBeCloseTo(up.likely, 6)
      }),
    )
  })
})

describe('engine', () => {
  test('a set that is shifted keeps its z; one wild cylinder of many moves the centre by no more than its neighbours', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 600, max: 800 }), { minLength: 5, maxLength: 24 }), (all) => {
        const set = robustSet(all, 5)
        const shifted = robustSet(
          all.map((value) => value + 50),
          5,
        )
        expect(shifted.modifiedZ).toEqual(set.modifiedZ)
        const wild = robustSet([...all.slice(1), 5000], 5)
        expect(wild.centre).toBeLessThanOrEqual(Math.max(...all))
        expect(wild.farthest).toBe(all.length - 1)
      }),
    )
  })

  test('the chance of a departure falls with its size and grows with the number of cylinders', () => {
    const one = departureUncertainty(5, 12)
    expect(one).toBeGreaterThan(5)
    let before = 1
    for (const departure of [0, 1, 3, 6, 10, 20, 40]) {
      const chance = chanceOfDeparture(departure, one, 12)
      expect(chance).toBeLessThanOrEqual(before)
      expect(chanceOfDeparture(departure, one, 24)).toBeGreaterThanOrEqual(chance)
      before = chance
    }
    expect(before).toBe(1e-6)
  })

  test('loading laws: new elements start at zero, every law rises, and the inverse gives the ratio back', () => {
    fc.assert(
      fc.property(law, fc.double({ min: 0.2, max: 50, noNaN: true }), (which, ratio) => {
        expect(straightened(which, 1)).toBeCloseTo(0, 12)
        expect(straightened(which, ratio * 1.01)).toBeGreaterThan(straightened(which, ratio))
        expect(ratioFromStraightened(which, straightened(which, ratio))).toBeCloseTo(ratio, 6)
      }),
    )
    expect(ratioFromStraightened('complete', 1)).toBeUndefined()
    expect(ratioFromStraightened('standard', 1.5)).toBeUndefined()
  })

  test('means of a duty cycle lie between its states; injections and leak-off go in proportion', () => {
    const state = fc.record({
      share: fc.double({ min: 0.01, max: 1, noNaN: true }),
      burn: fc.double({ min: 0, max: 1, noNaN: true }),
      speed: fc.double({ min: 0, max: 30, noNaN: true }),
    })
    fc.assert(
      fc.property(fc.array(state, { minLength: 1, maxLength: 8 }), (states) => {
        const burns = states.map((one) => one.burn)
        const { burn } = dutyCycle(states)
        expect(burn).toBeGreaterThanOrEqual(Math.min(...burns) - 1e-12)
        expect(burn).toBeLessThanOrEqual(Math.max(...burns) + 1e-12)
      }),
    )
    expect(injectionRate(2 * Math.PI, 12, 'two')).toBeCloseTo(2 * injectionRate(2 * Math.PI, 12, 'four'), 12)
    expect(leakOffAtReference(8, 4e-6, 2e-6)).toBe(4)
    expect(quantityAtRack(2, { rack: 1, quantity: 5 }, { rack: 3, quantity: 9 })).toBe(7)
  })
})

const withTables = [
  'exhaust-spread',
  'exhaust-before-and-after',
  'reading-trend',
  'filter-life',
  'range-and-hours',
  'injector-bench-test',
]

/** Rows of any possible values: mostly near the defaults, sometimes from end to end, often equal. */
function anyTable(input: TableInput): fc.Arbitrary<InputValue> {
  const cell = (column: string) => {
    const { minimum, maximum } = input.columns[column]?.physical ?? { minimum: 0, maximum: 1 }
    const near = Number(input.default.at(-1)?.[column])
    return fc.oneof(
      { weight: 6, arbitrary: fc.double({ min: 0.8, max: 1.3, noNaN: true }).map((share) => share * near) },
      { weight: 2, arbitrary: fc.constant(near) },
      { weight: 1, arbitrary: fc.double({ min: minimum, max: maximum, noNaN: true }) },
      { weight: 1, arbitrary: fc.constantFrom(minimum, maximum) },
    )
  }
  const row = fc.record(Object.fromEntries(Object.keys(input.columns).map((id) => [id, cell(id)])))
  return fc.array(row, { minLength: input.rows.minimum, maxLength: Math.min(12, input.rows.maximum) })
}

describe.each(withTables)('any table: %s', (id) => {
  test('gives a refusal with its reason or finite numbers', async () => {
    const calculator = await catalogue[id]?.()
    if (!calculator) throw new Error(id)
    const [name, input] = Object.entries(calculator.inputs).find(([, one]) => one.type === 'table') ?? []
    if (name === undefined || input?.type !== 'table') throw new Error(`${id} has no table`)
    fc.assert(
      fc.property(anyTable(input), (table) => {
        expect(faultsOf(calculator, name, table)).toEqual([])
      }),
    )
  })
})

function faultsOf(calculator: Calculator, name: string, table: InputValue): string[] {
  const result = run(calculator, { [name]: table })
  if ('refusal' in result) return result.refusal.reason.length > 10 ? [] : ['no reason']
  const outputs = Object.entries(result.outputs).flatMap(([id, output]) =>
    isQuantityResult(output) && !Number.isFinite(output.value) ? [id] : [],
  )
  const said = result.notices
    .map((notice) => notice.text)
    .filter((text) => /NaN|Infinity|undefined/.test(text))
  const values = { ...defaultsOf(calculator), [name]: table } as Parameters<Calculator['compute']>[0]
  const drawn = [
    ...(calculator.points?.points(values) ?? []),
    ...(calculator.points?.lines?.(values) ?? []).flatMap((line) => line.points),
  ]
  const lost = drawn.filter((point) => !Number.isFinite(point.x) || !Number.isFinite(point.y))
  return [...outputs, ...said, ...lost.map(() => 'a point of the chart')]
}

function defaultsOf(calculator: { inputs: Readonly<Record<string, { default: unknown }>> }) {
  return Object.fromEntries(Object.entries(calculator.inputs).map(([id, input]) => [id, input.default]))
}
