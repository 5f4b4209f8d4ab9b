import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { betaForTurns, turnsNeeded, efficiencyOf } from '../../calculators/cleanliness/beta.ts'
import { countsOf, scaleNumber } from '../../calculators/cleanliness/iso-4406.ts'
import { stokesVelocity } from '../../calculators/cleanliness/settling.ts'
import { filterFlow, parallelDrop } from '../../calculators/hydraulics/filter-parallel.ts'
import { drawWith } from './draws.ts'

/** The same cases on every machine; many more, with other seeds, were run when this was written. */
drawWith({ seed: 341, numRuns: 500 })

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const decades = (min: number, max: number) => between(Math.log(min), Math.log(max)).map(Math.exp)

test('a count lies in the range of its own scale number', () => {
  fc.assert(
    fc.property(decades(1e2, 2.4e12), (count) => {
      const { above, upTo } = countsOf(scaleNumber(count))
      expect(count).toBeGreaterThan(above * (1 - 1e-9))
      expect(count).toBeLessThanOrEqual(upTo * (1 + 1e-9))
    }),
  )
})

test('more particles never give a lower scale number', () => {
  fc.assert(
    fc.property(decades(1e2, 1e12), between(1, 2), (count, more) => {
      expect(scaleNumber(count * more)).toBeGreaterThanOrEqual(scaleNumber(count))
    }),
  )
})

test('the ratio for so many turns needs just these turns', () => {
  fc.assert(
    fc.property(decades(1e6, 1e10), between(1.01, 1e4), between(1.01, 20), (after, ratio, spare) => {
      const turns = Math.log(ratio) * spare
      const beta = betaForTurns(after * ratio, after, turns)
      expect(beta).toBeGreaterThan(1)
      expect(turnsNeeded(after * ratio, after, efficiencyOf(beta)) / turns).toBeCloseTo(1, 8)
    }),
  )
})

test('twice the diameter sinks four times as fast; twice the viscosity half as fast', () => {
  fc.assert(
    fc.property(decades(1e-6, 1e-3), between(950, 1100), decades(1e-4, 1), (diameter, density, viscosity) => {
      const plain = stokesVelocity(diameter, density, 845, viscosity)
      expect(stokesVelocity(2 * diameter, density, 845, viscosity) / plain).toBeCloseTo(4, 9)
      expect(stokesVelocity(diameter, density, 845, 2 * viscosity) / plain).toBeCloseTo(0.5, 9)
    }),
  )
})

const resistances = fc.record({ element: decades(1e8, 1e12), housing: decades(1e8, 1e12) })

test('two filters: the flows add up, turning them round changes nothing, and two are freer than one', () => {
  fc.assert(
    fc.property(resistances, resistances, decades(1e-6, 1e-2), (first, second, flow) => {
      const drop = parallelDrop(first, second, flow, 3e-3, 845)
      const passed = filterFlow(first, drop, 3e-3, 845) + filterFlow(second, drop, 3e-3, 845)
      expect(passed / flow).toBeCloseTo(1, 9)
      expect(parallelDrop(second, first, flow, 3e-3, 845) / drop).toBeCloseTo(1, 9)
      const plugged = { element: Infinity, housing: second.housing }
      expect(parallelDrop(first, plugged, flow, 3e-3, 845)).toBeGreaterThan(drop)
      expect(filterFlow(plugged, drop, 3e-3, 845)).toBe(0)
    }),
  )
})
