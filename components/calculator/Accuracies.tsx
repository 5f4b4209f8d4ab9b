import { useEffect, useRef } from 'preact/hooks'
import { UNCERTAINTY_IN_WORDS } from '../../calculators/calculator/uncertainty.ts'
import type { Evaluation } from './evaluate.ts'
import { accuracyField } from './fields.ts'
import type { FieldSpecs } from './fields.ts'
import { Field } from './Field.tsx'
import type { Action, FormState } from './state.ts'

interface Props {
  htmlId: string
  specs: FieldSpecs
  state: FormState
  evaluation: Evaluation
  send: (action: Action) => void
}

/** How well each input is known: what the ± of the result is worked out from. */
export function Accuracies({ htmlId, specs, state, evaluation, send }: Props) {
  const details = useRef<HTMLDetailsElement>(null)
  const ids = evaluation.relevant.map(accuracyField).filter((id) => specs[id] !== undefined)
  const refused = ids.some((id) => evaluation.problems[id] !== undefined)
  useEffect(() => {
    if (refused) details.current?.setAttribute('open', '')
  }, [refused])
  if (ids.length === 0) return null
  return (
    <details class="accuracies" ref={details}>
      <summary>Accuracy of the inputs</summary>
      <p>{UNCERTAINTY_IN_WORDS}</p>
      <div class="calculator-inputs">
        {ids.map((id) => {
          const spec = specs[id]
          const field = state.fields[id]
          if (spec === undefined || field === undefined) return null
          return (
            <Field
              key={id}
              htmlId={`${htmlId}-${id.replace('.', '-')}`}
              spec={spec}
              field={field}
              problem={evaluation.problems[id]}
              send={send}
            />
          )
        })}
      </div>
    </details>
  )
}
