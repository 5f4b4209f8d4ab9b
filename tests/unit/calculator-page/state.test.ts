import { describe, expect, it } from 'vitest'
import { evaluate, sentenceOf } from '../../../components/calculator/evaluate.ts'
import { fieldsOf } from '../../../components/calculator/fields.ts'
import { startingTexts } from '../../../components/calculator/starting.ts'
import { apply, portableText, shownText, startState } from '../../../components/calculator/state.ts'
import type { Action, FormState } from '../../../components/calculator/state.ts'
import { readQuantity } from '../../../calculators/quantity/read.ts'
import { column } from './column.ts'

const specs = fieldsOf(column)
const start = startState(column, startingTexts(column, {}), 'si')
const after = (state: FormState, ...actions: Action[]) =>
  actions.reduce((before, action) => apply(specs, before, action), state)
const height = (state: FormState) => {
  const field = state.fields['height']
  const spec = specs['height']
  if (!field || !spec) throw new Error('no height')
  return { ...field, shown: shownText(field, spec) }
}
const siOf = (state: FormState) => {
  const { reading } = height(state)
  return reading !== 'waiting' && reading.ok ? reading.si : undefined
}
const typed = (text: string): Action => ({ type: 'type', field: 'height', text })
const unit = (id: string): Action => ({ type: 'pickUnit', field: 'height', unit: id })

describe('what the person chose', () => {
  it('starts with the defaults in the units of the unit system', () => {
    expect(height(start)).toMatchObject({ shown: '2', unit: 'm', picked: false })
    const us = startState(column, startingTexts(column, {}), 'us')
    expect(height(us)).toMatchObject({ shown: '6.5617', unit: 'ft' })
    expect(siOf(us)).toBe(2)
  })

  it('keeps the typed text and the exact quantity through a change of unit and back', () => {
    const inFeet = after(start, typed('1.23456789'), unit('ft'))
    expect(height(inFeet)).toMatchObject({ text: '1.23456789', shown: '4.0504', unit: 'ft' })
    expect(siOf(inFeet)).toBe(1.23456789)
    expect(height(after(inFeet, unit('m'))).shown).toBe('1.23456789')
  })

  it('keeps the quantity of a number with a unit of its own when another unit is picked', () => {
    const state = after(start, typed('10 ft'), unit('in'))
    expect(siOf(state)).toBeCloseTo(3.048, 12)
    expect(height(state).shown).toBe('120')
  })

  it('keeps a text that is no quantity, and reads it again in a unit picked later', () => {
    const state = after(start, typed('tall'), unit('ft'))
    expect(height(state)).toMatchObject({ shown: 'tall', unit: 'ft', textUnit: 'ft' })
  })

  it('follows the unit system until a unit is picked', () => {
    expect(height(after(start, { type: 'follow', system: 'us' })).unit).toBe('ft')
    expect(height(after(start, unit('mm'), { type: 'follow', system: 'us' })).unit).toBe('mm')
  })

  it('takes an answer to an expression only if the text still stands', async () => {
    const waiting = after(start, typed('5/8 in + 1 mm'))
    expect(height(waiting).reading).toBe('waiting')
    const of = height(waiting)
    const reading = await readQuantity(of.text, 'length', of.textUnit)
    const answer: Action = { type: 'read', field: 'height', of, reading }
    expect(siOf(after(waiting, answer))).toBeCloseTo(0.016875, 12)
    expect(siOf(after(waiting, typed('3'), answer))).toBe(3)
  })

  it('keeps the text of an input that a choice has hidden', () => {
    const state = after(
      start,
      { type: 'choose', input: 'liquid', value: 'other' },
      { type: 'type', field: 'density', text: '912' },
      { type: 'choose', input: 'liquid', value: 'water' },
      { type: 'choose', input: 'liquid', value: 'other' },
    )
    expect(portableText(state.fields['density'] ?? height(state))).toBe('912 kg/m3')
  })
})

