import { unitOf } from '../../calculators/quantity/units.ts'
import { gradeWords } from './grades.ts'
import type { Summary, SummaryLine } from './summary.ts'

const named = (line: SummaryLine): string => (line.symbol === '' ? line.name : `${line.name} ${line.symbol}`)

function block(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : `\n${title}\n${lines.map((line) => `  ${line}`).join('\n')}\n`
}

/** The calculation as plain text, fit for a log sheet or a letter. */
export function asText(summary: Summary): string {
  return [
    `${summary.title}\n`,
    block(
      'Inputs',
      summary.inputs.map((line) => `${named(line)}: ${line.text}`),
    ),
    block(
      'Result',
      summary.outputs.map((line) => `${named(line)}: ${line.text}`),
    ),
    block('No result', summary.refusals),
    block(
      'Notices',
      summary.notices.map((notice) => `${gradeWords[notice.grade]}: ${notice.text}`),
    ),
    block(
      'Working',
      summary.working.map((line) =>
        [`${line.name}: ${line.symbol}`, ...(line.rule === '' ? [] : [line.rule]), line.text].join(' = '),
      ),
    ),
    block('Validity', [summary.validity]),
    block(
      'Sources',
      summary.sources.map((source) => source.text),
    ),
    block('Address of this calculation', [summary.address]),
  ].join('')
}

const NUMBER = /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i

/**
 * A cell that a spreadsheet takes as a text. One that begins like a formula and is no number gets an apostrophe,
 * because spreadsheets would run it.
 */
export function csvCell(value: string): string {
  const guarded = /^[\s]*[=+\-@\t\r]/.test(value) && !NUMBER.test(value) ? `'${value}` : value
  return /[",\r\n]/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded
}

const symbolOf = (unit: string | undefined): string => (unit === undefined ? '' : unitOf(unit).symbol)

function csvRow(part: string, line: SummaryLine, rule = ''): string[] {
  const number = (value: number | undefined): string => (value === undefined ? '' : String(value))
  return [
    part,
    line.name,
    line.symbol,
    line.value === undefined ? line.text : number(line.value),
    symbolOf(line.unit),
    number(line.plusMinus),
    symbolOf(line.plusMinusUnit),
    rule,
  ]
}

/** The calculation as one table: a row for each input, result, step and remark. */
export function asCSV(summary: Summary): string {
  const remark = (part: string, text: string): string[] => [part, text, '', '', '', '', '', '']
  const rows = [
    ['part', 'name', 'symbol', 'value', 'unit', 'plus or minus', 'unit of plus or minus', 'rule'],
    remark('calculator', summary.title),
    ...summary.inputs.map((line) => csvRow('input', line)),
    ...summary.outputs.map((line) => csvRow('result', line)),
    ...summary.refusals.map((text) => remark('no result', text)),
    ...summary.notices.map((notice) => remark(gradeWords[notice.grade].toLowerCase(), notice.text)),
    ...summary.working.map((line) => csvRow('working', line, line.rule)),
    remark('validity', summary.validity),
    ...summary.sources.map((source) => remark('source', source.text)),
    remark('address', summary.address),
  ]
  // Spreadsheets take a file with this mark at its start as UTF-8, and so show '°' and 'ν' rightly.
  return `\ufeff${rows.map((row) => row.map(csvCell).join(',')).join('\r\n')}\r\n`
}

function jsonLine({ name, symbol, text, value, unit, plusMinus, plusMinusUnit }: SummaryLine) {
  return { name, symbol, text, value, unit, plusMinus, plusMinusUnit }
}

/** The calculation as JSON. Its `inputs` are texts with units, as the terminal's `compute` takes them. */
export function asJSON(summary: Summary): string {
  const typed = Object.entries(summary.typed)
  const accuracyEnd = '.accuracy'
  const content = {
    calculator: summary.calculator,
    title: summary.title,
    address: summary.address,
    inputs: Object.fromEntries(typed.filter(([id]) => !id.endsWith(accuracyEnd))),
    accuracies: Object.fromEntries(
      typed
        .filter(([id]) => id.endsWith(accuracyEnd))
        .map(([id, text]) => [id.slice(0, -accuracyEnd.length), text]),
    ),
    outputs: Object.fromEntries(summary.outputs.map((line) => [line.id, jsonLine(line)])),
    refusals: summary.refusals,
    notices: summary.notices,
    working: summary.working.map((line) => ({ ...jsonLine(line), rule: line.rule })),
    validity: summary.validity,
    sources: summary.sources,
  }
  return `${JSON.stringify(content, null, 2)}\n`
}
