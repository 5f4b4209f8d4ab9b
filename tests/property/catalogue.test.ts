import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isQuantityResult, run, type RunResult } from '../../calculators/calculator/run.ts'
import type { Calculator, Input, InputValue, Refusal } from '../../calculators/calculator/types.ts'
import { catalogue } from '../../calculators/catalogue/index.ts'
import { drawWith } from './draws.ts'

/** `npm run laws` runs many more cases, each time others; the normal run has the same cases on every machine. */
const long = import.meta.env.MODE === 'long'
drawWith(long ? { numRuns: 10_000 } : { seed: 341, numRuns: 500 })

/** In the short run one case in so many has its two thousand draws too, which are most of the time. */
const DRAWN_EVERY = 4

const calculators = await Promise.all(Object.values(catalogue).map((load) => load()))

const anything = fc.double({ noNaN: true, noDefaultInfinity: true })

/** Mostly what is possible, with its ends; sometimes any finite number at all. */
function valueOf(input: Input): fc.Arbitrary<InputValue> {
  if (input.type === 'choice') return fc.constantFrom(...input.options.map((option) => option.value))
  if (input.type === 'table') return fc.constant(input.default)
  const { minimum, maximum } = input.physical
  // Half to twice the default, as far as that is possible: half of a temperature in kelvin seldom is.
  const ends = [0.5, 2].map((share) => Math.min(maximum, Math.max(minimum, input.default * share)))
  const near = fc.double({ min: Math.min(...ends), max: Math.max(...ends), noNaN: true })
  return fc.oneof(
    { weight: 30, arbitrary: near },
    { weight: 5, arbitrary: fc.double({ min: minimum, max: maximum, noNaN: true }) },
    { weight: 2, arbitrary: fc.constantFrom(minimum, maximum, 0, input.default) },
    { weight: 1, arbitrary: anything },
  )
}

function valuesOf(calculator: Calculator) {
  return fc.record(
    Object.fromEntries(Object.entries(calculator.inputs).map(([id, input]) => [id, valueOf(input)])),
  )
}

const NOT_FOR_PEOPLE = /NaN|Infinity|undefined/

function faultsOfRefusal(calculator: Calculator, { field, reason, accepted }: Refusal): string[] {
  const known = field === '' || Object.hasOwn(calculator.inputs, field)
  return [
    ...(known ? [] : [`refuses an unknown field ${field}`]),
    ...(reason.length > 10 ? [] : [`gives no reason but «${reason}»`]),
    ...[reason, accepted].filter((text) => NOT_FOR_PEOPLE.test(text)),
  ]
}

/** What is wrong with a result: nothing, when it is a refusal that says why or has numbers throughout. */
function faultsOf(calculator: Calculator, result: RunResult): string[] {
  if ('refusal' in result) return faultsOfRefusal(calculator, result.refusal)
  const outputs = Object.entries(calculator.outputs).flatMap(([id, output]) => {
    const found = result.outputs[id]
    const sound =
      output.type === 'verdict'
        ? Object.hasOwn(output.options, found?.value ?? '')
        : isQuantityResult(found) && Number.isFinite(found.value) && Number.isFinite(found.uncertainty ?? 0)
    return sound ? [] : [`${id} is ${JSON.stringify(found)}`]
  })
  const steps = result.steps.filter((step) => !Number.isFinite(step.value)).map((step) => step.label)
  const notices = result.notices.map((notice) => notice.text).filter((text) => NOT_FOR_PEOPLE.test(text))
  return [...outputs, ...steps, ...notices]
}

describe.each(calculators)('$id', (calculator) => {
  test('any finite input gives a refusal or finite numbers, and never throws', () => {
    let [answered, asked] = [0, 0]
    fc.assert(
      fc.property(valuesOf(calculator), (values) => {
        const draws = long || asked++ % DRAWN_EVERY === 0 ? 'now' : 'later'
        const result = run(calculator, values, {}, {}, draws)
        if ('outputs' in result) answered += 1
        expect(faultsOf(calculator, result)).toEqual([])
      }),
    )
    // Refusals alone would prove little.
    expect(answered).toBeGreaterThan(50)
  })

  test('one input at a time, far outside', () => {
    const extremes = [0, -0, -1, 1e308, -1e308, 5e-324, Number.MAX_VALUE, -273.15, 1e-300]
    for (const [id, input] of Object.entries(calculator.inputs)) {
      if (input.type !== 'quantity') continue
      for (const value of [...extremes, input.physical.minimum, input.physical.maximum])
        expect(faultsOf(calculator, run(calculator, { [id]: value }))).toEqual([])
    }
  })

  test('what is not a number at all is refused', () => {
    for (const [id, input] of Object.entries(calculator.inputs)) {
      if (input.when) continue
      for (const value of [NaN, Infinity, -Infinity, 'text']) {
        const result = run(calculator, { [id]: value })
        expect('refusal' in result && result.refusal.field).toBe(id)
      }
    }
  })

  test('its own defaults are not refused', () => {
    expect('outputs' in run(calculator, {})).toBe(true)
  })
})
