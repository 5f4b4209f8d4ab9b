import { isQuantityResult } from '../../calculators/calculator/run.ts'
import type { Calculator, Notice, Step } from '../../calculators/calculator/types.ts'
import { formatIn } from '../../calculators/quantity/format.ts'
import type { KindId } from '../../calculators/quantity/types.ts'
import { fromSI, unitOf } from '../../calculators/quantity/units.ts'
import { sentenceOf } from './evaluate.ts'
import type { Evaluation } from './evaluate.ts'
import { accuracyField } from './fields.ts'
import type { FieldSpec, FieldSpecs } from './fields.ts'
import { outputUnit, stepText, stepUnit, valueText } from './outputs.ts'
import {
  isBare,
  isShare,
  meaningOf,
  portableText,
  shownQuantity,
  statedOtherwise,
  understoodText,
} from './state.ts'
import type { FormState, QuantityField } from './state.ts'
import { rowsThatCount } from './table-state.ts'
import type { TableState } from './table-state.ts'
import { cellInWords, cellKey } from './tables.ts'

/** A source as the page lists it. */
export interface SourceLine {
  readonly id: string
  readonly text: string
}

/** One quantity or choice in words and, where it is a quantity, in numbers. */
export interface SummaryLine {
  readonly id: string
  readonly name: string
  readonly symbol: string
  /** As a person reads it: '40 °C', '4.41 ± 0.12 mm²/s', 'two measured points'. */
  readonly text: string
  /** In `unit`, unrounded but for the noise of the conversion. */
  readonly value?: number
  readonly unit?: string
  readonly plusMinus?: number
  readonly plusMinusUnit?: string
  /** Set on the cells of a table. */
  readonly table?: string
}

export interface WorkingLine extends SummaryLine {
  readonly rule: string
}

/** Everything that leaves the page: by copying, downloading or printing. */
export interface Summary {
  readonly calculator: string
  readonly title: string
  readonly address: string
  readonly inputs: readonly SummaryLine[]
  /** By field, texts that the form and the terminal both read. */
  readonly typed: Readonly<Record<string, string | readonly Readonly<Record<string, string>>[]>>
  readonly outputs: readonly SummaryLine[]
  readonly refusals: readonly string[]
  readonly notices: readonly Notice[]
  readonly working: readonly WorkingLine[]
  readonly validity: string
  readonly sources: readonly SourceLine[]
}

/** Past these, digits are rounding errors of the unit conversion. */
const EXPORT_DIGITS = 12

const rounded = (value: number): number => Number(value.toPrecision(EXPORT_DIGITS))

/** A spread is scaled and not shifted: ± 1.8 °F is ± 1 K. */
const spreadIn = (si: number, unit: string): number => rounded(si / unitOf(unit).factor)

function quantityLine(
  head: Pick<SummaryLine, 'id' | 'name' | 'symbol'>,
  si: number,
  kind: KindId,
  unit: string,
  text: string,
): SummaryLine {
  return { ...head, text, value: rounded(fromSI(si, unit, kind)), unit }
}

/** A line for each cell of a table, row by row. */
function cellLines(table: TableState): SummaryLine[] {
  const { spec } = table
  return rowsThatCount(table).flatMap((row, at) =>
    Object.entries(spec.columns).flatMap(([column, columnSpec]): SummaryLine[] => {
      const field = row[column]
      if (field === undefined) return []
      const head = {
        id: cellKey(spec.id, at, column),
        name: cellInWords(spec, at, column),
        symbol: columnSpec.symbol,
        table: spec.id,
      }
      if (field.reading === 'waiting' || !field.reading.ok) return [{ ...head, text: field.text }]
      const text = understoodText(field, columnSpec) || shownQuantity(field, columnSpec)
      const { si } = field.reading
      return [{ ...head, ...quantityLine(head, si, columnSpec.kind, field.unit, text) }]
    }),
  )
}

/** The rows of a table as the terminal takes them. */
function typedRows(table: TableState): Record<string, string>[] {
  return rowsThatCount(table).map((row) =>
    Object.fromEntries(
      Object.entries(table.spec.columns).flatMap(([column, spec]) => {
        const field = row[column]
        return field === undefined ? [] : [[column, machineText(field, spec)]]
      }),
    ),
  )
}

