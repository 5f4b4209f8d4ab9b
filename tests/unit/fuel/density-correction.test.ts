import { describe, expect, test } from 'vitest'
import { baseDensity } from '../../../calculators/fuel/density-correction.ts'
import { pressureFactor2004 } from '../../../calculators/fuel/density-2004.ts'
import { GROUPS_2004, groupAt, groupsOf } from '../../../calculators/fuel/density-groups.ts'

test.each([
  [845, 'fuelOils'],
  [832, 'jetFuels'],
  [780, 'transition'],
  [740, 'gasolines'],
] as const)('a refined product of %f kg/m³ at 15 °C is in the group %s', (density, group) => {
  for (const edition of ['2004', '1980'] as const) {
    const result = baseDensity(density, 288.15, 'refined', edition)
    expect('found' in result && result.found.constants.group).toBe(group)
  }
})

test('a light diesel called a fuel oil is refused, with the limits at its own temperature', () => {
  const result = baseDensity(820, 288.15, 'fuelOils', '2004')
  if (!('outside' in result)) throw new Error('expected to be outside')
  expect(result.outside.minimum).toBeCloseTo(838.7, 0)
})

test.each([200, 609, 1300, NaN, Infinity])('%f kg/m³ is outside every refined group', (density) => {
  expect('outside' in baseDensity(density, 288.15, 'refined', '2004')).toBe(true)
})

describe('borders between groups', () => {
  const around = (middle: number, temperature: number, edition: '2004' | '1980') =>
    Array.from({ length: 2000 }, (_, index) =>
      baseDensity(middle - 10 + index * 0.01, temperature, 'refined', edition),
    )

  test('1980: at −20 °C a density in the step between two groups has no answer', () => {
    const steps = around(815, 253.15, '1980').filter((answer) => 'between' in answer)
    expect(steps.length).toBeGreaterThan(0)
    for (const { between } of steps)
      expect(between.map((constants) => constants.group)).toEqual(['transition', 'jetFuels'])
  })

  test('1980: at 60 °C two groups overlap at their border, so that there is always an answer', () => {
    for (const answer of around(806, 333.15, '1980')) expect('found' in answer).toBe(true)
  })

  test('2004: crossing a border at −40 °C never leaves a gap', () => {
    for (let density = 870; density < 885; density += 0.01)
      expect('found' in baseDensity(density, 233.15, 'refined', '2004')).toBe(true)
  })
})

test('a vacuum has no pressure factor of its own', () => {
  const constants = groupAt(850, groupsOf('fuelOils', GROUPS_2004))
  expect(pressureFactor2004(850, 300, -5e4, constants)).toBe(1)
  expect(pressureFactor2004(850, 300, 0, constants)).toBe(1)
})
