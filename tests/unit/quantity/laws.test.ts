import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatIn, formatNumber } from '../../../calculators/quantity/format.ts'
import { kinds, understoodUnits } from '../../../calculators/quantity/kinds.ts'
import { readPlain, readQuantity } from '../../../calculators/quantity/read.ts'
import { findUnit } from '../../../calculators/quantity/spelling.ts'
import type { KindId } from '../../../calculators/quantity/types.ts'
import { fromSI, toSI, unitOf } from '../../../calculators/quantity/units.ts'

const pairs = Object.values(kinds).flatMap((kind) => kind.units.map((unit) => [kind.id, unit] as const))
const kindAndUnit = fc.constantFrom(...pairs)
const ordinary = fc.double({ min: -1e9, max: 1e9, noNaN: true })

/** Pieces that a person, or somebody with other wishes, might put in a row. */
const pieces =
  '5|1,5|0|1e308|-|+|*|/|^|(|)| | in| min| bar| °C| psia| m|%|²|⁻¹|½|·|"|\'| kg/m3| to |=|x|__proto__|sqrt|e|i|!|.|,'
const piece = fc.constantFrom(...pieces.split('|'))
const typed = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.array(piece, { maxLength: 14 }).map((parts) => parts.join('')),
)

describe('laws of units', () => {
  it('come back from SI to where they were', () => {
    fc.assert(
      fc.property(kindAndUnit, ordinary, ([kind, unit], value) => {
        const back = fromSI(toSI(value, unit, kind), unit, kind)
        // The offset of a temperature scale costs the last digits of a small number.
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.abs(value) + 1e-12 * 460)
      }),
    )
  })

  it('keep the order of numbers', () => {
    fc.assert(
      fc.property(kindAndUnit, ordinary, ordinary, ([kind, unit], a, b) => {
        fc.pre(a < b)
        expect(toSI(a, unit, kind)).toBeLessThanOrEqual(toSI(b, unit, kind))
      }),
    )
  })

  it('are found by their id, symbol and every other spelling, in every kind that offers them', () => {
    for (const { id: kind } of Object.values(kinds)) {
      for (const id of understoodUnits(kind).filter((unit) => unit !== '1')) {
        const { symbol, alsoTyped } = unitOf(id)
        for (const spelling of [id, symbol, ...alsoTyped])
          expect([spelling, findUnit(spelling, kind)]).toEqual([spelling, id])
      }
    }
  })
})

describe('laws of reading', () => {
  it('what is shown is read again, to the digits shown', () => {
    const shown = fc.tuple(fc.double({ min: -1e15, max: 1e15, noNaN: true }), fc.integer({ min: 1, max: 12 }))
    fc.assert(
      fc.property(shown, ([value, digits]) => {
        const text = formatNumber(value, digits)
        const reading = readPlain(text, 'length', 'm')
        // A very small one is written with a power of ten and may be below what can be computed with.
        fc.pre(value === 0 || Math.abs(value) > 1e-300)
        expect(reading).toMatchObject({ ok: true })
        expect(reading.ok === true && formatNumber(reading.si, digits)).toBe(text)
      }),
    )
  })

  it('what is shown with its unit is read again', () => {
    fc.assert(
      fc.property(kindAndUnit, fc.double({ min: 1, max: 1e6, noNaN: true }), ([kind, unit], value) => {
        const si = toSI(value, unit, kind)
        const reading = readPlain(formatIn(si, kind, unit, { digits: 12 }), kind, kinds[kind].siUnit)
        expect(reading.ok === true && Math.abs(reading.si - si)).toBeLessThanOrEqual(1e-11 * Math.abs(si))
      }),
    )
  })

  it('never throws and never gives a number that is not finite, whatever is typed', async () => {
    const kindIds = fc.constantFrom(...(Object.keys(kinds) as KindId[]))
    await fc.assert(
      fc.asyncProperty(typed, kindIds, async (text, kind) => {
        const reading = await readQuantity(text, kind, kinds[kind].siUnit)
        const sound = reading.ok
          ? Number.isFinite(reading.si)
          : reading.reason !== '' && reading.accepted !== ''
        expect([text, sound]).toEqual([text, true])
      }),
      { numRuns: 2000 },
    )
  })

  it('gives the same for a plain number in whichever way it is read', async () => {
    await fc.assert(
      fc.asyncProperty(
        kindAndUnit,
        fc.double({ min: 0.001, max: 1e5, noNaN: true }),
        async ([kind, unit], value) => {
          const written = String(value)
          const plain = readPlain(written, kind, unit)
          const arithmetic = await readQuantity(`1*${written}`, kind, unit)
          expect(arithmetic).toMatchObject({ ok: true })
          expect(plain.ok === true && arithmetic.ok && arithmetic.si).toBe(plain.ok === true && plain.si)
        },
      ),
    )
  })
})
