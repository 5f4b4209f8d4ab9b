import { describe, expect, it } from 'vitest'
import { checkValues } from '../../../calculators/calculator/check-values.ts'
import { mulberry32 } from '../../../calculators/calculator/random.ts'
import { isQuantityResult, run, runPlain } from '../../../calculators/calculator/run.ts'
import type { QuantityResult } from '../../../calculators/calculator/run.ts'
import type { Calculator, InputValue } from '../../../calculators/calculator/types.ts'
import { surroundingsOf, uncertaintyOf } from '../../../calculators/calculator/uncertainty.ts'
import type { Evaluate } from '../../../calculators/calculator/uncertainty.ts'
import { catalogue } from '../../../calculators/catalogue/index.ts'
import { functionOf } from './tube.ts'

const calculators = await Promise.all(Object.values(catalogue).map((load) => load()))
const PLACES = 12

/** Values around the defaults, the same ones each time. */
function places(calculator: Calculator): Record<string, InputValue>[] {
  const uniform = mulberry32(1)
  return Array.from({ length: PLACES }, () =>
    Object.fromEntries(
      Object.entries(calculator.inputs).map(([id, input]): [string, InputValue] => {
        if (input.type === 'choice')
          return [id, input.options[Math.floor(uniform() * input.options.length)]?.value ?? input.default]
        if (input.type === 'table') return [id, input.default]
        const value = input.default * (0.7 + 0.6 * uniform())
        return [id, Math.min(input.physical.maximum, Math.max(input.physical.minimum, value))]
      }),
    ),
  )
}

/** The ± of each quantity with every draw checked as if a person had typed it. */
function checkedThroughout(calculator: Calculator, values: Record<string, InputValue>) {
  const checked = checkValues(calculator, values)
  const centre = runPlain(calculator, values)
  if ('refusal' in checked || 'refusal' in centre) return undefined
  const evaluate: Evaluate = (moved) => {
    const result = runPlain(calculator, moved)
    return 'refusal' in result ? undefined : result.outputs
  }
  const surroundings = surroundingsOf(calculator, checked.values, {}, evaluate)
  const spreads = uncertaintyOf(surroundings, centre.outputs, evaluate)
  return Object.fromEntries(Object.entries(spreads).map(([id, { value }]) => [id, value]))
}

/** The same from a run. */
function spreadsOf(calculator: Calculator, values: Record<string, InputValue>) {
  const result = run(calculator, values)
  if ('refusal' in result) return undefined
  const outputs = Object.entries(result.outputs).flatMap(([id, output]) =>
    isQuantityResult(output) ? [[id, output.uncertainty] as const] : [],
  )
  return Object.fromEntries(outputs)
}

/** A method that works out its own ± has nothing that could be drawn. */
const drawn = calculators.filter((calculator) => !('uncertainties' in runPlain(calculator, {})))

describe('draws that skip the check of every value', () => {
  it.each(drawn)('give the same ± as draws that do not: $id', (calculator) => {
    for (const values of places(calculator))
      expect(spreadsOf(calculator, values)).toEqual(checkedThroughout(calculator, values))
  })
})

describe('a ± that nobody would see', () => {
  const bent = (size: number) =>
    run(
      functionOf((x) => 1 + size * x ** 2, { default: 0, accuracy: 1.96 }),
      {},
    )
  const yOf = (result: ReturnType<typeof bent>) =>
    'outputs' in result ? (result.outputs['y'] as QuantityResult) : undefined

  it('is not drawn below a millionth of the value, where drawing would give no more than that', () => {
    expect(yOf(bent(1e-8))).toEqual({ value: 1 })
    const drawn = yOf(bent(1e-5))
    expect(drawn?.uncertaintyMethod).toBe('Monte Carlo')
    // The draws scale with the bend: a thousandth of this one is what was left out.
    expect((drawn?.uncertainty ?? 1) / 1000).toBeLessThan(1e-6)
  })
})
