import { describe, expect, it } from 'vitest'
import { formatNumber } from '../../../calculators/quantity/format.ts'
import { readFigure } from '../../../calculators/quantity/figure.ts'
import { kinds } from '../../../calculators/quantity/kinds.ts'
import type { KindId } from '../../../calculators/quantity/types.ts'
import { fromSI, toSI, unitOf, units } from '../../../calculators/quantity/units.ts'
import gnu from './gnu-units.json' with { type: 'json' }
import nist from './nist-sp811.json' with { type: 'json' }

/** Twelve digits would do; the committed values carry fifteen. */
const RELATIVE = 1e-9

function relativeError(value: number, expected: number): number {
  return Math.abs(value - expected) / Math.abs(expected)
}

describe(`factors against ${gnu.version}`, () => {
  it.each(gnu.factors)('$unit is $gnu', ({ unit, si }) => {
    expect(relativeError(unitOf(unit).factor, si)).toBeLessThan(RELATIVE)
    expect(relativeError(toSI(1, unit, 'ratio'), si)).toBeLessThan(RELATIVE)
  })

  it.each(gnu.temperatures)('$value $unit is $kelvin K', ({ unit, value, kelvin }) => {
    expect(Math.abs(toSI(value, unit, 'temperature') - kelvin)).toBeLessThan(RELATIVE * Math.max(1, kelvin))
  })

  it.each(gnu.differences)('a difference of 1 $unit carries no offset', ({ unit, kelvin }) => {
    expect(relativeError(toSI(1, unit, 'temperatureDifference'), kelvin)).toBeLessThan(RELATIVE)
  })

  it('leaves out no unit of the handbook', () => {
    const compared = new Set(
      [...gnu.factors, ...gnu.temperatures, ...gnu.differences].map((row) => row.unit).concat('1', 'turn'),
    )
    expect(Object.keys(units).filter((id) => !compared.has(id))).toEqual([])
  })
})

describe('factors against the printed digits of NIST SP 811', () => {
  it.each(nist.factors)('1 $unit is $printed $in', (row) => {
    const kind = row.kind as KindId
    const value = fromSI(toSI(1, row.unit, kind), row.in, kind)
    const closeness = row.exact ? 1e-14 : 1e-6
    expect(relativeError(value, Number(row.printed))).toBeLessThan(closeness)
    const digits = row.printed.replace('.', '').replace(/^0+/, '').length
    expect(formatNumber(value, digits)).toBe(row.printed)
  })
})

describe('traps of other unit libraries', () => {
  it('counts 42 US gallons to the barrel, not the 115.6 L of the dry one', () => {
    expect(toSI(1, 'bbl', 'volume')).toBeCloseTo(42 * 0.003785411784, 12)
  })

  it('takes mmHg as the conventional column of mercury, 2.8e-6 above 133.322 Pa', () => {
    expect(toSI(1, 'mmHg', 'pressureDifference')).toBeCloseTo(133.322387415, 9)
  })

  it('keeps inHg conventional: neither the 3.37685 kPa of 60 °F nor the 3.38638 kPa of 32 °F to its last digit', () => {
    expect(toSI(1, 'inHg', 'pressureDifference')).toBeCloseTo(3386.388640341, 6)
  })

  it('converts a temperature difference without the 32', () => {
    expect(readFigure('9 °F', 'temperatureDifference')).toMatchObject({ ok: true, si: 5 })
    expect(readFigure('5 °C', 'temperatureDifference')).toMatchObject({ ok: true, si: 5 })
  })
})

describe('every kind', () => {
  it.each(Object.values(kinds))(
    '$id is worked in an SI unit of factor 1 and offers units that lead to it',
    (kind) => {
      expect(unitOf(kind.siUnit)).toMatchObject({ factor: 1, offset: 0, siUnit: kind.siUnit })
      expect(kind.units.map((id) => unitOf(id).siUnit)).toEqual(kind.units.map(() => kind.siUnit))
      for (const id of Object.values(kind.preferred)) expect(kind.units).toContain(id)
    },
  )
})
