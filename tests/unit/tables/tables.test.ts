import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { allFuels, circuitFile, idsOf, plantFile } from '../../../calculators/terminal/content.ts'
import { idsOfFolder } from '../../../components/content/ids.ts'
import { table as schema } from '../../../components/content/schema-table.ts'
import { fuelProperties, fuelViscosities, type TabledFuel } from '../../../components/table/fuel-tables.ts'
import { gaugesTable, type TabledCircuit } from '../../../components/table/gauge-table.ts'
import { pressuresTable, unitsTable } from '../../../components/table/quantity-tables.ts'
import { cleanlinessCodes, viscosityScales } from '../../../components/table/scale-tables.ts'
import type { ReferenceTable } from '../../../components/table/types.ts'

const fuels = Object.values(allFuels()) as unknown as readonly TabledFuel[]
const circuits = idsOf('circuits').map((id) => {
  const circuit = circuitFile(id)
  return { ...circuit, setPoints: plantFile(circuit.plant).setPoints } as unknown as TabledCircuit
})

/** The cells of a row, as they are written. */
function cells(table: ReferenceTable, name: string, group?: string): string[] {
  const row = table.rows.find(
    (one) => (one.name || one.at) === name && (group === undefined || one.group === group),
  )
  if (!row) throw new Error(`${table.id} has no row ${name}`)
  return row.cells.map((cell) => (typeof cell === 'string' ? cell : cell.figure))
}

const computed = [
  unitsTable(),
  pressuresTable(),
  cleanlinessCodes(),
  viscosityScales(),
  fuelViscosities(fuels),
  fuelProperties(fuels),
  gaugesTable(circuits),
]

test.each(computed)('$id: each row fills its columns and says where it comes from', ({ columns, rows }) => {
  expect(rows.length).toBeGreaterThan(3)
  for (const { cells: filled, origin } of rows) {
    expect(filled).toHaveLength(columns.length)
    expect(Object.values(origin).filter(Boolean).length).toBeGreaterThan(0)
  }
})

describe('published values', () => {
  // NIST SP 811, appendix B.8: 1 psi = 6.894 757 E+03 Pa, 1 inHg (conventional) = 3.386 389 E+03 Pa; exact: gallon, hp from ft·lbf.
  test.each([
    ['psi', 'Gauge pressure', '6894.757293 Pa'],
    ['inHg', 'Gauge pressure', '3386.388'],
    ['US gal', 'Volume', '0.003785411784 m³'],
    ['lb', 'Mass', '0.45359237 kg'],
    ['cSt', 'Kinematic viscosity', '1.0×10⁻⁶'],
  ])('%s', (name, group, factor) => {
    expect(cells(unitsTable(), name, group)[0]?.replace(/^1×/, '1.0×')).toMatch(factor)
  })

  test('100 kPa is 14.5 psi and 29.5 inHg', () => {
    expect(cells(pressuresTable(), '100\u00a0kPa').slice(0, 3)).toEqual(['1.00', '14.5', '29.5'])
  })

  test('ISO 4406: 18 is more than 1300 up to 2500, 13 more than 40 up to 80', () => {
    expect(cells(cleanlinessCodes(), '18')).toEqual(['1300', '2500'])
    expect(cells(cleanlinessCodes(), '13')).toEqual(['40', '80'])
  })
})

test('the viscosities go through the measured pairs, and stop at the cloud point', () => {
  const table = fuelViscosities(fuels)
  const summer = table.columns.indexOf('Summer gas oil')
  expect(['20 degC', '40 degC', '60 degC'].map((at) => cells(table, at)[summer])).toEqual([
    '4.80 mm2/s',
    '3.00 mm2/s',
    '2.07 mm2/s',
  ])
  expect(cells(table, '0 degC')[summer]).toBe('')
})

test('the gauges are those of the circuits', () => {
  expect(cells(gaugesTable(circuits), 'Header gauge', 'Fuel circuit of the PQ-12')).toEqual([
    '600 kPa',
    '10 kPa',
    '1.7 %',
  ])
})

describe('typed tables', () => {
  const page = (id: string) =>
    parse(readFileSync(`content/tables/${id}.yaml`, 'utf8')) as Record<string, unknown>
  const said = (change: (row: Record<string, unknown>) => object): string[] => {
    const data = page('fuel-limits') as { tables: { rows: Record<string, unknown>[] }[] }
    const [first] = data.tables
    const [row] = first?.rows ?? []
    if (first && row) first.rows = [{ ...row, ...change(row) }]
    return (schema.safeParse(data).error?.issues ?? []).map((issue) => JSON.stringify(issue))
  }

  test.each(idsOfFolder('tables'))('%s is as the schema asks', (id) => {
    expect(schema.safeParse(page(id)).error?.issues ?? []).toEqual([])
  })

  test.each([
    ['no origin', { source: undefined }, 'where its figures come from'],
    ['two origins', { practice: true }, 'where its figures come from'],
    ['a figure without a unit', { kind: 'density', cells: ['820'] }, '820'],
    ['a figure of another kind', { kind: 'density', cells: ['820 kPa'] }, '820 kPa'],
    ['a cell too many', { cells: ['1', '2'] }, '2 cells; allowed: one for each of the 1 columns'],
    ['an unknown source', { source: 'none' }, 'none'],
  ])('%s is refused', (_, change, message) => {
    expect(said(() => change).join('\n')).toContain(message)
  })
})
