import { isQuantityResult } from '../../calculators/calculator/run.ts'
import type { Calculator } from '../../calculators/calculator/types.ts'
import { sentenceOf } from './evaluate.ts'
import type { Evaluation, Result } from './evaluate.ts'
import { outputUnit, valueText } from './outputs.ts'
import type { FormState } from './state.ts'

function outputTexts(calculator: Calculator, state: FormState, result: Result): string[] {
  return Object.entries(calculator.outputs).flatMap(([id, output]) => {
    const value = result.outputs[id]
    if (value === undefined) return []
    if (isQuantityResult(value)) {
      if (output.type !== 'quantity') return []
      return [`${output.label}: ${valueText(value, output.kind, outputUnit(id, output, state))}`]
    }
    return output.type === 'verdict' ? [`${output.label}: ${output.options[value.value]?.label}`] : []
  })
}

/** The result in one breath, for a screen reader. */
export function spokenResult(calculator: Calculator, state: FormState, evaluation: Evaluation): string {
  if (evaluation.result !== undefined)
    return `${outputTexts(calculator, state, evaluation.result).join('; ')}.`
  const [first] = Object.values(evaluation.problems)
  return first === undefined ? '' : `No result: ${sentenceOf(first)}`
}

/** The first output alone, or the field at fault: one line that fits a phone. */
export function briefResult(calculator: Calculator, state: FormState, evaluation: Evaluation): string {
  if (evaluation.result !== undefined) return outputTexts(calculator, state, evaluation.result)[0] ?? ''
  const [first] = Object.values(evaluation.problems)
  return first === undefined ? '' : `No result: ${first.label}`
}
