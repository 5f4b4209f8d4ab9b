import { describe, expect, it } from 'vitest'
import { kinds } from '../../../calculators/quantity/kinds.ts'
import { readPlain } from '../../../calculators/quantity/read.ts'
import type { KindId } from '../../../calculators/quantity/types.ts'
import { toSI } from '../../../calculators/quantity/units.ts'
import {
  conversionsOf,
  kindChoices,
  otherReference,
  unitsOffered,
} from '../../../components/converter/conversions.ts'
import gnu from '../../reference/units/gnu-units.json' with { type: 'json' }

const RELATIVE = 1e-9
const factors = new Map(gnu.factors.map(({ unit, si }) => [unit, si]))
const kindIds = Object.keys(kinds) as KindId[]

/** What the page shows, read again as a person would copy it. */
function shown(si: number, kind: KindId, unit: string): number {
  const conversion = conversionsOf(si, kind).find((one) => one.unit === unit)
  const reading = readPlain(conversion?.number ?? '', 'ratio', '1')
  if (reading.ok !== true) throw new Error(`${conversion?.number} is not a number`)
  return reading.si
}

describe('what the converter shows, against GNU units', () => {
  const scaled = kindIds.filter((kind) => kind !== 'temperature' && kind !== 'temperatureDifference')
  it.each(scaled)('%s: from every unit to every other', (kind) => {
    for (const from of unitsOffered(kind)) {
      for (const to of unitsOffered(kind)) {
        const expected = (37.25 * (factors.get(from) ?? 1)) / (factors.get(to) ?? 1)
        const error = Math.abs(shown(toSI(37.25, from, kind), kind, to) / expected - 1)
        expect(error, `${from} to ${to}`).toBeLessThan(RELATIVE)
      }
    }
  })

  it.each(gnu.temperatures)('$value $unit as a temperature', ({ unit, value, kelvin }) => {
    expect(Math.abs(shown(toSI(value, unit, 'temperature'), 'temperature', 'K') - kelvin)).toBeLessThan(
      RELATIVE * Math.max(1, kelvin),
    )
  })

  it('a difference of nine degrees Fahrenheit is five kelvins', () => {
    expect(shown(toSI(9, 'degF', 'temperatureDifference'), 'temperatureDifference', 'K')).toBe(5)
  })
})

describe('the list of kinds', () => {
  it('has every kind once, each with a name and at least one unit', () => {
    const choices = kindChoices()
    expect(choices.map(({ id }) => id).sort()).toEqual([...kindIds].sort())
    expect(new Set(choices.map(({ label }) => label)).size).toBe(choices.length)
    for (const { id } of choices) expect(unitsOffered(id).length).toBeGreaterThan(0)
  })
})

describe('gauge and absolute', () => {
  it('lie apart by the barometer and come back', () => {
    const there = otherReference('gaugePressure', 95e3)
    const back = otherReference('absolutePressure', 95e3)
    expect(there).toEqual({ kind: 'absolutePressure', shift: 95e3 })
    expect((there?.shift ?? 0) + (back?.shift ?? 0)).toBe(0)
    expect(otherReference('pressureDifference')).toBeUndefined()
  })
})
