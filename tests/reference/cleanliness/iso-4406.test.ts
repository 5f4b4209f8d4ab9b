import { describe, expect, test } from 'vitest'
import {
  countsOf,
  LARGEST_COUNT,
  LARGEST_SCALE_NUMBER,
  scaleNumber,
} from '../../../calculators/cleanliness/iso-4406.ts'
import printed from './iso-4406.json' with { type: 'json' }

const perMillilitre = 1e6

describe(`the table of ISO 4406, as ${printed.source} prints it`, () => {
  test.each(printed.rows)('%d: more than %d, up to and including %d', (number = -1, above = 0, upTo = 0) => {
    expect(countsOf(number).above / perMillilitre).toBeCloseTo(above, 9)
    expect(countsOf(number).upTo / perMillilitre).toBeCloseTo(upTo, 9)
    expect(scaleNumber(upTo * perMillilitre)).toBe(number)
    expect(scaleNumber(((above + upTo) / 2) * perMillilitre)).toBe(number)
    expect(scaleNumber(above * perMillilitre)).toBe(Math.max(0, number - 1))
  })

  test('ends where the printed table ends', () => {
    expect(printed.rows.at(-1)?.[0]).toBe(LARGEST_SCALE_NUMBER)
    expect(scaleNumber(LARGEST_COUNT)).toBe(28)
    expect(scaleNumber(LARGEST_COUNT * 1.001)).toBe(-1)
    expect(countsOf(29).upTo).toBeNaN()
  })

  test('nothing counted is scale number 0', () => {
    expect(scaleNumber(0)).toBe(0)
  })
})
