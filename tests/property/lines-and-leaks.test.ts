import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { FITTINGS, type FittingId } from '../../calculators/hydraulics/fittings.ts'
import { airThroughHole, airThroughOpening } from '../../calculators/hydraulics/air-flow.ts'
import { gasReleased, liquidShare } from '../../calculators/hydraulics/gas.ts'
import { lineFlow } from '../../calculators/hydraulics/line.ts'
import { openingFlow, roundHole } from '../../calculators/hydraulics/orifice-small.ts'
import { slipAt, slipConstant } from '../../calculators/hydraulics/slip.ts'
import { largestLift, smallestBore, suctionState } from '../../calculators/hydraulics/suction.ts'
import { drawWith } from './draws.ts'

/** The same cases on every machine; many more, with other seeds, were run when this was written. */
drawWith({ seed: 341, numRuns: 500 })

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const decades = (min: number, max: number) => between(Math.log(min), Math.log(max)).map(Math.exp)

const bills = fc.dictionary(
  fc.constantFrom(...(Object.keys(FITTINGS) as FittingId[])),
  fc.integer({ min: 0, max: 6 }),
)
const lines = fc.record({
  length: decades(0.01, 100),
  bore: decades(0.004, 0.2),
  roughness: decades(1e-7, 1e-4),
  fittings: bills,
  method: fc.constantFrom('two-k' as const, 'equivalent-length' as const),
  fixedLoss: between(0, 10),
})

test('the drop of a line rises with flow, with viscosity in slow flow, and with every fitting', () => {
  fc.assert(
    fc.property(
      lines,
      decades(1e-6, 1e-2),
      decades(1e-6, 1e-3),
      between(1.001, 3),
      (line, flow, nu, more) => {
        const here = lineFlow(line, flow, nu, 845)
        expect(lineFlow(line, flow * more, nu, 845).drop).toBeGreaterThan(here.drop)
        const count = (line.fittings['elbows90'] ?? 0) + 1
        const oneMore = { ...line, fittings: { ...line.fittings, elbows90: count } }
        expect(lineFlow(oneMore, flow, nu, 845).drop).toBeGreaterThan(here.drop)
        const thicker = lineFlow(line, flow, nu * more, 845).drop
        expect(here.reynolds >= 2000 || thicker > here.drop).toBe(true)
      },
    ),
  )
})

test('what the smallest bore leaves is what was asked for, and less bore leaves less', () => {
  fc.assert(
    fc.property(
      lines,
      decades(1e-5, 3e-3),
      decades(1e-6, 3e-4),
      between(-2, 2),
      between(5e3, 60e3),
      (line, flow, nu, lift, limit) => {
        const side = {
          line: { ...line, method: 'two-k' as const },
          lift,
          strainerDrop: 2e3,
          surfacePressure: 101_325,
        }
        const least = 101_325 - limit
        const bore = smallestBore(side, flow, nu, 845, least)
        const fixed = 845 * 9.80665 * lift + 2e3
        expect(bore === undefined).toBe(fixed >= limit)
        if (bore === undefined) return
        const inlet = (width: number) =>
          suctionState({ ...side, line: { ...side.line, bore: width } }, flow, nu, 845).inletPressure
        expect(Math.abs(inlet(bore) - least)).toBeLessThan(1e-6 * 101_325)
        expect(inlet(bore * 0.98)).toBeLessThan(least)
        const built = { ...side, line: { ...side.line, bore } }
        expect(largestLift(built, flow, nu, 845, least)).toBeCloseTo(lift, 4)
      },
    ),
  )
})

test('a leak grows with pressure and bore, and shrinks with viscosity and wall', () => {
  fc.assert(
    fc.property(
      decades(2e-5, 5e-3),
      decades(1e-4, 1e-2),
      decades(1e2, 1e7),
      decades(5e-4, 1),
      between(1.001, 2),
      (diameter, wall, pressure, mu, more) => {
        const flow = (d: number, t: number, p: number, m: number) =>
          openingFlow(roundHole(d, t), 0.62, p, m, 845).flow
        const here = flow(diameter, wall, pressure, mu)
        expect(flow(diameter, wall, pressure * more, mu)).toBeGreaterThan(here)
        expect(flow(diameter * more, wall, pressure, mu)).toBeGreaterThan(here)
        expect(flow(diameter, wall, pressure, mu * more)).toBeLessThan(here)
        expect(flow(diameter, wall * more, pressure, mu)).toBeLessThan(here)
        // Never more than without viscosity, nor than without inertia.
        const { area, resistance } = roundHole(diameter, wall)
        expect(here).toBeLessThanOrEqual(0.62 * area * Math.sqrt((2 * pressure) / 845) * (1 + 1e-12))
        expect(here).toBeLessThanOrEqual((pressure / (resistance * mu)) * (1 + 1e-12))
      },
    ),
  )
})

test('air never falls as vacuum grows, and the liquid left in a pump never rises', () => {
  fc.assert(
    fc.property(between(1e3, 9e4), between(0, 9e3), between(0, 0.3), (vacuum, more, solubility) => {
      const hole = roundHole(1e-4, 1e-3)
      const air = (v: number) => airThroughOpening(hole, 0.62, 101_325, 101_325 - v, 293).mass
      expect(air(vacuum)).toBeLessThan(airThroughHole(hole.area, 0.62, 101_325, 101_325 - vacuum, 293))
      expect(air(vacuum + more)).toBeGreaterThanOrEqual(air(vacuum) * (1 - 1e-12))
      const liquid = (v: number) => liquidShare(gasReleased(solubility, 101_325, 101_325 - v))
      expect(liquid(vacuum + more)).toBeLessThanOrEqual(liquid(vacuum))
    }),
  )
})

test('slip is the same pump whichever point it is known from', () => {
  fc.assert(
    fc.property(
      decades(1e-7, 1e-3),
      decades(1e4, 1e7),
      decades(1e-3, 1),
      decades(1e4, 1e7),
      decades(1e-3, 1),
      (slip, p1, m1, p2, m2) => {
        const there = slipAt(slipConstant(slip, p1, m1), p2, m2)
        expect(slipAt(slipConstant(there, p2, m2), p1, m1) / slip).toBeCloseTo(1, 10)
      },
    ),
  )
})
