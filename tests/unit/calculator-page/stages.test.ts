import { describe, expect, it } from 'vitest'
import { isQuantityResult } from '../../../calculators/calculator/run.ts'
import type { QuantityResult } from '../../../calculators/calculator/run.ts'
import type { Calculator } from '../../../calculators/calculator/types.ts'
import { catalogue } from '../../../calculators/catalogue/index.ts'
import { evaluate } from '../../../components/calculator/evaluate.ts'
import type { Evaluation } from '../../../components/calculator/evaluate.ts'
import { fieldsOf } from '../../../components/calculator/fields.ts'
import { valueText } from '../../../components/calculator/outputs.ts'
import { startingTexts, textsFromExample } from '../../../components/calculator/starting.ts'
import { startState } from '../../../components/calculator/state.ts'

const calculators = await Promise.all(Object.values(catalogue).map((load) => load()))
/** One whose example is so strongly curved that its ± takes many draws. */
const CURVED = 'valve-coefficient'

function bothStages(calculator: Calculator): { early: Evaluation; late: Evaluation } {
  const specs = fieldsOf(calculator)
  const state = startState(calculator, startingTexts(calculator, textsFromExample(calculator)), 'si')
  return { early: evaluate(calculator, specs, state, 'later'), late: evaluate(calculator, specs, state) }
}

const quantities = ({ result }: Evaluation): [string, QuantityResult][] =>
  Object.entries(result?.outputs ?? {}).flatMap(([id, output]) =>
    isQuantityResult(output) ? [[id, output]] : [],
  )

describe('the result that is shown before the draws', () => {
  it.each(calculators)(
    'is that of the whole calculation, without a ± of its own where it is pending: $id',
    (calculator) => {
      const { early, late } = bothStages(calculator)
      expect(late.pending).toBe(false)
      expect(early.pending).toBe(
        quantities(late).some(([, output]) => output.uncertaintyMethod === 'Monte Carlo'),
      )
      expect(early.result?.notices).toEqual(late.result?.notices)
      expect(early.result?.steps).toEqual(late.result?.steps)
      const settled = new Map(quantities(late))
      for (const [id, output] of quantities(early)) {
        expect(output.value).toBe(settled.get(id)?.value)
        const isPending = output.uncertaintyPending !== undefined
        expect(output.uncertainty).toBe(isPending ? undefined : settled.get(id)?.uncertainty)
      }
    },
  )

  it('says that a ± is coming and never shows one', () => {
    const calculator = calculators.find(({ id }) => id === CURVED)
    const { early } = bothStages(calculator ?? ({} as Calculator))
    const pending = quantities(early).filter(([, output]) => output.uncertaintyPending !== undefined)
    expect(pending.length).toBeGreaterThan(0)
    for (const [, output] of pending) expect(valueText(output, 'ratio', '1')).toMatch(/^[\d.]+ ± …$/)
  })
})
