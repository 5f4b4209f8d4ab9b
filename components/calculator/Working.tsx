import type { Step } from '../../calculators/calculator/types.ts'
import { MathText } from './MathText.tsx'
import { stepText } from './outputs.ts'
import type { FormState } from './state.ts'

interface Props {
  steps: readonly Step[]
  state: FormState
}

/** The way to the result with the person's own numbers. */
export function Working({ steps, state }: Props) {
  if (steps.length === 0) return null
  return (
    <details class="working" open>
      <summary>Working</summary>
      <ol>
        {steps.map((step) => (
          <li key={`${step.label} ${step.symbol}`}>
            <span class="step-label">{step.label}</span>
            <span class="step-sum">
              <span class="step-symbol">
                <MathText text={step.symbol} />
              </span>
              {step.rule !== '' && (
                <span class="step-rule">
                  {' = '}
                  <MathText text={step.rule} />
                </span>
              )}
              <span class="step-value"> = {stepText(step, state.system)}</span>
            </span>
          </li>
        ))}
      </ol>
    </details>
  )
}
