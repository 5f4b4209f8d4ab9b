import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { solveCircuit } from '../../calculators/circuit/solve-circuit.ts'
import {
  operatingStates,
  type BentParameter,
  type CircuitState,
  type NoState,
  type OperatingState,
} from '../../calculators/circuit/types.ts'
import { splitEnd } from '../../calculators/circuit/validate.ts'
import {
  circuitIds,
  conditionsOf,
  flowOf,
  modelOf,
  reading,
  rested,
  sourceOf,
} from '../unit/circuit-model/shipped.ts'
import { drawWith } from './draws.ts'

/** The same cases on every machine; many more, with other seeds, were run when this was written. */
drawWith({ seed: 341, numRuns: 8 })

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const decades = (min: number, max: number) => between(Math.log(min), Math.log(max)).map(Math.exp)
const anyState = fc.constantFrom(...operatingStates)
const running = fc.constantFrom<OperatingState>('idle', 'part', 'full')

const bend = (part: string, parameter: string, value: number, cylinder?: number): BentParameter => ({
  part,
  parameter,
  value,
  ...(cylinder === undefined ? {} : { cylinder }),
})

function solved(
  id: string,
  state: OperatingState,
  parameters: readonly BentParameter[],
  others = {},
): CircuitState {
  const model = modelOf(id)
  return rested(solveCircuit(model, conditionsOf(model, state, others), { parameters, conditions: {} }))
}

/** What comes back to the tanks: the lines that end there, counted against the one that leaves. */
function backToTanks(id: string, state: CircuitState): number {
  const { circuit } = sourceOf(id)
  const tanks = new Set(circuit.elements.filter(({ model }) => model.kind === 'tank').map((tank) => tank.id))
  return state.lines.reduce((sum, { connection, flow }) => {
    const { to } = circuit.connections[connection] ?? { to: '' }
    return sum + (tanks.has(splitEnd(to)[0]) ? flow : 0)
  }, 0)
}

const drawn = (state: CircuitState): number =>
  state.parts.reduce((sum, { kind, flow }) => sum + (kind === 'tank' ? flow : 0), 0)

const leaked = (state: CircuitState): number => state.leaks.reduce((sum, { flow }) => sum + flow, 0)

/**
 * What comes to each junction less what goes. A line without a length tells the flow of the part at its end; of a
 * junction that such a line joins to another one not all is told.
 */
function junctionSums(id: string, state: CircuitState): number[] {
  const { circuit } = sourceOf(id)
  const junctions = new Set(circuit.junctions.map((junction) => junction.id))
  const isJunction = (end: string): boolean => junctions.has(splitEnd(end)[0])
  const untold = new Set(
    circuit.connections
      .filter(({ from, to, pipe, line }) => !pipe && line !== 'gauge' && isJunction(from) && isJunction(to))
      .flatMap(({ from, to }) => [splitEnd(from)[0], splitEnd(to)[0]]),
  )
  return [...junctions]
    .filter((junction) => !untold.has(junction))
    .map((junction) =>
      state.lines.reduce((sum, { connection, flow }) => {
        const { from = '', to = '' } = circuit.connections[connection] ?? {}
        const comes = splitEnd(to)[0] === junction ? flow : 0
        const goes = splitEnd(from)[0] === junction ? flow : 0
        return sum + comes - goes
      }, 0),
    )
}

const isShare = (value: number): boolean => value >= 0 && value <= 1

function wrongFigures(state: CircuitState): unknown[] {
  const points = state.parts.flatMap((part) => [part.in, part.out])
  return [
    ...state.readings.filter(({ value }) => !Number.isFinite(value)),
    ...points.filter(
      ({ pressure, temperature, gas }) => !(pressure > 0 && temperature > 200 && isShare(gas)),
    ),
    ...state.glasses.filter(({ fill, gas }) => !(isShare(fill) && isShare(gas))),
  ]
}

