import { refuseOutside } from '../../calculators/calculator/refusal.ts'
import type { Calculator, InputValue, Range, TableRow } from '../../calculators/calculator/types.ts'
import { relevantInputs } from '../../calculators/calculator/relevant-inputs.ts'
import { isPending, run } from '../../calculators/calculator/run.ts'
import type { RunResult } from '../../calculators/calculator/run.ts'
import type { Draws } from '../../calculators/calculator/uncertainty.ts'
import { formatIn } from '../../calculators/quantity/format.ts'
import { accuracyField } from './fields.ts'
import type { FieldSpec, FieldSpecs } from './fields.ts'
import { isShare, meaningOf, shownQuantity } from './state.ts'
import { rowsThatCount } from './table-state.ts'
import type { TableState } from './table-state.ts'
import { cellInWords, cellKey, columnKey } from './tables.ts'
import type { FormState, QuantityField } from './state.ts'

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
  /** The ± of some outputs is still to come. */
  readonly pending: boolean
  /** SI values of the inputs that play a part, as far as they could be read. */
  readonly values: Readonly<Record<string, InputValue>>
  /** Half-widths, SI. */
  readonly accuracies: Readonly<Record<string, number>>
  /** Only when nothing stands in its way. */
  readonly result?: Result
}

/** Why a half-width cannot be one: below zero, more than the whole value, or wider than all that is possible. */
function accuracyProblem(
  spec: FieldSpec,
  typed: QuantityField,
  si: number,
  halfWidth: number,
  physical: Range,
): Pick<Problem, 'reason' | 'accepted'> | undefined {
  const share = isShare(spec, typed.text)
  const span = physical.maximum - physical.minimum
  const { kind, unit } = meaningOf(spec, typed.text, typed.unit)
  const accepted = share ? '0 % to 100 %' : `0 to ${formatIn(span, kind, unit)}`
  if (si < 0) return { reason: 'an accuracy below zero has no meaning', accepted }
  if (share && si > 1) return { reason: 'this is more than the whole value', accepted }
  if (halfWidth > span) return { reason: 'this is wider than the whole range of possible values', accepted }
  return undefined
}

/** The message of a problem in one sentence: field, what was read, what is accepted. */
export function sentenceOf(problem: Problem): string {
  const named = `${problem.label} `
  // The sentence has named the field already.
  const accepted = problem.accepted.startsWith(named)
    ? problem.accepted.slice(named.length)
    : problem.accepted
  const end = `${problem.reason}. Accepted: ${accepted}.`
  if (problem.reason.startsWith(problem.label)) return end
  const typed = problem.read?.trim() ?? ''
  // Most reasons quote what was read themselves.
  const read = typed === '' || problem.reason.includes('«') ? '' : `read «${typed}»; `
  return `${problem.label}: ${read}${end}`
}

interface CellsRead {
  readonly rows: readonly TableRow[]
  readonly problems: Readonly<Record<string, Problem>>
  readonly waiting: boolean
}

/** The cells of a table in SI, and for each that holds nothing possible why, by the key of the cell. */
function readCells(calculator: Calculator, table: TableState): CellsRead {
  const { spec } = table
  const input = calculator.inputs[spec.id]
  const problems: Record<string, Problem> = {}
  let waiting = false
  const rows = rowsThatCount(table).map((row, at): TableRow => {
    const cells = Object.entries(spec.columns).flatMap(([column, { id: key }]): [string, number][] => {
      const field = row[column]
      if (field === undefined || field.reading === 'waiting') {
        waiting = true
        return []
      }
      const label = cellInWords(spec, at, column)
      const complain = (reason: string, accepted: string) => {
        problems[cellKey(spec.id, at, column)] = { label, read: field.text, reason, accepted }
        return []
      }
      if (!field.reading.ok) return complain(field.reading.reason, field.reading.accepted)
      const declared = input?.type === 'table' ? input.columns[column] : undefined
      const outside =
        declared &&
        refuseOutside(key, { ...declared, label }, field.reading.si, declared.physical, field.unit)
      if (outside) return complain(outside.refusal.reason, outside.refusal.accepted)
      return [[column, field.reading.si]]
    })
    return Object.fromEntries(cells)
  })
  return { rows, problems, waiting }
}

/**
 * Everything the page shows that follows from the state.
 * @param draws 'later' gives the result at once and leaves a ± that takes many draws pending
 */
export function evaluate(
  calculator: Calculator,
  specs: FieldSpecs,
  state: FormState,
  draws: Draws = 'now',
): Evaluation {
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
    const spec = specs[field]
    const typed = state.fields[field]
    const input = calculator.inputs[id]
    if (spec === undefined || typed === undefined || input?.type !== 'quantity') return
    readField(field, (si) => {
      const value = values[id]
      const share = isShare(spec, typed.text)
      const halfWidth = share && typeof value === 'number' ? si * Math.abs(value) : si
      // A value that is impossible itself is refused under its own name.
      const outside =
        typeof value === 'number' && !(value >= input.physical.minimum && value <= input.physical.maximum)
      const wrong = share && outside ? undefined : accuracyProblem(spec, typed, si, halfWidth, input.physical)
      if (wrong === undefined) accuracies[id] = halfWidth
      else problems[field] = { label: spec.label, read: shownQuantity(typed, spec), ...wrong }
    })
  }
  const readTable = (id: string, table: TableState): void => {
    const read = readCells(calculator, table)
    Object.assign(problems, read.problems)
    if (read.waiting) waiting = true
    values[id] = read.rows
  }
  for (const id of relevant) {
    const table = state.tables[id]
    if (table !== undefined) readTable(id, table)
    readField(id, (si) => (values[id] = si))
    readAccuracy(id)
  }
  const soFar = { relevant, problems, waiting, pending: false, values, accuracies }
  if (waiting || Object.keys(problems).length > 0) return soFar

  const shownUnits: Record<string, string> = Object.fromEntries(
    relevant.flatMap((id) => (specs[id] ? [[id, state.fields[id]?.unit ?? specs[id].usualUnit]] : [])),
  )
  for (const id of relevant)
    for (const [column, { unit }] of Object.entries(state.tables[id]?.units ?? {}))
      shownUnits[columnKey(id, column)] = unit
  const outcome = run(calculator, values, accuracies, shownUnits, draws)
  if (!('refusal' in outcome)) return { ...soFar, pending: isPending(outcome.outputs), result: outcome }
  const { field, reason, accepted } = outcome.refusal
  const table = state.tables[field]
  if (table !== undefined)
    return { ...soFar, problems: { [field]: { label: table.spec.label, reason, accepted } } }
  const spec = specs[field]
  const typed = state.fields[field]
  const problem =
    spec === undefined || typed === undefined
      ? { label: 'These inputs together', reason, accepted }
      : { label: spec.label, read: shownQuantity(typed, spec), reason, accepted }
  return { ...soFar, problems: { [field]: problem } }
}