function inputLine(
  id: string,
  calculator: Calculator,
  specs: FieldSpecs,
  state: FormState,
  evaluation: Evaluation,
): SummaryLine[] {
  const input = calculator.inputs[id]
  if (input?.type === 'choice') {
    const chosen = input.options.find((option) => option.value === state.choices[id])
    return [{ id, name: input.label, symbol: '', text: chosen?.label ?? '' }]
  }
  const table = state.tables[id]
  if (table !== undefined) return cellLines(table)
  const spec = specs[id]
  const field = state.fields[id]
  if (spec === undefined || field === undefined) return []
  const head = { id, name: spec.label, symbol: spec.symbol }
  const si = evaluation.values[id]
  if (typeof si !== 'number') return [{ ...head, text: field.text }]
  const text = understoodText(field, spec) || shownQuantity(field, spec)
  const line = quantityLine(head, si, spec.kind, field.unit, text)
  const accuracySpec = specs[accuracyField(id)]
  const accuracy = evaluation.accuracies[id]
  const typed = state.fields[accuracyField(id)]
  if (accuracySpec === undefined || accuracy === undefined || typed === undefined) return [line]
  if (typed.reading === 'waiting' || !typed.reading.ok) return [line]
  const { kind, unit } = meaningOf(accuracySpec, typed.text, typed.unit)
  const shown = formatIn(typed.reading.si, kind, unit)
  const plusMinusUnit = isShare(accuracySpec, typed.text) ? field.unit : unit
  return [
    { ...line, text: `${text} ± ${shown}`, plusMinus: spreadIn(accuracy, plusMinusUnit), plusMinusUnit },
  ]
}

/** The quantity as a text that means the same without this form: '40 degC'. */
function machineText(field: QuantityField, spec: FieldSpec): string {
  if (isBare(field) || field.reading === 'waiting' || !field.reading.ok) return portableText(field)
  if (statedOtherwise(spec, field.text)) return field.text.trim()
  return `${rounded(fromSI(field.reading.si, field.textUnit, spec.kind))} ${field.textUnit}`
}

function outputLines(calculator: Calculator, state: FormState, evaluation: Evaluation): SummaryLine[] {
  return Object.entries(calculator.outputs).flatMap(([id, output]): SummaryLine[] => {
    const value = evaluation.result?.outputs[id]
    if (value === undefined) return []
    if (output.type === 'verdict' || !isQuantityResult(value)) {
      const label = output.type === 'verdict' ? output.options[value.value]?.label : undefined
      return label === undefined ? [] : [{ id, name: output.label, symbol: '', text: label }]
    }
    const unit = outputUnit(id, output, state)
    const head = { id, name: output.label, symbol: output.symbol }
    const line = quantityLine(head, value.value, output.kind, unit, valueText(value, output.kind, unit))
    if (value.uncertainty === undefined) return [line]
    return [{ ...line, plusMinus: spreadIn(value.uncertainty, unit), plusMinusUnit: unit }]
  })
}

function workingLine(step: Step, state: FormState): WorkingLine {
  const unit = stepUnit(step, state.system)
  const text = stepText(step, state.system)
  const head = { id: '', name: step.label, symbol: step.symbol }
  return { ...quantityLine(head, step.value, step.kind, unit, text), rule: step.rule }
}

export function summaryOf(
  calculator: Calculator,
  specs: FieldSpecs,
  state: FormState,
  evaluation: Evaluation,
  sources: readonly SourceLine[],
  address: string,
): Summary {
  const typedFields = evaluation.relevant
    .flatMap((id) => [id, accuracyField(id)])
    .flatMap((id): [string, Summary['typed'][string]][] => {
      const table = state.tables[id]
      if (table !== undefined) return [[id, typedRows(table)]]
      const field = state.fields[id]
      const spec = specs[id]
      const text = field === undefined || spec === undefined ? state.choices[id] : machineText(field, spec)
      return text === undefined ? [] : [[id, text]]
    })
  return {
    calculator: calculator.id,
    title: calculator.title,
    address,
    inputs: evaluation.relevant.flatMap((id) => inputLine(id, calculator, specs, state, evaluation)),
    typed: Object.fromEntries(typedFields),
    outputs: outputLines(calculator, state, evaluation),
    refusals: Object.values(evaluation.problems).map(sentenceOf),
    notices: evaluation.result?.notices ?? [],
    working: (evaluation.result?.steps ?? []).map((step) => workingLine(step, state)),
    validity: calculator.validity,
    sources,
  }
}
