import { kindOf, understoodUnits } from '../quantity/kinds.ts'
import type {
  Calculator,
  Input,
  Inputs,
  Output,
  Outputs,
  PointsAxis,
  QuantityInput,
  Range,
  TableInput,
} from './types.ts'

type Complain = (what: string) => never

const within = (value: number, range: Range) => value >= range.minimum && value <= range.maximum

function checkUnits(
  kind: QuantityInput['kind'],
  units: readonly string[] | undefined,
  complain: Complain,
): void {
  for (const unit of units ?? [])
    if (!understoodUnits(kind).includes(unit)) complain(`${unit} is not a unit of ${kindOf(kind).label}`)
}

function checkQuantity(input: Omit<QuantityInput, 'default' | 'when'>, complain: Complain): void {
  const { physical, valid, accuracy } = input
  if (!(Number.isFinite(physical.minimum) && Number.isFinite(physical.maximum)))
    complain('both ends of `physical` must be finite')
  if (!(physical.minimum < physical.maximum)) complain('`physical` is empty')
  if (
    valid &&
    !(valid.minimum < valid.maximum && within(valid.minimum, physical) && within(valid.maximum, physical))
  )
    complain('`valid` must lie within `physical`')
  const size = accuracy && ('absolute' in accuracy ? accuracy.absolute : accuracy.relative)
  if (size !== undefined && !(size > 0 && Number.isFinite(size))) complain('`accuracy` must be above zero')
  checkUnits(input.kind, input.units, complain)
}

function checkTable(input: TableInput, complain: Complain): void {
  const columns = Object.entries(input.columns)
  if (columns.length === 0) complain('a table needs a column')
  for (const [id, column] of columns) checkQuantity(column, (what) => complain(`column ${id}: ${what}`))
  if (!within(input.default.length, input.rows)) complain('`default` has too few or too many rows')
  for (const row of input.default)
    for (const [id, column] of columns)
      if (!within(row[id] ?? Number.NaN, column.physical))
        complain(`\`default\` of column ${id} is outside \`physical\``)
}

function checkInput(input: Input, inputs: Inputs, complain: Complain): void {
  if (input.type === 'quantity') {
    checkQuantity(input, complain)
    if (!within(input.default, input.physical)) complain('`default` is outside `physical`')
  } else if (input.type === 'choice') {
    const values = input.options.map((option) => option.value)
    if (new Set(values).size !== values.length) complain('two options have the same value')
    if (!values.includes(input.default)) complain('`default` is not one of the options')
  } else checkTable(input, complain)
  if (!input.when) return
  const governing = inputs[input.when.input]
  if (governing?.type !== 'choice')
    return complain(`\`when\` names ${input.when.input}, which is not a choice`)
  const options = new Set(governing.options.map((option) => option.value))
  for (const value of input.when.oneOf)
    if (!options.has(value))
      complain(`\`when\` names ${value}, which is not an option of ${input.when.input}`)
}

function checkOutput(output: Output, complain: Complain): void {
  if (output.type === 'quantity') checkUnits(output.kind, output.units, complain)
  else if (Object.keys(output.options).length < 2) complain('a verdict needs at least two outcomes')
}

function checkCases(calculator: Calculator, complain: Complain): void {
  if (calculator.cases.length === 0) complain('at least one case, from a source or marked common-practice')
  for (const published of calculator.cases) {
    for (const id of Object.keys(published.input))
      if (!Object.hasOwn(calculator.inputs, id))
        complain(`case «${published.description}»: ${id} is not an input`)
    for (const id of Object.keys(published.expected))
      if (!Object.hasOwn(calculator.outputs, id))
        complain(`case «${published.description}»: ${id} is not an output`)
  }
}

function checkAxis(axis: PointsAxis | undefined, { inputs }: Calculator, complain: Complain): void {
  if (axis?.follows === undefined) return
  const [id = '', columnId = ''] = axis.follows.split('.')
  const input = inputs[id]
  const followed = input?.type === 'table' ? input.columns[columnId] : input
  if (followed?.type !== 'quantity' || followed.kind !== axis.kind)
    complain(`points: ${axis.follows} is not a quantity of this kind among the inputs`)
}

/** Throws an error that names the calculator, the input and what is wrong with the declaration. */
export function checkDeclaration(calculator: Calculator): void {
  const complain: Complain = (what) => {
    throw new Error(`Calculator ${calculator.id}: ${what}`)
  }
  if (!/^[a-z][a-z0-9-]*$/.test(calculator.id))
    complain('its id must be of small letters, digits and hyphens')
  if (calculator.sources.length === 0) complain('it names no source')
  if (Object.keys(calculator.outputs).length === 0) complain('it has no output')
  for (const [id, input] of Object.entries(calculator.inputs))
    checkInput(input, calculator.inputs, (what) => complain(`input ${id}: ${what}`))
  for (const [id, output] of Object.entries(calculator.outputs))
    checkOutput(output, (what) => complain(`output ${id}: ${what}`))
  checkCases(calculator, complain)
  for (const axis of [calculator.points?.x, calculator.points?.y]) checkAxis(axis, calculator, complain)
  const { chart } = calculator
  if (!chart) return
  if (calculator.inputs[chart.x]?.type !== 'quantity')
    complain(`chart: ${chart.x} is not a quantity among the inputs`)
  for (const y of [chart.y, ...(chart.instead ? [chart.instead.y] : [])])
    if (calculator.outputs[y]?.type !== 'quantity')
      complain(`chart: ${y} is not a quantity among the outputs`)
}

/**
 * Declares a calculator: `compute` and `chart` get the types that the inputs and outputs ask for, and a mistake in
 * the declaration is thrown as soon as the file is loaded. What comes back has lost these types, so that a
 * catalogue can hold all calculators alike; `run` checks values before they reach `compute`.
 */
export function defineCalculator<const I extends Inputs, const O extends Outputs>(
  declaration: Calculator<I, O>,
): Calculator {
  const calculator = declaration as unknown as Calculator
  checkDeclaration(calculator)
  return calculator
}
