import type { Calculator } from '../../calculators/calculator/types.ts'
import type { Evaluation } from './evaluate.ts'
import { MathText } from './MathText.tsx'
import type { FieldSpecs } from './fields.ts'
import type { FormState } from './state.ts'
import { summaryOf } from './summary.ts'

interface Props {
  calculator: Calculator
  specs: FieldSpecs
  state: FormState
  evaluation: Evaluation
}

/** On paper the inputs stand as values with their accuracy; on the screen this is hidden. */
export function PrintedInputs({ calculator, specs, state, evaluation }: Props) {
  const { inputs } = summaryOf(calculator, specs, state, evaluation, [], '')
  return (
    <table class="printed-inputs">
      <caption>Inputs</caption>
      <tbody>
        {inputs.map((line) => (
          <tr key={line.id}>
            <th scope="row">
              {line.name} <MathText text={line.symbol} />
            </th>
            <td>{line.text}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
