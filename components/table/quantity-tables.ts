import { formatIn, formatNumber, withoutFinalZeros } from '../../calculators/quantity/format.ts'
import { kinds } from '../../calculators/quantity/kinds.ts'
import { fromSI, unitOf } from '../../calculators/quantity/units.ts'
import type { ReferenceTable, Row } from './types.ts'

/** As many as the factors are exact to, and no more than a reader can copy. */
const DIGITS = 10

const plain = (value: number, digits: number) => withoutFinalZeros(formatNumber(value, digits))
const source = 'nist-sp811'

function unitRow(kind: (typeof kinds)[keyof typeof kinds], id: string): Row {
  const { symbol, factor, offset, alsoTyped } = unitOf(id)
  const { symbol: si } = unitOf(kind.siUnit)
  const factorWords = `${plain(factor, DIGITS)}${si && ` ${si}`}`
  const isScale = offset !== 0 && kind.id === 'temperature'
  return {
    name: symbol || '1 (a bare number)',
    group: kind.label.slice(0, 1).toUpperCase() + kind.label.slice(1),
    cells: [
      isScale ? `number × ${plain(factor, DIGITS)} + ${plain(offset, DIGITS)} ${si}` : factorWords,
      alsoTyped.slice(0, 4).join(', '),
    ],
    origin: { source },
  }
}

/** Every unit that the handbook reads, under its quantity. Quantities with the same units stand once. */
export function unitsTable(): ReferenceTable {
  const seen = new Set<string>()
  const shown = Object.values(kinds).filter(({ siUnit, units }) => {
    const key = `${siUnit}: ${units.toSorted().join(' ')}`
    const first = !seen.has(key)
    seen.add(key)
    return first
  })
  return {
    id: 'factors',
    title: 'Units and factors',
    caption: 'One unit is so much in SI. The calculators work with these very factors.',
    unsearched: true,
    head: 'Unit',
    columns: ['Is', 'Also typed'],
    rows: shown.flatMap((kind) => kind.units.map((id) => unitRow(kind, id))),
    notes: [
      'Inch, foot, pound, gallon and standard gravity are exact by definition; the rest follows from them.',
      'A column of mercury or water is counted with its conventional density and standard gravity.',
      'Gauge and absolute pressure and pressure differences share their units. A temperature difference in °F is 5/9 of one in K, without the offset.',
    ],
  }
}

const PRESSURES = ['kPa', 'bar', 'psi', 'inHg', 'inH2O', 'kgf/cm2'] as const
const ROUND = [1, 2, 3, 5, 7, 10, 15, 20, 25, 30, 40, 50, 70, 100, 150, 200, 250, 300, 400, 500, 700, 1000]

/** Round pressures in the units that stand on gauges, to hang beside a bench. */
export function pressuresTable(): ReferenceTable {
  return {
    id: 'pressures',
    title: 'Pressures side by side',
    caption: 'Round pressures in the units that stand on gauges.',
    head: 'In kPa',
    columns: PRESSURES.slice(1).map((id) => unitOf(id).symbol),
    rows: ROUND.map((number) => ({
      name: formatIn(1000 * number, 'pressureDifference', 'kPa', { digits: String(number).length }),
      cells: PRESSURES.slice(1).map((id) => formatNumber(fromSI(1000 * number, id, 'pressureDifference'), 3)),
      origin: { source },
    })),
    notes: ['Three digits. The inches of mercury and water go on past what a vacuum gauge can show.'],
  }
}
