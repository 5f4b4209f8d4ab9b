import type { Calculator } from '../../calculators/calculator/types.ts'
import { Choice } from './Choice.tsx'
import type { Evaluation } from './evaluate.ts'
import type { FieldSpecs } from './fields.ts'
import { Field } from './Field.tsx'
import { TableField } from './TableField.tsx'
import type { Action, FormState } from './state.ts'

interface Props {
  htmlId: string
  calculator: Calculator
  specs: FieldSpecs
  state: FormState
  evaluation: Evaluation
  send: (action: Action) => void
}

/** The inputs that play a part with the choices made; the others keep their text until they are back. */
export function Inputs({ htmlId, calculator, specs, state, evaluation, send }: Props) {
  return (
    <div class="calculator-inputs">
      {evaluation.relevant.map((id) => {
        const input = calculator.inputs[id]
        if (input?.type === 'choice') {
          const value = state.choices[id] ?? input.default
          return (
            <Choice key={id} htmlId={`${htmlId}-${id}`} id={id} input={input} value={value} send={send} />
          )
        }
        const table = state.tables[id]
        if (input?.type === 'table' && table !== undefined)
          return (
            <TableField
              key={id}
              htmlId={`${htmlId}-${id}`}
              input={input}
              table={table}
              problems={evaluation.problems}
              send={send}
            />
          )
        const spec = specs[id]
        const field = state.fields[id]
        if (input === undefined || spec === undefined || field === undefined) return null
        const problem = evaluation.problems[id]
        return (
          <Field
            key={id}
            htmlId={`${htmlId}-${id}`}
            spec={spec}
            field={field}
            help={input.help}
            problem={problem}
            send={send}
          />
        )
      })}
    </div>
  )
}
