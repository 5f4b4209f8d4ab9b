import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { readCase, readExpected } from '../../../calculators/calculator/cases.ts'
import { run } from '../../../calculators/calculator/run.ts'
import { catalogue } from '../../../calculators/catalogue/index.ts'

/** The mark of a case, and of a calculator, that rests on no published source. */
const COMMON_PRACTICE = 'common-practice'

/** A figure of two digits, or one read off a chart, is no better than this; wider is no agreement. */
const WIDEST = 0.02

const sources = Object.keys(parse(readFileSync('content/sources/sources.yaml', 'utf8')) as object)
const calculators = await Promise.all(Object.values(catalogue).map((load) => load()))

function agrees(
  got: number | string | undefined,
  value: number | string,
  relativeTolerance: number,
): boolean {
  if (typeof got !== 'number' || typeof value !== 'number') return got === value
  return Math.abs(got - value) <= Math.abs(value) * relativeTolerance
}

describe.each(calculators)('$id', (calculator) => {
  test('has a published case, or says that it is common practice', () => {
    const published = calculator.cases.filter((one) => one.source !== COMMON_PRACTICE)
    const says = /common practice, no published source/.test(calculator.validity)
    expect(published.length > 0 || says).toBe(true)
  })

  test('a tolerance that no printed digits ask for is called a plausibility check', () => {
    for (const { plausibilityOnly = false, relativeTolerance, whyTolerance } of calculator.cases) {
      expect(whyTolerance.startsWith('a plausibility check only: ')).toBe(plausibilityOnly)
      expect(plausibilityOnly || relativeTolerance <= WIDEST).toBe(true)
    }
  })

  test('a case worked by hand is filed under no published source', () => {
    const claimed = calculator.cases.filter((one) => one.source !== COMMON_PRACTICE)
    expect(claimed.filter((one) => /^by hand/i.test(one.place)).map((one) => one.place)).toEqual([])
  })

  test('names only sources of the list', () => {
    const named = [...calculator.sources, ...calculator.cases.map((one) => one.source)]
    expect(named.filter((id) => id !== COMMON_PRACTICE && !sources.includes(id))).toEqual([])
  })

  test.each(calculator.cases)('$description ($source, $place)', (published) => {
    const result = run(calculator, readCase(calculator, published))
    if ('refusal' in result) throw new Error(`refused: ${result.refusal.reason}`)
    const expected = Object.entries(readExpected(calculator, published))
    const misses = expected.flatMap(([id, value]) => {
      const got = result.outputs[id]?.value
      return agrees(got, value, published.relativeTolerance) ? [] : [`${id}: ${got} against ${value}`]
    })
    expect(expected.length).toBeGreaterThan(0)
    expect(published.whyTolerance.length).toBeGreaterThan(10)
    expect(misses).toEqual([])
  })
})
