import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../calculators/catalogue/index.ts'
import { readAddress, writeAddress } from '../../../components/calculator/address.ts'
import { evaluate } from '../../../components/calculator/evaluate.ts'
import { asCSV, asJSON, asText } from '../../../components/calculator/export.ts'
import { fieldsOf } from '../../../components/calculator/fields.ts'
import { cutPasted, isTable, pasteInWords } from '../../../components/calculator/paste.ts'
import { startingTexts, textsFromExample } from '../../../components/calculator/starting.ts'
import { apply, startState, type Action } from '../../../components/calculator/state.ts'
import { summaryOf } from '../../../components/calculator/summary.ts'

const load = catalogue['filter-life']
if (!load) throw new Error('filter-life is not in the catalogue')
const calculator = await load()
const specs = fieldsOf(calculator)
const start = startState(calculator, startingTexts(calculator, textsFromExample(calculator)), 'si')
const place = { prefix: 'filter-life.', alone: true, first: true, others: [] }
const after = (...actions: Action[]) => actions.reduce((state, action) => apply(specs, state, action), start)
const type = (row: number, column: string, text: string): Action => ({
  type: 'typeCell',
  table: 'readings',
  row,
  column,
  text,
})
const texts = (state: typeof start, column: string) =>
  state.tables['readings']?.rows.map((row) => row[column]?.text)

describe('a pasted text', () => {
  it.each([
    ['one column', '1\n2\n3\n', 1, [['1'], ['2'], ['3']]],
    [
      'tabs',
      '1\t2\n3\t4',
      2,
      [
        ['1', '2'],
        ['3', '4'],
      ],
    ],
    [
      'semicolons and decimal commas',
      '1,5;2,5\n3,5;4,5',
      2,
      [
        ['1,5', '2,5'],
        ['3,5', '4,5'],
      ],
    ],
    [
      'commas where they fill the columns',
      '0,25\n250,28',
      2,
      [
        ['0', '25'],
        ['250', '28'],
      ],
    ],
    ['decimal commas in one column', '1,5\n2,5', 1, [['1,5'], ['2,5']]],
    ['numbers across one line', '428 431 425', 1, [['428'], ['431'], ['425']]],
    ['a heading', 'hours\tdrop\n0\t25', 2, [['0', '25']]],
    ['a table in Markdown', '| h | kPa |\n| --- | --- |\n| 0 | 25 |', 2, [[' 0', '25'].map((s) => s.trim())]],
    ['quotes of a file', '"0";"25"', 2, [['0', '25']]],
    ['line ends of other systems', '1\r\n2\r3', 1, [['1'], ['2'], ['3']]],
    ['an empty cell between two', '0\t\t27', 3, [['0', '', '27']]],
  ])('%s', (_, text, columns, cells) => {
    expect(cutPasted(text, columns).cells).toEqual(cells)
  })

  it('of one cell is left to the browser', () => {
    expect(isTable('428')).toBe(false)
    expect(isTable('428 degC')).toBe(false)
    expect(isTable('1,5')).toBe(false)
    expect(isTable('428\n431')).toBe(true)
    expect(isTable('428 431 425')).toBe(true)
  })

  it('says what was left out', () => {
    const cut = cutPasted('a\tb\n1\t2\n3\t4\n5\t6', 1)
    expect(pasteInWords(cut, { rows: 2, columns: 1 })).toBe(
      '2 rows pasted. The first line holds no number and was taken as a heading. 1 more had no room and were left out. What stood to the right of 1 column was left out.',
    )
  })

  it('law: nothing makes it throw, and no cell holds a line end', () => {
    fc.assert(
      fc.property(fc.string(), fc.integer({ min: 1, max: 5 }), (text, columns) => {
        for (const row of cutPasted(text, columns).cells)
          for (const cell of row) expect(cell).not.toMatch(/[\r\n]/)
      }),
    )
  })
})

