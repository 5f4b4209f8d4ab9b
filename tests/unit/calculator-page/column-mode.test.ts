import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../calculators/catalogue/index.ts'
import {
  MOST_CHARACTERS,
  MOST_ROWS,
  readColumn,
  runColumn,
} from '../../../components/calculator/column-data.ts'
import { columnChart } from '../../../components/calculator/column-geometry.ts'
import { columnCSV, columnText, tableColumns } from '../../../components/calculator/column-table.ts'
import { plot } from '../../../components/calculator/chart-geometry.ts'
import { evaluate } from '../../../components/calculator/evaluate.ts'
import { fieldsOf } from '../../../components/calculator/fields.ts'
import { startingTexts } from '../../../components/calculator/starting.ts'
import { startState } from '../../../components/calculator/state.ts'
import { column } from './column.ts'

const specs = fieldsOf(column)
const state = startState(column, startingTexts(column, {}), 'si')
const { values } = evaluate(column, specs, state)
const { height } = specs
if (height === undefined) throw new Error('the column has a height')

const run = (text: string, unit = 'm') => runColumn(column, values, 'height', readColumn(text, height, unit))
const csv = (text: string) => columnCSV(tableColumns(column, height, 'm', state), run(text))

describe('reading a column', () => {
  it('takes values with and without a unit, any line end, and passes over empty lines', () => {
    const { values: read } = readColumn('1\r\n\r\n 200 cm \n3,5\n', height, 'm')
    expect(read.map(({ line, si }) => [line, si])).toEqual([
      [1, 1],
      [3, 2],
      [4, 3.5],
    ])
  })

  it('names each bad line by its number, with what was read and what is accepted', () => {
    const { bad } = run('1\nabc\n2 kPa\n1,234\n5000\n2 m + 1 m\n3')
    expect(bad.map(({ line }) => line)).toEqual([2, 3, 4, 5, 6])
    expect(bad[0]?.sentence).toMatch(/^Line 2: «abc» does not begin with a number\. Accepted: /)
    expect(bad[1]?.sentence).toMatch(/^Line 3: «2 kPa» is a pressure\. Accepted: a length in m/)
    expect(bad[2]?.sentence).toContain('can be read two ways')
    expect(bad[3]?.sentence).toMatch(/^Line 5: Height is 5000\sm, above 1000\sm/)
  })

  it('stops at the limit of rows and says from where on', () => {
    const text = Array.from({ length: MOST_ROWS + 3 }, (_, index) => String(index)).join('\n')
    const reading = readColumn(text, height, 'm')
    expect(reading.values).toHaveLength(MOST_ROWS)
    expect(reading.leftOut).toBe(
      `Line ${MOST_ROWS + 1} and those after it were left out: at most ${MOST_ROWS} values are taken.`,
    )
  })

  it('takes a value in quotation marks, as some spreadsheets write it', () => {
    expect(readColumn('"1"\n"3,5"', height, 'm').values.map(({ si }) => si)).toEqual([1, 3.5])
  })

  it.each(['20\t30', '22;5', '20 30 40', '1.5 -2', '3|4'])(
    'says of two columns what is wrong: %j',
    (text) => {
      expect(readColumn(text, height, 'm').bad.map(({ sentence }) => sentence)).toEqual([
        'Line 1: there is more than one value. Accepted: one value on each line: copy one column.',
      ])
    },
  )

  it.each(['2 m + 3 m', '5/8 in', '1 5/8 in'])(
    'says of arithmetic that it is none of a column: %s',
    (text) => {
      expect(readColumn(text, height, 'm').bad[0]?.sentence).toContain('arithmetic is not read in a column')
    },
  )

  it('reads nothing of a text that is far too long, and says so', () => {
    const reading = readColumn('1'.repeat(MOST_CHARACTERS + 1), height, 'm')
    expect(reading).toMatchObject({ values: [], bad: [] })
    expect(reading.leftOut).toContain(`at most ${MOST_CHARACTERS}`)
  })

  it('whatever is pasted, each line that holds something comes back once, as a value or with a reason', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ maxLength: 30 }), { maxLength: 40 }), (lines) => {
        const text = lines.join('\n')
        const reading = readColumn(text, height, 'm')
        const held = text.split(/\r\n|[\r\n\u2028\u2029]/).filter((line) => line.trim() !== '')
        expect(reading.values.length + reading.bad.length).toBe(held.length)
        for (const { si } of reading.values) expect(Number.isFinite(si)).toBe(true)
      }),
      { numRuns: 300 },
    )
  })
})

