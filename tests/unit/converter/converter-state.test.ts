import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { kinds } from '../../../calculators/quantity/kinds.ts'
import type { KindId } from '../../../calculators/quantity/types.ts'
import { unitsOffered } from '../../../components/converter/conversions.ts'
import { readAddress, writeAddress } from '../../../components/converter/converter-address.ts'
import { apply, startState } from '../../../components/converter/converter-state.ts'
import type { ConverterAction, Entry } from '../../../components/converter/converter-state.ts'

const kindIds = Object.keys(kinds) as KindId[]
const after = (...actions: ConverterAction[]) => actions.reduce(apply, startState('si'))
const understood = ({ reading }: Entry) => (reading !== 'waiting' && reading.ok ? reading.si : undefined)
const type = (text: string): ConverterAction => ({ type: 'type', entry: 'value', text })

describe('the converter', () => {
  it('keeps what was typed when the kind changes, and takes it in the usual unit of the new one', () => {
    const state = after(type('12'), { type: 'kind', kind: 'volume' })
    expect(state.value).toMatchObject({ text: '12', unit: 'L', reading: { ok: true, si: 0.012 } })
  })

  it('says which kind a foreign unit belongs to', () => {
    const { reading } = after({ type: 'kind', kind: 'volume' }, type('12 kPa')).value
    expect(reading).toMatchObject({ ok: false, reason: expect.stringContaining('kPa') })
  })

  it('follows the unit system until a unit is picked', () => {
    const volume = after({ type: 'kind', kind: 'volume' })
    expect(apply(volume, { type: 'follow', system: 'us' }).value.unit).toBe('gal')
    const picked = apply(volume, { type: 'unit', unit: 'mL' })
    expect(apply(picked, { type: 'follow', system: 'us' }).value.unit).toBe('mL')
  })

  it('drops the answer to an expression that has been overtyped since', () => {
    const waiting = after(type('2 bar + 1 psi'))
    const overtyped = apply(waiting, type('3'))
    const answered = apply(overtyped, {
      type: 'read',
      entry: 'value',
      of: waiting.value,
      reading: { ok: true, si: 1, unit: 'Pa', understood: '' },
    })
    expect(answered).toEqual(overtyped)
  })
})

describe('its address', () => {
  it('is empty at the start, in every unit system', () => {
    for (const system of ['si', 'us', 'mixed'] as const) expect(writeAddress(startState(system), '')).toBe('')
    expect(readAddress('', 'us')).toEqual({ state: startState('us'), problems: [] })
  })

  it('brings back kind, text, unit and barometer, whatever was typed, in any unit system', () => {
    const system = fc.constantFrom('si', 'us', 'mixed' as const)
    const texts = fc.oneof(fc.string({ maxLength: 60 }), fc.constantFrom('12', '12 gal', '2 bar + 3 psi', ''))
    fc.assert(
      fc.property(
        fc.constantFrom(...kindIds),
        texts,
        fc.nat(),
        texts,
        system,
        (kind, text, place, air, reader) => {
          const units = unitsOffered(kind)
          const state = after(
            { type: 'kind', kind },
            type(text.replaceAll(/\p{C}/gu, '')),
            { type: 'unit', unit: units[place % units.length] ?? '' },
            { type: 'type', entry: 'barometer', text: air.replaceAll(/\p{C}/gu, '') },
          )
          const { state: read, problems } = readAddress(writeAddress(state, ''), reader as 'si')
          expect(problems).toEqual([])
          expect(read.kind).toBe(state.kind)
          expect(read.value.text).toBe(state.value.text)
          expect(read.barometer).toEqual(state.barometer)
          expect(understood(read.value)).toBe(understood(state.value))
        },
      ),
      { numRuns: 500 },
    )
  })

  it('leaves the keys of other parts alone', () => {
    expect(writeAddress(after(type('7')), 'q=filter&value=old')).toContain('q=filter')
  })

  it.each([
    ['kind=%3Cscript%3E', /^Kind: read «<script>»; accepted: ratio/],
    ['unit=furlong', /^Unit: read «furlong»; accepted: kPa/],
    ['v=2', /form «2»; this edition reads form 1/],
    ['colour=red', /Read «colour», which means nothing here/],
    [`value=${'9'.repeat(300)}`, /read 300 characters/],
    [`value=${'9'.repeat(3000)}`, /accepted: at most 2000\. None of it was used/],
  ])('%s is named and the rest is used', (query, problem) => {
    const { state, problems } = readAddress(query, 'si')
    expect(problems[0]).toMatch(problem)
    expect(state.kind).toBe('gaugePressure')
  })
})