describe('rows', () => {
  it('are added up to the limit and removed down to it', () => {
    const add: Action = { type: 'addRow', table: 'readings' }
    const full = after(...Array.from({ length: 60 }, () => add))
    expect(full.tables['readings']?.rows).toHaveLength(40)
    const remove: Action = { type: 'removeRow', table: 'readings', row: 0 }
    const least = after(...Array.from({ length: 60 }, () => remove))
    expect(least.tables['readings']?.rows).toHaveLength(4)
    expect(texts(least, 'hours')).toEqual(['250', '500', '750', '1000'])
  })

  it('that are empty at the end do not count; one in the middle is named', () => {
    const added = after({ type: 'addRow', table: 'readings' })
    expect(evaluate(calculator, specs, added).result).toBeDefined()
    const gap = after(...['hours', 'drop', 'flow', 'viscosity'].map((column) => type(1, column, '')))
    expect(Object.keys(evaluate(calculator, specs, gap).problems)).toEqual([
      'readings.1.hours',
      'readings.1.drop',
      'readings.1.flow',
      'readings.1.viscosity',
    ])
  })

  it('too few after all are refused under the name of the table', () => {
    const few = after({ type: 'replaceRows', table: 'readings', cells: [['0', '25', '27', '3']] })
    const { problems } = evaluate(calculator, specs, few)
    expect(problems['readings']?.reason).toBe('Readings since the last change has 1 rows')
  })

  it('a cell outside what is possible is refused in the unit shown', () => {
    const psi = after(
      { type: 'pickColumnUnit', table: 'readings', column: 'drop', unit: 'psi' },
      type(1, 'drop', '20000'),
    )
    const problem = evaluate(calculator, specs, psi).problems['readings.1.drop']
    expect(problem?.reason).toMatch(/reading 2: Drop is 20000\spsi, above 1450\spsi$/)
  })
})

describe('the address of a table', () => {
  const write = (state: typeof start) => writeAddress(calculator, specs, start, state, '', place)
  const read = (query: string) => readAddress(calculator, specs, start, query, place)

  it('is empty while nothing differs', () => expect(write(start)).toBe(''))

  it('law: what is written is read back', () => {
    const text = fc.oneof(
      fc.integer({ min: 0, max: 99999 }).map(String),
      fc.constantFrom('12 psi', '2*3', 'abc', '', '1,5', 'a_b;c', '½'),
    )
    const action = fc.oneof(
      fc.record({
        type: fc.constant('typeCell' as const),
        table: fc.constant('readings'),
        row: fc.integer({ min: 0, max: 4 }),
        column: fc.constantFrom('hours', 'drop', 'flow', 'viscosity'),
        text,
      }),
      fc.constant<Action>({ type: 'addRow', table: 'readings' }),
      fc.constant<Action>({ type: 'removeRow', table: 'readings', row: 1 }),
      fc.constant<Action>({ type: 'pickColumnUnit', table: 'readings', column: 'drop', unit: 'psi' }),
    )
    fc.assert(
      fc.property(fc.array(action, { maxLength: 12 }), (actions) => {
        const state = after(...(actions as Action[]))
        const back = read(write(state))
        expect(back.problems).toEqual([])
        const [before, now] = [state, back.state].map((one) => evaluate(calculator, specs, one))
        expect(back.state.tables['readings']?.rows.length).toBe(state.tables['readings']?.rows.length)
        expect(now?.values['readings']).toEqual(before?.values['readings'])
        expect(Object.keys(now?.problems ?? {})).toEqual(Object.keys(before?.problems ?? {}))
      }),
    )
  })

  it('says what it cannot use', () => {
    expect(read('readings.drop.unit=K').problems[0]).toMatch(/^Unit of «Drop»: read «K»; accepted: kPa/)
    expect(read(`readings.drop=${'1_'.repeat(1500)}`).problems[0]).toMatch(/at most 2000/)
  })
})

describe('what leaves the page', () => {
  const summary = summaryOf(
    calculator,
    specs,
    start,
    evaluate(calculator, specs, start),
    [],
    'https://example',
  )

  it('holds each cell by row and column, and rows for the terminal', () => {
    expect(asText(summary)).toContain('Readings since the last change, reading 2: Drop Δp: 28 kPa')
    expect(asCSV(summary)).toContain('"Readings since the last change, reading 2: Drop",Δp,28,kPa')
    const { inputs } = JSON.parse(asJSON(summary)) as { inputs: { readings: unknown[] } }
    expect(inputs.readings[1]).toEqual({
      hours: '250 h',
      drop: '28 kPa',
      flow: '27 L/min',
      viscosity: '3 mm2/s',
    })
  })
})
