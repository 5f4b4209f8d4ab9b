import type { Evaluation } from './evaluate.ts'
import type { FieldSpec, FieldSpecs } from './fields.ts'

/** The quantities among the inputs that count: each could be given as a column. */
export function columnInputs(evaluation: Evaluation, specs: FieldSpecs): FieldSpec[] {
  return evaluation.relevant.flatMap((id) => specs[id] ?? [])
}
