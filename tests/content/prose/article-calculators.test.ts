import { expect, test } from 'vitest'
import { startOf } from './start-of.ts'

// An article says what its calculator starts with and what comes out. Here it is run with what the article gives.

test('the middle pair of the summer gas oil: «agrees with the table to the digits written there»', async () => {
  const { kinematicViscosity } = await startOf('viscosity-and-temperature', 'viscosity-at-temperature')
  expect((Number(kinematicViscosity?.value) * 1e6).toFixed(2)).toBe('3.00')
})

test('the tank: «two per cent more volume»', async () => {
  const { volumeAtTarget } = await startOf('viscosity-and-temperature', 'density-and-volume')
  expect(Number(volumeAtTarget?.value) / 4).toBeCloseTo(1.02, 2)
})

test('a cold morning: «well over half of what is permitted; at the reference state less than a third»', async () => {
  const { shareUsed, verdict } = await startOf('filtration-and-pressure-drop', 'filter-pressure-drop')
  expect(Number(shareUsed?.value)).toBeLessThan(1 / 3)
  expect(verdict?.value).toBe('inOrder')
})

test("the PQ-12's own gauge with a reading in the very middle: «cannot be told»", async () => {
  const outputs = await startOf('the-two-valves', 'valve-set-point-check')
  expect(outputs['verdict']?.value).toBe('cannotBeTold')
  expect(Number(outputs['setting']?.value)).toBeCloseTo(140e3, -3)
})