/** What a refusal holds beside the sentence that says why. */
function halfFilled(refusal: NoState): unknown[] {
  const { ok, reason, ...rest } = refusal
  return ok || !/«.+»\. \S/.test(reason) ? [refusal] : Object.values(rest)
}

/** Faults of some size at places that the three circuits share, with loads, leaks and gas. */
const someTrouble = fc.record({
  strainer: decades(1, 40),
  opening: between(0.15, 1),
  inlet: decades(1, 300),
  gasHole: fc.oneof(fc.constant(0), between(0, 3e-4)),
  headerLeak: fc.oneof(fc.constant(0), between(1e-4, 2e-3)),
  pumpAir: fc.oneof(fc.constant(0), between(1e-4, 8e-4)),
})

function trouble(
  id: string,
  sizes: typeof someTrouble extends fc.Arbitrary<infer T> ? T : never,
): BentParameter[] {
  const model = modelOf(id)
  const injectors = model.parts[model.injectors]?.id ?? ''
  const header = model.parts.find(({ kind }) => kind === 'header')?.id ?? ''
  const pump = model.parts.find(({ kind }) => kind === 'motor-pump' || kind === 'engine-pump')?.id ?? ''
  return [
    bend('suction-strainer', 'loading', sizes.strainer),
    bend('return-line', 'opening', sizes.opening),
    bend(injectors, 'inletLoading', sizes.inlet, 2),
    bend(injectors, 'gasHole', sizes.gasHole, 3),
    bend(header, 'airHole', sizes.headerLeak),
    bend(pump, 'airHole', sizes.pumpAir),
  ]
}

describe.each(circuitIds)('%s', (id) => {
  test('what is drawn is burnt, comes back or leaks', () => {
    fc.assert(
      fc.property(someTrouble, anyState, (sizes, state) => {
        const now = solved(id, state, trouble(id, sizes))
        const missing = drawn(now) - backToTanks(id, now) - now.engine.burnt - leaked(now)
        // What a state tells leaves out traces; circuit-balances.test.ts holds the fields themselves.
        expect(Math.abs(missing)).toBeLessThan(2e-6 * Math.max(drawn(now), 1e-4))
      }),
    )
  })

  test('where lines meet, as much comes as goes', () => {
    fc.assert(
      fc.property(someTrouble, anyState, (sizes, state) => {
        const now = solved(id, state, trouble(id, { ...sizes, headerLeak: 0, pumpAir: 0 }))
        for (const sum of junctionSums(id, now)) expect(Math.abs(sum)).toBeLessThan(1e-9)
      }),
      { numRuns: 4 },
    )
  })

  test('all figures are finite, pressures are above nothing, gas is a share; else there is a reason and no figure', () => {
    fc.assert(
      fc.property(
        someTrouble,
        anyState,
        between(modelOf(id).ranges.tankLevel.minimum + 0.02, 1),
        (sizes, state, tankLevel) => {
          const model = modelOf(id)
          const now = solveCircuit(model, conditionsOf(model, state, { tankLevel }), {
            parameters: trouble(id, sizes),
            conditions: {},
          })
          expect(now.ok ? wrongFigures(now) : halfFilled(now)).toEqual([])
        },
      ),
    )
  })

  test('without a hole, without vacuum to speak of and without a swirl there is no gas', () => {
    fc.assert(
      fc.property(anyState, between(0.5, 1), (state, tankLevel) => {
        const now = solved(id, state, [], { tankLevel })
        for (const part of now.parts) expect(part.out.gas).toBe(0)
      }),
      { numRuns: 12 },
    )
  })

  test('heat around the circuit: what comes back is warmer by what the parts gave it, no colder than all around', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const now = solved(id, state, [])
        const { tankTemperature, ambientTemperature } = now.conditions
        const least = Math.min(tankTemperature, ambientTemperature)
        for (const part of now.parts) expect(part.out.temperature).toBeGreaterThan(least - 0.01)
      }),
      { numRuns: 4 },
    )
  })
})

