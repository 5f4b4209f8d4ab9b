import { describe, expect, it } from 'vitest'
import { evaluate } from '../../../components/calculator/evaluate.ts'
import { asCSV, asJSON, asText, csvCell } from '../../../components/calculator/export.ts'
import { fieldsOf } from '../../../components/calculator/fields.ts'
import { startingTexts } from '../../../components/calculator/starting.ts'
import { apply, startState } from '../../../components/calculator/state.ts'
import type { Action } from '../../../components/calculator/state.ts'
import { summaryOf } from '../../../components/calculator/summary.ts'
import { column } from './column.ts'

const specs = fieldsOf(column)
const SOURCES = [{ id: 'nist-sp811', text: 'A source, its publisher.' }]
const ADDRESS = 'https://handbook.example/calculators/column/?v=1&height=8+m'

function summary(...actions: Action[]) {
  const start = startState(column, startingTexts(column, {}), 'si')
  const state = actions.reduce((before, action) => apply(specs, before, action), start)
  return summaryOf(column, specs, state, evaluate(column, specs, state), SOURCES, ADDRESS)
}
const tall = summary({ type: 'type', field: 'height', text: '8' })
const refused = summary({ type: 'type', field: 'height', text: '=1+1' })

describe('copy as text', () => {
  it('holds inputs, result, notices, working, validity, sources and address', () => {
    const text = asText(tall).replaceAll('\u00a0', ' ')
    expect(text).toContain('Height h: 8 m ± 0.01 m')
    expect(text).toContain('Pressure at the foot p: 78.5 ± 0.1 kPa')
    expect(text).toContain('Size: Below one bar')
    expect(text).toContain('Caution: =A tall column')
    expect(text).toContain('p = ρ g h = 78.4532 kPa')
    for (const part of ['A liquid at rest.', 'A source, its publisher.', ADDRESS])
      expect(text).toContain(part)
  })
  it('says that there is no result where there is none', () => {
    expect(asText(refused)).toMatch(/No result\n {2}Height: /)
    expect(asText(refused)).not.toContain('Working')
  })
})

describe('download as CSV', () => {
  const rows = asCSV(tall).split('\r\n')
  it('has a row for each input, result, step and remark, all of one width', () => {
    expect(rows).toContain('input,Height,h,8,m,0.01,m,')
    expect(rows.find((row) => row.startsWith('result,Pressure'))).toMatch(
      /^result,Pressure at the foot,p,78.4532,kPa,0.098/,
    )
    expect(rows).toContain(`address,${ADDRESS},,,,,,`)
  })
  it('never hands a spreadsheet a formula', () => {
    expect(rows).toContain("caution,'=A tall column,,,,,,")
    expect(asCSV(refused)).not.toMatch(/(^|,)"?=/m)
  })
  it.each([
    ['=1+1', "'=1+1"],
    ['+cmd', "'+cmd"],
    ['-cmd', "'-cmd"],
    ['@x', "'@x"],
    ['\t=x', "'\t=x"],
    [' =x', "' =x"],
    ['-40', '-40'],
    ['-1.5e-7', '-1.5e-7'],
    ['a,b', '"a,b"'],
    ['a"b', '"a""b"'],
    ['a\nb', '"a\nb"'],
    ['=a,b', `"'=a,b"`],
  ])('cell «%s» becomes «%s»', (value, cell) => expect(csvCell(value)).toBe(cell))
})

describe('download as JSON', () => {
  it('holds inputs as texts with units, and results as numbers with units', () => {
    const content: unknown = JSON.parse(asJSON(tall))
    expect(content).toMatchObject({
      calculator: 'column',
      inputs: { liquid: 'water', height: '8 m', temperature: '15 degC' },
      accuracies: { height: '0.01 m' },
      outputs: { pressure: { value: 78.4532, unit: 'kPa' }, size: { text: 'Below one bar' } },
      address: ADDRESS,
    })
  })
  it('keeps a shown unit that was picked later', () => {
    const inFeet = summary(
      { type: 'type', field: 'height', text: '8' },
      { type: 'pickUnit', field: 'height', unit: 'ft' },
    )
    expect(inFeet.inputs.find((line) => line.id === 'height')?.text.replaceAll('\u00a0', ' ')).toMatch(
      /^26\.247 ft ± /,
    )
  })
})
