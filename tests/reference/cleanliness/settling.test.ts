import { expect, test } from 'vitest'
import { reynoldsOfDrop, stokesDiameter, stokesVelocity } from '../../../calculators/cleanliness/settling.ts'
import made from './settling.json' with { type: 'json' }

test(`${made.cases.length} settling velocities of ${made.source} ${made.version}`, () => {
  expect(made.cases.length).toBeGreaterThanOrEqual(1000)
  for (const [diameter = 0, density = 0, liquid = 0, viscosity = 0, velocity = 0] of made.cases) {
    const found = stokesVelocity(diameter, density, liquid, viscosity)
    expect(Math.abs(found / velocity - 1)).toBeLessThan(1e-9)
    expect(Math.abs(stokesDiameter(found, density, liquid, viscosity) / diameter - 1)).toBeLessThan(1e-12)
    expect(reynoldsOfDrop(found, diameter, viscosity / liquid)).toBeLessThan(0.1001)
  }
})
