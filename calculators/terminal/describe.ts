import { kindOf } from '../quantity/kinds.ts'
import type { Calculator, Input, Output, QuantityInput } from '../calculator/types.ts'

function quantity(id: string, input: Omit<QuantityInput, 'default' | 'when'>) {
  const kind = kindOf(input.kind)
  return {
    id,
    label: input.label,
    kind: input.kind,
    unit: kind.siUnit,
    units: input.units ?? kind.units,
    physical: input.physical,
    ...(input.valid ? { valid: input.valid } : {}),
    ...(input.accuracy ? { accuracy: input.accuracy } : {}),
  }
}

function describeInput(id: string, input: Input) {
  const when = input.when ? { when: input.when } : {}
  if (input.type === 'quantity')
    return { ...quantity(id, input), type: input.type, default: input.default, help: input.help, ...when }
  const common = {
    id,
    type: input.type,
    label: input.label,
    default: input.default,
    help: input.help,
    ...when,
  }
  if (input.type === 'choice') return { ...common, options: input.options }
  const columns = Object.entries(input.columns).map(([columnId, column]) => quantity(columnId, column))
  return { ...common, rows: input.rows, columns }
}

function describeOutput(id: string, output: Output) {
  if (output.type === 'verdict')
    return { id, type: output.type, label: output.label, options: output.options }
  const { siUnit } = kindOf(output.kind)
  return { id, type: output.type, label: output.label, kind: output.kind, unit: siUnit }
}

/** What a script needs to know of a calculator; values and ranges in SI. */
export function describeCalculator(calculator: Calculator) {
  const { id, title, purpose, validity, sources } = calculator
  return {
    id,
    title,
    purpose,
    validity,
    sources,
    inputs: Object.entries(calculator.inputs).map(([inputId, input]) => describeInput(inputId, input)),
    /** What `compute` takes for an input that is left out. */
    defaults: Object.fromEntries(
      Object.entries(calculator.inputs).map(([inputId, input]) => [inputId, input.default]),
    ),
    outputs: Object.entries(calculator.outputs).map(([outputId, output]) => describeOutput(outputId, output)),
  }
}
