import type { Calculator, FuelRecord } from '../../calculators/calculator/types.ts'
import { readFigure } from '../../calculators/quantity/figure.ts'
import type { KindId } from '../../calculators/quantity/types.ts'
import { fromSI } from '../../calculators/quantity/units.ts'
import { fieldsOf } from './fields.ts'
import type { Starting } from './state.ts'
import { cellTexts, columnKey, columnText, tablesOf } from './tables.ts'

/** Past these, digits are rounding errors of the unit conversion. */
const DIGITS = 12

function textOf(si: number, kind: KindId, unit: string): string {
  return `${Number(fromSI(si, unit, kind).toPrecision(DIGITS))} ${unit}`
}

/** Texts of the calculator's own defaults, accuracies included. */
function defaults(calculator: Calculator): Record<string, string> {
  const specs = fieldsOf(calculator)
  const tables = tablesOf(calculator)
  const texts: Record<string, string> = {}
  for (const [id, input] of Object.entries(calculator.inputs)) {
    if (input.type === 'choice') texts[id] = input.default
    if (input.type === 'table')
      for (const [column, spec] of Object.entries(tables[id]?.columns ?? {}))
        texts[spec.id] = columnText(
          input.default.map((row) => textOf(row[column] ?? 0, spec.kind, spec.usualUnit)),
        )
    if (input.type !== 'quantity') continue
    const spec = specs[id]
    if (spec !== undefined) texts[id] = textOf(input.default, spec.kind, spec.usualUnit)
    const accuracy = specs[`${id}.accuracy`]
    if (input.accuracy === undefined || accuracy === undefined) continue
    if ('relative' in input.accuracy) texts[accuracy.id] = textOf(input.accuracy.relative, 'ratio', '%')
    else texts[accuracy.id] = textOf(input.accuracy.absolute, accuracy.kind, accuracy.usualUnit)
  }
  return texts
}

/** Texts of what a fuel of the handbook's data says about the inputs. */
export function textsFromFuel(calculator: Calculator, fuel: FuelRecord): Record<string, string> {
  if (calculator.fromFuel === undefined) {
    throw new Error(`The calculator ${calculator.id} takes nothing from a fuel; leave 'fuel' out`)
  }
  const specs = fieldsOf(calculator)
  return Object.fromEntries(
    Object.entries(calculator.fromFuel(fuel)).flatMap(([id, si]) => {
      const spec = specs[id]
      return spec === undefined || typeof si !== 'number' ? [] : [[id, textOf(si, spec.kind, spec.usualUnit)]]
    }),
  )
}

/** What the calculator's worked example puts into each input, as its source prints it. */
export function textsFromExample(calculator: Calculator): Record<string, string> {
  const [example] = calculator.cases
  return Object.fromEntries(
    Object.entries(example?.input ?? {}).flatMap(([id, given]): [string, string][] => {
      if (typeof given === 'string') return [[id, given]]
      return Object.keys(given[0] ?? {}).map((column) => [
        columnKey(id, column),
        columnText(given.map((row) => row[column] ?? '')),
      ])
    }),
  )
}

/** The cells of a column: 'readings.hours' with '0 h; 250 h; 500 h'. */
function checkColumn(calculator: Calculator, key: string, text: string): boolean {
  const [table = '', column = ''] = key.split('.')
  const spec = tablesOf(calculator)[table]?.columns[column]
  if (spec === undefined) return false
  for (const cell of cellTexts(text)) {
    const reading = readFigure(cell, spec.kind)
    if (!reading.ok)
      throw new Error(
        `Calculator ${calculator.id}, column '${key}': ${reading.reason}; allowed: ${reading.accepted}`,
      )
  }
  return true
}

function checkText(calculator: Calculator, id: string, text: string): void {
  if (checkColumn(calculator, id, text)) return
  const input = calculator.inputs[id.replace(/\.accuracy$/, '')]
  const spec = fieldsOf(calculator)[id]
  const where = `Calculator ${calculator.id}, input '${id}'`
  if (input === undefined) {
    throw new Error(`${where}: there is no such input; allowed: ${Object.keys(calculator.inputs).join(', ')}`)
  }
  if (input.type === 'choice') {
    const allowed = input.options.map((option) => option.value)
    if (!allowed.includes(text)) throw new Error(`${where}: read «${text}»; allowed: ${allowed.join(', ')}`)
    return
  }
  if (spec === undefined) throw new Error(`${where}: this input has no accuracy to set`)
  const reading = readFigure(text, spec.kind)
  if (!reading.ok) throw new Error(`${where}: ${reading.reason}; allowed: ${reading.accepted}`)
}

/**
 * The texts with which the form starts: the defaults, and over them what is given. A wrong input or a text that is
 * no figure fails the build.
 */
export function startingTexts(calculator: Calculator, given: Readonly<Record<string, string>>): Starting {
  for (const [id, text] of Object.entries(given)) checkText(calculator, id, text)
  return { ...defaults(calculator), ...given }
}
