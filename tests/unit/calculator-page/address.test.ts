import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readAddress, writeAddress } from '../../../components/calculator/address.ts'
import type { Place } from '../../../components/calculator/address.ts'
import { fieldsOf } from '../../../components/calculator/fields.ts'
import { startingTexts } from '../../../components/calculator/starting.ts'
import { apply, startState } from '../../../components/calculator/state.ts'
import type { Action, FormState } from '../../../components/calculator/state.ts'
import { column } from './column.ts'

const specs = fieldsOf(column)
const starting = startingTexts(column, {})
const start = startState(column, starting, 'si')
const alone: Place = { prefix: 'column.', alone: true, first: true, others: [] }
const shared: Place = { prefix: 'column.', alone: false, first: false, others: ['other.'] }

const after = (...actions: Action[]) => actions.reduce((state, action) => apply(specs, state, action), start)
const read = (query: string, place = alone, from = start) => readAddress(column, specs, from, query, place)
const write = (state: FormState, query = '', place = alone) =>
  writeAddress(column, specs, start, state, query, place)
const typed = (text: string, field = 'height'): Action => ({ type: 'type', field, text })

/** What the height was read as: a number in metres, or that it is refused or waits for the unit parser. */
function outcome(state: FormState): number | 'waiting' | 'refused' | undefined {
  const reading = state.fields['height']?.reading
  if (reading === 'waiting') return reading
  return reading?.ok === false ? 'refused' : reading?.si
}

