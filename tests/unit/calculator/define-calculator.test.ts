import { describe, expect, it } from 'vitest'
import { checkDeclaration } from '../../../calculators/calculator/define-calculator.ts'
import type { Calculator, Input } from '../../../calculators/calculator/types.ts'
import { inputs, tube } from './tube.ts'

const withInput = (id: string, changed: Partial<Input>): Calculator => ({
  ...tube,
  inputs: { ...tube.inputs, [id]: { ...tube.inputs[id], ...changed } as Input },
})

describe('a mistake in a declaration is named with calculator and field', () => {
  it.each<[string, Calculator]>([
    ['Calculator Tube 1: its id must be', { ...tube, id: 'Tube 1' }],
    ['Calculator tube: it names no source', { ...tube, sources: [] }],
    ['Calculator tube: it has no output', { ...tube, outputs: {}, cases: [] }],
    ['Calculator tube: at least one case', { ...tube, cases: [] }],
    ['Calculator tube: input diameter: `default` is outside', withInput('diameter', { default: 2 })],
    ['input diameter: `default` is outside', withInput('diameter', { default: Number.NaN })],
    ['input diameter: `physical` is empty', withInput('diameter', { physical: { minimum: 1, maximum: 0 } })],
    [
      'input diameter: both ends of `physical`',
      withInput('diameter', { physical: { minimum: 0, maximum: Number.POSITIVE_INFINITY } }),
    ],
    ['input diameter: `valid` must lie', withInput('diameter', { valid: { minimum: 0, maximum: 2 } })],
    ['input diameter: `accuracy` must be', withInput('diameter', { accuracy: { absolute: 0 } })],
    ['input diameter: `accuracy` must be', withInput('diameter', { accuracy: { relative: -1 } })],
    ['input diameter: kPa is not a unit of length', withInput('diameter', { units: ['mm', 'kPa'] })],
    ['input form: `default` is not one', withInput('form', { default: 'square' })],
    [
      'input form: two options',
      withInput('form', { options: [inputs.form.options[0], inputs.form.options[0]] }),
    ],
    ['input area: `when` names flow', withInput('area', { when: { input: 'flow', oneOf: ['1'] } })],
    ['input area: `when` names oval', withInput('area', { when: { input: 'form', oneOf: ['oval'] } })],
    ['input readings: `default` has too few', withInput('readings', { default: [] })],
    ['input readings: `default` of column time', withInput('readings', { default: [{ time: -1 }] })],
    ['input readings: a table needs a column', withInput('readings', { columns: {} })],
    [
      'output verdict: a verdict needs at least two',
      { ...tube, outputs: { ...tube.outputs, verdict: { type: 'verdict', label: 'V', options: {} } } },
    ],
    [
      'chart: form is not a quantity',
      { ...tube, chart: { ...tube.chart, x: 'form' } as Calculator['chart'] & object },
    ],
    [
      'chart: verdict is not',
      { ...tube, chart: { ...tube.chart, y: 'verdict' } as Calculator['chart'] & object },
    ],
  ])('%s', (message, calculator) => {
    expect(() => checkDeclaration(calculator)).toThrow(message)
  })

  it.each([
    ['wing is not an input', { input: { wing: '1 m' } }],
    ['lift is not an output', { expected: { lift: '1' } }],
  ])('a case: %s', (message, part) => {
    const cases = tube.cases.map((published) => ({ ...published, ...part }))
    expect(() => checkDeclaration({ ...tube, cases } as Calculator)).toThrow(
      `case «One square metre»: ${message}`,
    )
  })

  it('a sound one passes', () => {
    expect(() => checkDeclaration(tube)).not.toThrow()
  })
})
