import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { filterDrop } from '../../calculators/hydraulics/filter.ts'
import { darcyFactor } from '../../calculators/hydraulics/friction.ts'
import { pipeFlow } from '../../calculators/hydraulics/pipe.ts'
import { inletPressure, valveFlow } from '../../calculators/hydraulics/spring-valve.ts'
import { drawWith } from './draws.ts'

/** The same cases on every machine; many more, with other seeds, were run when this was written. */
drawWith({ seed: 341, numRuns: 500 })

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const decades = (min: number, max: number) => between(Math.log(min), Math.log(max)).map(Math.exp)

const pipes = fc.record({
  length: decades(0.01, 100),
  bore: decades(0.004, 0.2),
  roughness: decades(1e-7, 1e-4),
  minorLosses: between(0, 20),
})

test('the drop in a pipe rises with flow, through the transition too', () => {
  fc.assert(
    fc.property(
      pipes,
      decades(1e-7, 1e-1),
      between(1.0001, 2),
      decades(5e-7, 1e-3),
      (pipe, flow, more, viscosity) => {
        const drop = (q: number) => pipeFlow(pipe, q, viscosity, 845).drop
        expect(drop(flow * more)).toBeGreaterThan(drop(flow))
      },
    ),
  )
})

test('more roughness never gives less friction', () => {
  fc.assert(
    fc.property(decades(1, 1e8), between(0, 0.04), between(0, 0.01), (reynolds, roughness, more) => {
      expect(darcyFactor(reynolds, roughness + more)).toBeGreaterThanOrEqual(
        darcyFactor(reynolds, roughness) * (1 - 1e-12),
      )
    }),
  )
})

test('a pipe in other units is the same pipe: lengths by λ, times by τ', () => {
  fc.assert(
    fc.property(pipes, decades(1e-6, 1e-2), decades(0.1, 10), decades(0.1, 10), (pipe, flow, lambda, tau) => {
      const scaled = {
        length: pipe.length * lambda,
        bore: pipe.bore * lambda,
        roughness: pipe.roughness * lambda,
        minorLosses: pipe.minorLosses,
      }
      const plain = pipeFlow(pipe, flow, 3e-6, 845)
      const other = pipeFlow(scaled, (flow * lambda ** 3) / tau, (3e-6 * lambda ** 2) / tau, 845)
      expect(other.factor / plain.factor).toBeCloseTo(1, 8)
      expect(other.drop / (plain.drop * (lambda / tau) ** 2)).toBeCloseTo(1, 8)
    }),
  )
})

test('the drop of a filter rises with flow, viscosity and loading', () => {
  const resistance = fc.record({ element: decades(1e8, 1e12), housing: decades(1e6, 1e10) })
  fc.assert(
    fc.property(
      resistance,
      decades(1e-6, 1e-2),
      decades(1e-4, 1),
      between(1.001, 3),
      (known, flow, viscosity, more) => {
        const drop = filterDrop(known, flow, viscosity, 845)
        expect(filterDrop(known, flow * more, viscosity, 845)).toBeGreaterThan(drop)
        expect(filterDrop(known, flow, viscosity * more, 845)).toBeGreaterThan(drop)
        expect(filterDrop({ ...known, element: known.element * more }, flow, viscosity, 845)).toBeGreaterThan(
          drop,
        )
      },
    ),
  )
})

test('a spring valve there and back', () => {
  fc.assert(
    fc.property(
      between(1e4, 1e6),
      between(1e3, 1e5),
      between(0, 1),
      between(-2e4, 1e5),
      (cracking, override, share, back) => {
        const valve = { cracking, override, fullFlow: 4e-4 }
        expect(valveFlow(valve, inletPressure(valve, share * 4e-4, back), back)).toBeCloseTo(share * 4e-4, 12)
      },
    ),
  )
})