describe('the address of a calculation', () => {
  it('is empty for an untouched form, in any unit system', () => {
    expect(write(start)).toBe('')
    expect(write(after({ type: 'follow', system: 'us' }))).toBe('')
  })

  it('holds what differs, as typed and with its unit', () => {
    expect(write(after(typed('3.50')))).toBe('v=1&liquid=water&height=3.50+m&temperature=15+degC')
    expect(write(after(typed('12 ft')))).toBe('v=1&liquid=water&height=12+ft+&temperature=15+degC')
    const other = after({ type: 'choose', input: 'liquid', value: 'other' }, typed('0.5', 'density.accuracy'))
    expect(write(other)).toBe(
      'v=1&liquid=other&height=2+m&density=850+kg%2Fm3&density.accuracy=0.5+%25&temperature=15+degC',
    )
    expect(write(after({ type: 'pickOutputUnit', output: 'pressure', unit: 'psi' }))).toBe(
      'v=1&liquid=water&height=2+m&temperature=15+degC&pressure.unit=psi',
    )
  })

  it('shows the units of whoever made the link, whatever the reader has set', () => {
    const reader = startState(column, starting, 'us')
    const { state } = read('v=1&height=3+m', alone, reader)
    expect(state.fields['height']).toMatchObject({ text: '3', textUnit: 'm', unit: 'm' })
  })

  it('gives numbers in an expression the unit in which they were meant', () => {
    const state = after({ type: 'pickUnit', field: 'height', unit: 'in' }, typed('5/8'))
    const query = write(state)
    const reader = startState(column, starting, 'si')
    expect(read(query, alone, reader).state.fields['height']).toMatchObject({ text: '5/8', textUnit: 'in' })
  })

  it('carries a prefix on a page with several calculators, and leaves the keys of the others alone', () => {
    const query = write(after(typed('3')), 'other.height=9+m&highlight=x', shared)
    expect(query).toBe(
      'other.height=9+m&highlight=x&column.v=1&column.liquid=water&column.height=3+m&column.temperature=15+degC',
    )
    expect(read(query, shared)).toMatchObject({ problems: [] })
    expect(read(query, { ...alone, others: ['other.'] }).state.fields['height']?.text).toBe('3')
  })

  it('reproduces the calculation when the values at the start have changed since', () => {
    const later = startState(column, startingTexts(column, { height: '7 m', temperature: '30 degC' }), 'si')
    const whole = writeAddress(column, specs, start, start, '', alone, true)
    expect(whole).toBe('v=1&liquid=water&height=2+m&temperature=15+degC')
    expect(outcome(read(whole, alone, later).state)).toBe(2)
    const changed = write(after(typed('20', 'temperature')))
    expect(outcome(read(changed, alone, later).state)).toBe(2)
  })

  it.each(['12 ft', '12ft', '104 in', '3.5 metres'])('shows «%s» again as it was typed', (text) => {
    const query = write(after(typed(text)))
    expect(query).not.toContain('height.unit')
    expect(read(query).state.fields['height']).toMatchObject({ text, unit: 'm' })
  })

  it('leaves values that are still those of the start in the units of the reader', () => {
    const us = startState(column, starting, 'us')
    const typedInFeet = apply(specs, us, typed('9'))
    const query = writeAddress(column, specs, us, typedInFeet, '', alone)
    const { state } = read(query, alone, us)
    expect(state.fields['height']).toMatchObject({ text: '9', unit: 'ft' })
    expect(state.fields['temperature']?.unit).toBe('degF')
  })

  it('drops its own keys when the form is back at its start', () => {
    expect(write(start, 'v=1&height=3+m&highlight=x')).toBe('highlight=x')
  })

  it('keeps a text that is no quantity, so that the field can refuse it', () => {
    const { state, problems } = read('height=tall')
    expect(state.fields['height']).toMatchObject({ text: 'tall', reading: { ok: false } })
    expect(problems).toEqual([])
  })

  it.each([
    ['depth=3+m', /«depth».*accepted: .*height/],
    ['height=1+m&height=2+m', /more than once/],
    ['liquid=milk', /«Liquid»: read «milk»; accepted: water, other/],
    ['height.unit=parsec', /«parsec»; accepted: m, mm/],
    ['pressure.unit=m', /«m»; accepted: kPa/],
    ['v=7', /form «7»/],
    ['__proto__=1&constructor=2', /«__proto__»/],
    [`height=${'9'.repeat(500)}`, /500 characters; accepted: at most 200/],
  ])('names what it cannot use in «%s», and uses the rest', (query, message) => {
    const { state, problems } = read(`${query}&temperature=20+degC`)
    expect(problems.join('\n')).toMatch(message)
    expect(state.fields['temperature']?.text).toBe('20')
  })

  it('leaves a field empty rather than compute with a part of what stood there', () => {
    expect(read(`height=1${' '.repeat(300)}`).state.fields['height']?.text).toBe('')
  })

  it('reads nothing of an address of enormous length', () => {
    const { state, problems } = read(`height=3+m&x=${'y'.repeat(9000)}`)
    expect(state).toBe(start)
    expect(problems).toHaveLength(1)
    expect(read(`x=${'y'.repeat(9000)}`).unread).toBe(true)
  })

  it('lists no more than a handful of problems', () => {
    const { problems } = read(Array.from({ length: 40 }, (_, place) => `x${place}=1`).join('&'))
    expect(problems).toHaveLength(6)
    expect(problems.at(-1)).toMatch(/35 more/)
  })

  it('takes control characters and marks of reading direction out of what it shows', () => {
    const { state, problems } = read('height=1%00%0A2&%E2%80%AEgnp=1')
    expect(state.fields['height']?.text).toBe('1  2')
    expect(problems.join('')).not.toMatch(/\u202e/)
  })

  it('law: what is written is read back to the same quantities', () => {
    const texts = fc.oneof(
      fc.double({ min: 0, max: 1000, noNaN: true }).map(String),
      fc.constantFrom('12,5', '10 ft', '1 234', 'x & y=2', '5/8 in', '#', '+1', '%', '25 %', ''),
      fc.string({ maxLength: 40 }),
    )
    const units = fc.constantFrom('m', 'mm', 'in', 'ft')
    fc.assert(
      fc.property(texts, units, units, fc.constantFrom('si', 'us', 'mixed'), (text, first, then, system) => {
        const state = after(
          { type: 'pickUnit', field: 'height', unit: first },
          typed(text.replaceAll(/\p{C}/gu, '')),
          { type: 'pickUnit', field: 'height', unit: then },
        )
        const readerStart = startState(column, starting, system as 'si')
        const back = read(write(state), alone, readerStart)
        expect(back.problems).toEqual([])
        expect(outcome(back.state)).toEqual(outcome(state))
      }),
    )
  })

  it('law: no query string makes it throw', () => {
    const keys = fc.oneof(
      fc.constantFrom('height', 'height.unit', 'liquid', 'v', 'column.height'),
      fc.string(),
    )
    fc.assert(
      fc.property(fc.array(fc.tuple(keys, fc.string()), { maxLength: 20 }), fc.string(), (pairs, end) => {
        const query = `${new URLSearchParams(pairs).toString()}&${end}`
        expect(read(query).problems.length).toBeLessThanOrEqual(6)
      }),
    )
  })
})