describe('the table of a column', () => {
  it('computes each value with the other inputs as they stand', () => {
    const { rows } = run('1\n2\n4')
    const pressures = rows.map((row) => Number(row.outputs['pressure']))
    expect(pressures[1]).toBeCloseTo(2 * (pressures[0] ?? 0), 6)
    expect(pressures[2]).toBeCloseTo(4 * (pressures[0] ?? 0), 6)
  })

  it('as CSV: one row a line, bad ones in their place with their reason', () => {
    const lines = csv('1\nabc\n3').split('\r\n')
    expect(lines[0]).toMatch(/^\ufeffline,"Height, m","Pressure at the foot, kPa"/)
    expect(lines[1]).toMatch(/^1,1,9\.80665/)
    expect(lines[2]).toMatch(/^2,abc,.*Line 2: /)
    expect(lines[3]).toMatch(/^3,3,29\.41995/)
    const width = (line: string) => line.replaceAll(/"(?:[^"]|"")*"/g, '').split(',').length
    expect(new Set(lines.slice(0, 4).map(width)).size).toBe(1)
  })

  it.each(['=1+1', '@SUM(A1)', '+cmd|x', '-2+3+cmd', '\t=1', '=HYPERLINK("http://x";"y")'])(
    'never hands a spreadsheet %s as a formula',
    (text) => {
      for (const cells of [csv(text), columnText(tableColumns(column, height, 'm', state), run(text), '\t')])
        expect(cells.replace(/^\ufeff/, '')).not.toMatch(/(^|[,\t\n])"?[=@+]|[,\t\n]"?-[^,\t]*[^\d.,\t]/)
    },
  )
})

describe('the chart of a column', () => {
  const output = column.outputs['pressure']
  if (output?.type !== 'quantity') throw new Error('the column has a pressure')
  const chart = (text: string, log = false) =>
    columnChart({
      rows: run(text).rows,
      input: height,
      inputUnit: 'm',
      outputId: 'pressure',
      output,
      outputUnit: 'kPa',
      log,
    })

  it.each([false, true])('draws all points within the frame, from left to right (log %s)', (log) => {
    const places = chart('5\n1\n100\n3', log)?.points.map(({ at }) => at) ?? []
    expect(places).toHaveLength(4)
    expect([...places].sort((a, b) => a[0] - b[0])).toEqual(places)
    for (const [x, y] of places) {
      expect(x).toBeGreaterThanOrEqual(plot.left)
      expect(x).toBeLessThanOrEqual(plot.right)
      expect(y).toBeGreaterThanOrEqual(plot.top)
      expect(y).toBeLessThanOrEqual(plot.bottom)
    }
  })

  it('draws nothing where all values are the same', () => {
    expect(chart('2\n2\n2')).toBeUndefined()
  })
})

describe('every calculator of the catalogue', () => {
  it.each(Object.keys(catalogue))('%s takes each of its quantities as a column', async (id) => {
    const calculator = await catalogue[id]?.()
    if (calculator === undefined) throw new Error(id)
    const ownSpecs = fieldsOf(calculator)
    const ownState = startState(calculator, startingTexts(calculator, {}), 'si')
    const evaluation = evaluate(calculator, ownSpecs, ownState)
    for (const input of evaluation.relevant) {
      const spec = ownSpecs[input]
      const field = ownState.fields[input]
      if (spec === undefined || field === undefined) continue
      const reading = readColumn(`${field.text}\nnonsense\n${field.text}`, spec, field.textUnit)
      const { rows, bad } = runColumn(calculator, evaluation.values, input, reading)
      expect([input, rows.length, bad.length]).toEqual([input, 2, 1])
      const text = columnText(tableColumns(calculator, spec, field.unit, ownState), { rows, bad }, ',')
      expect(text).not.toMatch(/NaN|Infinity|undefined/)
    }
  })
})