/** What shows the pressure at the injectors, and the pump that draws from the tank. */
const places: Readonly<Record<string, { readonly gauge: string; readonly pump: string }>> = {
  'pq-12': { gauge: 'header-gauge', pump: 'supply-pump' },
  'ps-6': { gauge: 'gallery-gauge', pump: 'feed-pump' },
  'pb-8': { gauge: 'header-gauge', pump: 'feed-pump' },
}

describe.each(circuitIds)('%s', (id) => {
  const { gauge = '', pump = '' } = places[id] ?? {}
  const filters = modelOf(id).parts.flatMap((part) => (part.kind === 'filter' ? [part.id] : []))

  test('a filter that loads up never raises the pressure at the injectors or the flow', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...filters),
        id === 'ps-6' ? running : anyState,
        decades(1, id === 'pb-8' ? 8 : 400),
        decades(1.05, id === 'pb-8' ? 2 : 10),
        (filter, state, loading, more) => {
          const [less, loaded] = [loading, loading * more].map((value) =>
            solved(id, state, [bend(filter, 'loading', value)]),
          ) as [CircuitState, CircuitState]
          expect(reading(loaded, gauge)).toBeLessThanOrEqual(reading(less, gauge) + 5)
          expect(flowOf(loaded, pump)).toBeLessThanOrEqual(flowOf(less, pump) + 1e-9)
        },
      ),
    )
  })

  test('gas at the pump never raises its flow', () => {
    fc.assert(
      fc.property(
        id === 'ps-6' ? running : anyState,
        between(0, 0.3),
        between(0.005, 0.1),
        (state, air, more) => {
          const [less, gassed] = [air, air + more].map((value) =>
            solved(id, state, [bend('tank', 'churnedAir', value)]),
          ) as [CircuitState, CircuitState]
          expect(flowOf(gassed, pump)).toBeLessThan(flowOf(less, pump))
        },
      ),
    )
  })
})

describe('pq-12', () => {
  test('a larger hole on the suction side never raises flow or header pressure', () => {
    fc.assert(
      fc.property(anyState, decades(1e-4, 3e-3), decades(1.05, 3), (state, hole, more) => {
        const [small, large] = [hole, hole * more].map((value) =>
          solved('pq-12', state, [bend('pump-suction-pipe', 'airHole', value)]),
        ) as [CircuitState, CircuitState]
        expect(flowOf(large, 'supply-pump')).toBeLessThanOrEqual(flowOf(small, 'supply-pump') + 1e-9)
        expect(reading(large, 'header-gauge')).toBeLessThanOrEqual(reading(small, 'header-gauge') + 5)
      }),
    )
  })

  test('a worn pump and a weak back-pressure valve never raise the header’s pressure', () => {
    fc.assert(
      fc.property(
        anyState,
        decades(1, 50),
        decades(1.05, 4),
        between(0.05, 1),
        (state, wear, more, spring) => {
          const of = (worn: number, share: number) =>
            reading(
              solved('pq-12', state, [
                bend('supply-pump', 'wear', worn),
                bend('back-pressure-valve', 'springShare', share),
              ]),
              'header-gauge',
            )
          expect(of(wear * more, spring)).toBeLessThanOrEqual(of(wear, spring) + 5)
          expect(of(wear, spring * 0.9)).toBeLessThanOrEqual(of(wear, spring) + 5)
        },
      ),
    )
  })

  test('injectors that are alike share evenly, and what one takes no longer the others do', () => {
    fc.assert(
      fc.property(running, decades(2, 1e4), fc.integer({ min: 1, max: 12 }), (state, loading, cylinder) => {
        const even = solved('pq-12', state, []).engine.exhaust
        expect(Math.max(...even) - Math.min(...even)).toBeLessThan(0.5)
        const { exhaust } = solved('pq-12', state, [
          bend('injectors', 'inletLoading', loading, cylinder),
        ]).engine
        const others = exhaust.filter((_, place) => place !== cylinder - 1)
        expect(exhaust[cylinder - 1] ?? Infinity).toBeLessThanOrEqual(Math.min(...others) + 0.5)
      }),
    )
  })
})
