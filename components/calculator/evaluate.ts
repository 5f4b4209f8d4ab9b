import type { Calculator, InputValue } from '../../calculators/calculator/types.ts'
import { relevantInputs } from '../../calculators/calculator/relevant-inputs.ts'
import { run } from '../../calculators/calculator/run.ts'
import type { RunResult } from '../../calculators/calculator/run.ts'
import { accuracyField } from './fields.ts'
import type { FieldSpecs } from './fields.ts'
import { shownQuantity } from './state.ts'
import type { FormState } from './state.ts'

/** Why a field, or the inputs together (key ''), give no result. */
export interface Problem {
  readonly label: string
  /** What was typed; left out when several inputs are at fault together. */
  readonly read?: string
  readonly reason: string
  readonly accepted: string
}

export type Result = Exclude<RunResult, { refusal: unknown }>

export interface Evaluation {
  /** Ids of the inputs that play a part with these choices. */
  readonly relevant: readonly string[]
  readonly problems: Readonly<Record<string, Problem>>
  /** An expression is still being read. */
  readonly waiting: boolean
  /** SI values of the inputs that play a part, as far as they could be read. */
  readonly values: Readonly<Record<string, InputValue>>
  /** Half-widths, SI. */
  readonly accuracies: Readonly<Record<string, number>>
  /** Only when nothing stands in its way. */
  readonly result?: Result
}

const negative = { reason: 'an accuracy below zero has no meaning', accepted: 'zero or more' }

/** The message of a problem in one sentence: field, what was read, what is accepted. */
export function sentenceOf(problem: Problem): string {
  const end = `${problem.reason}. Accepted: ${problem.accepted}.`
  if (problem.reason.startsWith(problem.label)) return end
  const typed = problem.read?.trim() ?? ''
  // Most reasons quote what was read themselves.
  const read = typed === '' || problem.reason.includes('«') ? '' : `read «${typed}»; `
  return `${problem.label}: ${read}${end}`
}

/** Everything the page shows that follows from the state. */
export function evaluate(calculator: Calculator, specs: FieldSpecs, state: FormState): Evaluation {
  const values: Record<string, InputValue> = { ...state.choices }
  const accuracies: Record<string, number> = {}
  const problems: Record<string, Problem> = {}
  const relevant = relevantInputs(calculator, values)
  let waiting = false

  const readField = (id: string, keep: (si: number) => void): void => {
    const spec = specs[id]
    const field = state.fields[id]
    if (spec === undefined || field === undefined) return
    if (field.reading === 'waiting') waiting = true
    else if (field.reading.ok) keep(field.reading.si)
    else
      problems[id] = {
        label: spec.label,
        read: field.text,
        reason: field.reading.reason,
        accepted: field.reading.accepted,
      }
  }
  const readAccuracy = (id: string): void => {
    const field = accuracyField(id)
    readField(field, (si) => {
      const value = values[id]
      if (si >= 0)
        accuracies[id] = specs[field]?.share && typeof value === 'number' ? si * Math.abs(value) : si
      else
        problems[field] = {
          label: specs[field]?.label ?? id,
          read: state.fields[field]?.text ?? '',
          ...negative,
        }
    })
  }
  for (const id of relevant) {
    readField(id, (si) => (values[id] = si))
    readAccuracy(id)
  }
  const soFar = { relevant, problems, waiting, values, accuracies }
  if (waiting || Object.keys(problems).length > 0) return soFar

  const shownUnits = Object.fromEntries(
    relevant.flatMap((id) => (specs[id] ? [[id, state.fields[id]?.unit ?? specs[id].usualUnit]] : [])),
  )
  const outcome = run(calculator, values, accuracies, shownUnits)
  if (!('refusal' in outcome)) return { ...soFar, result: outcome }
  const { field, reason, accepted } = outcome.refusal
  const spec = specs[field]
  const typed = state.fields[field]
  const problem =
    spec === undefined || typed === undefined
      ? { label: 'These inputs together', reason, accepted }
      : { label: spec.label, read: shownQuantity(typed, spec), reason, accepted }
  return { ...soFar, problems: { [field]: problem } }
}