describe('what follows from the state', () => {
  it('computes in SI and gives each result its uncertainty', () => {
    const { result } = evaluate(column, specs, start)
    expect(result?.outputs['pressure']?.value).toBeCloseTo(19613.3, 9)
    expect(result?.outputs['pressure']).toMatchObject({ uncertainty: expect.closeTo(98.07, 1) })
  })

  it('takes a relative accuracy as a share of the value', () => {
    const state = after(start, { type: 'choose', input: 'liquid', value: 'other' })
    expect(evaluate(column, specs, state).accuracies['density']).toBeCloseTo(8.5, 9)
  })

  it('states the accuracy of a temperature as a difference, without the offset of its scale', () => {
    expect(specs['temperature.accuracy']).toMatchObject({ kind: 'temperatureDifference' })
    const inFahrenheit = after(start, { type: 'pickUnit', field: 'temperature.accuracy', unit: 'degF' })
    const field = inFahrenheit.fields['temperature.accuracy']
    const spec = specs['temperature.accuracy']
    expect(field && spec && shownText(field, spec)).toBe('1.8')
  })

  it.each([
    ['', 'nothing was typed'],
    ['tall', '«tall»'],
    ['1.234,5', '«1.234,5»'],
    ['40 degC', '«40 degC»'],
    ['1e400', 'too large'],
    ['1e308', 'Height is'],
    ['-1', 'Height is'],
  ])('gives no result for a height of «%s», and says so in a sentence', (text, part) => {
    const { result, problems } = evaluate(column, specs, after(start, typed(text)))
    expect(result).toBeUndefined()
    const sentence = problems['height'] ? sentenceOf(problems['height']) : ''
    expect(sentence).toContain(part)
    expect(sentence).toMatch(/^Height.*\. Accepted: .+\.$/)
  })

  it('gives no result for an accuracy below zero, and names that field', () => {
    const state = after(start, { type: 'type', field: 'height.accuracy', text: '-0.1' })
    const { result, problems } = evaluate(column, specs, state)
    expect(result).toBeUndefined()
    expect(Object.keys(problems)).toEqual(['height.accuracy'])
  })

  it.each([
    ['height', '1e308', 'wider than the whole range'],
    ['height', '99999999', 'wider than the whole range'],
    ['height', '101 %', 'more than the whole value'],
    ['temperature', '500 K', 'wider than the whole range'],
    ['density', '150', 'more than the whole value'],
    ['density', '99999999 kg/m3', 'wider than the whole range'],
    ['density', '-1 kg/m3', 'below zero'],
    ['density', '3 cSt', 'is a kinematic viscosity'],
  ])('refuses an accuracy of %s of «%s», naming the field', (input, text, part) => {
    const state = after(
      start,
      { type: 'choose', input: 'liquid', value: 'other' },
      { type: 'type', field: `${input}.accuracy`, text },
    )
    const { result, problems } = evaluate(column, specs, state)
    const problem = problems[`${input}.accuracy`]
    expect(result).toBeUndefined()
    const sentence = problem ? sentenceOf(problem) : ''
    expect(sentence).toMatch(/^Accuracy of: .*Accepted: .+\.$/)
    expect(sentence).toContain(part)
    expect(sentence).not.toContain('turn')
  })

  it('refuses an impossible value under its own name, not under that of its accuracy', () => {
    const state = after(
      start,
      { type: 'choose', input: 'liquid', value: 'other' },
      { type: 'type', field: 'density', text: '1e300' },
    )
    expect(Object.keys(evaluate(column, specs, state).problems)).toEqual(['density'])
  })

  it('takes every accuracy as a figure or as a share, whichever is usual', () => {
    const state = after(
      start,
      { type: 'choose', input: 'liquid', value: 'other' },
      { type: 'type', field: 'height.accuracy', text: '5 %' },
      { type: 'type', field: 'density.accuracy', text: '3 kg/L' },
    )
    const { accuracies } = evaluate(column, specs, state)
    expect(accuracies['height']).toBeCloseTo(0.1, 12)
    expect(accuracies['density']).toBeCloseTo(3000, 9)
  })

  it('takes over the units of a state that is put back', () => {
    const us = startState(column, startingTexts(column, {}), 'us')
    expect(height(after(start, { type: 'restore', state: us }))).toMatchObject({ unit: 'ft' })
  })

  it('does not mind what a hidden input holds', () => {
    const state = after(start, { type: 'type', field: 'density', text: 'heavy' })
    expect(evaluate(column, specs, state).result).toBeDefined()
  })
})

describe('the texts a form starts with', () => {
  it('refuses an input that there is not, naming those that there are', () => {
    expect(() => startingTexts(column, { heigth: '2 m' })).toThrow(/'heigth'.*allowed: liquid, height/)
  })
  it('refuses a figure without a unit and a choice that there is not', () => {
    expect(() => startingTexts(column, { height: '2' })).toThrow(/no unit/)
    expect(() => startingTexts(column, { liquid: 'milk' })).toThrow(/allowed: water, other/)
  })
})
