import { isQuantityResult } from '../../calculators/calculator/run.ts'
import type { QuantityResult } from '../../calculators/calculator/run.ts'
import type { Calculator, Notice, QuantityOutput, VerdictOutput } from '../../calculators/calculator/types.ts'
import { sentenceOf } from './evaluate.ts'
import type { Evaluation } from './evaluate.ts'
import { offeredUnits } from './fields.ts'
import { UnitPicker } from './Field.tsx'
import { MathText } from './MathText.tsx'
import { outputUnit, valueText } from './outputs.ts'
import { gradeWords } from './grades.ts'
import { Sign } from './Sign.tsx'
import type { Action, FormState } from './state.ts'

interface Props {
  calculator: Calculator
  state: FormState
  evaluation: Evaluation
  send: (action: Action) => void
}

export function Result({ calculator, state, evaluation, send }: Props) {
  const { result } = evaluation
  if (result === undefined) return <NoResult evaluation={evaluation} />
  return (
    <>
      <dl class="outputs">
        {Object.entries(calculator.outputs).map(([id, output]) => {
          const value = result.outputs[id]
          if (value === undefined) return null
          return (
            <div class="output" key={id} data-output={id}>
              <dt>
                {output.label}{' '}
                {output.type === 'quantity' && (
                  <span class="symbol">
                    <MathText text={output.symbol} />
                  </span>
                )}
              </dt>
              <dd>
                {isQuantityResult(value) ? (
                  <OutputValue id={id} output={output} value={value} state={state} send={send} />
                ) : (
                  <Verdict output={output} value={value.value} />
                )}
              </dd>
            </div>
          )
        })}
      </dl>
      <Notices notices={result.notices} />
    </>
  )
}

/** Why there is no number: an earlier result is not left standing as if it belonged to what is typed now. */
function NoResult({ evaluation }: { evaluation: Evaluation }) {
  const problems = Object.values(evaluation.problems)
  if (problems.length === 0) return null
  return (
    <div class="no-result">
      <p class="refused">
        <Sign grade="action" />
        <strong>No result:</strong>
      </p>
      <ul>
        {problems.map((problem) => (
          <li key={problem.label}>{sentenceOf(problem)}</li>
        ))}
      </ul>
    </div>
  )
}

interface OutputValueProps {
  id: string
  output: Calculator['outputs'][string]
  value: QuantityResult
  state: FormState
  send: (action: Action) => void
}

function OutputValue({ id, output, value, state, send }: OutputValueProps) {
  if (output.type !== 'quantity') return null
  const quantity: QuantityOutput = output
  const unit = outputUnit(id, quantity, state)
  return (
    <>
      <span class="value">{valueText(value, quantity.kind, unit)}</span>
      <UnitPicker
        label={`Unit of ${quantity.label}`}
        name={`${id}.unit`}
        units={offeredUnits(quantity)}
        unit={unit}
        pick={(picked) => send({ type: 'pickOutputUnit', output: id, unit: picked })}
      />
      {value.uncertaintyNote !== undefined && <span class="value-note">{value.uncertaintyNote}</span>}
    </>
  )
}

function Verdict({ output, value }: { output: Calculator['outputs'][string]; value: string }) {
  const option = (output as VerdictOutput).options[value]
  if (option === undefined) return null
  return (
    <span class={`verdict grade-${option.grade}`}>
      <Sign grade={option.grade} />
      <span>{option.label}</span>
    </span>
  )
}

function Notices({ notices }: { notices: readonly Notice[] }) {
  if (notices.length === 0) return null
  return (
    <ul class="notices">
      {notices.map((notice) => (
        <li key={notice.text} class={`notice grade-${notice.grade}`}>
          <Sign grade={notice.grade} />
          <span>
            <strong>{gradeWords[notice.grade]}:</strong> {notice.text}
          </span>
        </li>
      ))}
    </ul>
  )
}
