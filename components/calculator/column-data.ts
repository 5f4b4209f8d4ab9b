import { runPlain } from '../../calculators/calculator/run.ts'
import type { Calculator, InputValue } from '../../calculators/calculator/types.ts'
import { readPlain } from '../../calculators/quantity/read.ts'
import type { QuantityReading } from '../../calculators/quantity/types.ts'
import type { FieldSpec } from './fields.ts'

/** Enough for a shift's log read each minute; more belongs into a spreadsheet. */
export const MOST_ROWS = 500
/** Far more than that many readings need, few enough that no paste can hold the page up. */
export const MOST_CHARACTERS = 20_000

/** One line that holds a value. */
export interface ColumnValue {
  /** Its number in the pasted text, from 1. */
  readonly line: number
  readonly text: string
  /** [SI] */
  readonly si: number
}

/** A line that could not be used, and why, in a sentence that names it. */
export interface BadLine {
  readonly line: number
  readonly text: string
  readonly sentence: string
}

export interface ColumnReading {
  readonly values: readonly ColumnValue[]
  readonly bad: readonly BadLine[]
  /** Why lines were left unread, or nothing at all was read; empty otherwise. */
  readonly leftOut: string
}

/** A value with what the calculator makes of it. */
export interface ColumnRow extends ColumnValue {
  /** By output: a number in SI, or the outcome's name. */
  readonly outputs: Readonly<Record<string, number | string>>
}

export interface ColumnResult {
  readonly rows: readonly ColumnRow[]
  readonly bad: readonly BadLine[]
}

const numbered = (line: number, reason: string, accepted: string): string =>
  `Line ${line}: ${reason}. Accepted: ${accepted}.`

/** Signs that part the cells of a row, and two numbers with nothing but space between them. */
const SEVERAL_VALUES = /[\t;|]|\d\s+[-+−]?\d[\d.,]*\b(?!\s*\/)/

const readLine = (content: string, kind: FieldSpec['kind'], unit: string): QuantityReading => {
  // A spreadsheet may put its cells into quotation marks.
  const text = content.replace(/^"(.*)"$/, '$1').trim()
  const reading = readPlain(text, kind, unit)
  if (reading.ok !== 'expression') return reading
  return SEVERAL_VALUES.test(text)
    ? {
        ok: false,
        reason: 'there is more than one value',
        accepted: 'one value on each line: copy one column',
      }
    : {
        ok: false,
        reason: 'arithmetic is not read in a column',
        accepted: 'a number, or a number and its unit',
      }
}

/**
 * Reads one value a line, with or without its unit. Empty lines are passed over, every other one comes back either
 * as a value or as a bad line.
 * @param text what was pasted, with any kind of line end
 * @param spec the input that the column stands for
 * @param unit unit of a number that carries none
 */
export function readColumn(text: string, spec: Pick<FieldSpec, 'kind'>, unit: string): ColumnReading {
  if (text.length > MOST_CHARACTERS) {
    const leftOut = `The column has ${text.length} characters; at most ${MOST_CHARACTERS} are read, so none were.`
    return { values: [], bad: [], leftOut }
  }
  const values: ColumnValue[] = []
  const bad: BadLine[] = []
  const lines = text
    .split(/\r\n|[\r\n\u2028\u2029]/)
    .map((content, index) => ({ line: index + 1, text: content.trim() }))
    .filter((entry) => entry.text !== '')
  for (const { line, text: content } of lines.slice(0, MOST_ROWS)) {
    const reading = readLine(content, spec.kind, unit)
    if (reading.ok) values.push({ line, text: content, si: reading.si })
    else bad.push({ line, text: content, sentence: numbered(line, reading.reason, reading.accepted) })
  }
  const next = lines[MOST_ROWS]
  const leftOut =
    next === undefined
      ? ''
      : `Line ${next.line} and those after it were left out: at most ${MOST_ROWS} values are taken.`
  return { values, bad, leftOut }
}

/**
 * Runs the calculator once for each value, all other inputs as they stand. A value that it refuses becomes a bad
 * line with its reason.
 * @param values the other inputs [SI]
 * @param input id of the input that the column stands for
 */
export function runColumn(
  calculator: Calculator,
  values: Readonly<Record<string, InputValue>>,
  input: string,
  reading: ColumnReading,
): ColumnResult {
  const rows: ColumnRow[] = []
  const bad = [...reading.bad]
  for (const value of reading.values) {
    const computation = runPlain(calculator, { ...values, [input]: value.si })
    if ('outputs' in computation) rows.push({ ...value, outputs: computation.outputs })
    else {
      const { reason, accepted } = computation.refusal
      bad.push({ line: value.line, text: value.text, sentence: numbered(value.line, reason, accepted) })
    }
  }
  return { rows, bad: bad.sort((a, b) => a.line - b.line) }
}
