import { isQuantityResult } from '../../calculators/calculator/run.ts'
import type { Calculator } from '../../calculators/calculator/types.ts'
import { sentenceOf } from './evaluate.ts'
import type { Evaluation } from './evaluate.ts'
import { outputUnit, valueText } from './outputs.ts'
import type { FormState } from './state.ts'

/** The result in one breath, for a screen reader. */
export function spokenResult(calculator: Calculator, state: FormState, evaluation: Evaluation): string {
  const { result } = evaluation
  if (result === undefined) {
    const [first] = Object.values(evaluation.problems)
    return first === undefined ? '' : `No result: ${sentenceOf(first)}`
  }
  const parts = Object.entries(calculator.outputs).flatMap(([id, output]) => {
    const value = result.outputs[id]
    if (value === undefined) return []
    if (isQuantityResult(value)) {
      if (output.type !== 'quantity') return []
      return [`${output.label}: ${valueText(value, output.kind, outputUnit(id, output, state))}`]
    }
    return output.type === 'verdict' ? [`${output.label}: ${output.options[value.value]?.label}`] : []
  })
  return `${parts.join('; ')}.`
}
