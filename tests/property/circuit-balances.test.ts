import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { leastFlow } from '../../calculators/circuit/at-rest.ts'
import { calibrationOf } from '../../calculators/circuit/calibration.ts'
import { turning } from '../../calculators/circuit/carry.ts'
import { comeToRest, type Rest } from '../../calculators/circuit/come-to-rest.ts'
import { linkLaws } from '../../calculators/circuit/link-laws.ts'
import { setFixedPressures, situationOf, type Situation } from '../../calculators/circuit/situation.ts'
import { solveCircuit } from '../../calculators/circuit/solve-circuit.ts'
import {
  operatingStates,
  type BentParameter,
  type Conditions,
  type OperatingState,
} from '../../calculators/circuit/types.ts'
import { circuitIds, conditionsOf, modelOf } from '../unit/circuit-model/shipped.ts'
import { drawWith } from './draws.ts'

/** The same cases on every machine. */
drawWith({ seed: 343, numRuns: 6 })

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const anyState = fc.constantFrom(...operatingStates)

/** Fields at rest as the model has them, before anything is read off them. */
function atRest(id: string, conditions: Conditions, parameters: readonly BentParameter[]) {
  const model = modelOf(id)
  solveCircuit(model, conditions)
  const read = situationOf(model, conditions, { parameters, conditions: {} })
  if (!read.ok) throw new Error(read.reason)
  const rest = comeToRest(read.situation, calibrationOf(model).fields)
  if ('ok' in rest) throw new Error(rest.reason)
  return { situation: read.situation, rest }
}

const surroundings = fc.record({
  state: anyState,
  loading: between(1, 12),
  opening: between(0.3, 1),
  level: between(0.4, 1),
  warmer: between(-10, 10),
})

type Surroundings = typeof surroundings extends fc.Arbitrary<infer T> ? T : never

function atRestIn(id: string, { state, loading, opening, level, warmer }: Surroundings) {
  const model = modelOf(id)
  const conditions = conditionsOf(model, state, {
    tankLevel: level,
    ambientTemperature: model.usual.ambientTemperature + warmer,
  })
  return atRest(id, conditions, [
    { part: 'suction-strainer', parameter: 'loading', value: loading },
    { part: 'return-line', parameter: 'opening', value: opening },
  ])
}

/** Flow into each node less what leaves it, by node; what leaks out of a part's wall leaves its node. */
function imbalances({ model, topology }: Situation, { fields, leaks }: Rest): Float64Array {
  const sums = new Float64Array(model.nodes.length)
  const add = (node: number, flow: number) => {
    sums[node] = (sums[node] ?? 0) + flow
  }
  model.links.forEach(({ from, to }, place) => {
    add(from, -(fields.flow[place] ?? 0))
    add(to, fields.flow[place] ?? 0)
  })
  for (const { part, flow } of leaks) add(topology.holeNode[part] ?? 0, -flow)
  return sums.map((sum, node) => (model.nodes[node]?.fixed === undefined ? sum : 0))
}

/** Drop of each link by its own law at its flow, lift included, and how far it may be off. [Pa] */
function drops(situation: Situation, { fields }: Rest) {
  const slopes = new Float64Array(situation.model.links.length)
  const into = { drop: 0, slope: 0 }
  const least = leastFlow(fields.flow)
  // A pump's law needs what its suction answers with: two rounds settle it.
  for (let round = 0; round < 2; round++)
    linkLaws(situation, fields, slopes).forEach((law, place) => {
      law(fields.flow[place] ?? 0, into)
      slopes[place] = into.slope
    })
  return linkLaws(situation, fields, slopes).map((law, place) => {
    law(fields.flow[place] ?? 0, into)
    return { drop: into.drop, within: 2 + 2 * into.slope * least }
  })
}

/**
 * Around every loop: a tree of links reaches all nodes from the tanks, whose pressures are given; each link beyond the
 * tree closes one loop with it. Only the laws are added up; the pressures of the solution are not looked at.
 */
function openLoops(situation: Situation, rest: Rest): string[] {
  const { model } = situation
  const laws = drops(situation, rest)
  const fixed = new Float64Array(model.nodes.length)
  setFixedPressures(situation, rest.fields.onSurface, fixed)
  const reached = new Map<number, { pressure: number; within: number }>()
  model.nodes.forEach((node, place) => {
    if (node.fixed !== undefined) reached.set(place, { pressure: fixed[place] ?? 0, within: 0 })
  })
  const used = new Set<number>()
  for (let grown = true; grown;) {
    grown = false
    // The stiffest last, so that the tree goes by the links that tell a pressure best.
    const next = model.links
      .map((link, place) => ({ link, place, law: laws[place] ?? { drop: 0, within: Infinity } }))
      .filter(({ link, place }) => !used.has(place) && reached.has(link.from) !== reached.has(link.to))
      .sort((a, b) => a.law.within - b.law.within)[0]
    if (!next) break
    const { link, place, law } = next
    const forward = reached.get(link.from)
    const known = forward ?? reached.get(link.to)
    if (known === undefined) break
    reached.set(forward ? link.to : link.from, {
      pressure: known.pressure + (forward ? -law.drop : law.drop),
      within: known.within + law.within,
    })
    used.add(place)
    grown = true
  }
  return model.links.flatMap((link, place) => {
    const [from, to, law] = [reached.get(link.from), reached.get(link.to), laws[place]]
    if (used.has(place) || !from || !to || !law) return []
    const open = Math.abs(from.pressure - to.pressure - law.drop)
    return open <= from.within + to.within + law.within ? [] : [`${link.id}: ${open} Pa`]
  })
}

/** What the fuel carries out over what it brings in, and what pumps, heaters and injectors give less what lines lose. [W] */
function heatBalance(situation: Situation, { fields, leaks }: Rest) {
  const { model, topology, parameters, conditions, reference, demand } = situation
  let [carried, given, lost] = [0, demand.heat, 0]
  model.links.forEach((link, place) => {
    const flow = fields.flow[place] ?? 0
    const [start, end] = flow >= 0 ? [link.from, link.to] : [link.to, link.from]
    const size = reference * Math.abs(flow)
    const [before, behind] = [model.nodes[start], model.nodes[end]]
    if (before?.fixed !== undefined) carried -= size * (fields.heat[start] ?? 0)
    if (behind?.fixed === 'cylinders') carried += size * (fields.heat[start] ?? 0)
    else if (behind?.fixed !== undefined) carried += size * (fields.heat[end] ?? 0)
    const values = parameters.values[link.part]
    const kind = model.parts[link.part]?.kind
    if (!values) return
    if (link.role === 'pump') {
      const turned = (values.displacement * turning(situation, link.part)) / (2 * Math.PI)
      given +=
        (turned * Math.max(0, (fields.pressure[end] ?? 0) - (fields.pressure[start] ?? 0))) /
        values.efficiency
    }
    if (kind === 'thermostat-heater' || kind === 'viscosity-heater')
      given += size * ((fields.heat[end] ?? 0) - (fields.heat[start] ?? 0))
    if (link.role === 'pipe' || link.role === 'segment') {
      const length =
        link.role === 'segment' && link.id !== model.parts[link.part]?.id
          ? values.length / model.cylinders
          : values.length
      const mean = ((fields.temperature[start] ?? 0) + (fields.temperature[end] ?? 0)) / 2
      if (size > 0.01) lost += 8 * Math.PI * values.bore * length * (mean - conditions.ambientTemperature)
    }
  })
  for (const { part, flow } of leaks)
    carried += reference * flow * (fields.heat[topology.holeNode[part] ?? 0] ?? 0)
  return { carried, given, lost }
}

describe.each(circuitIds)('%s', (id) => {
  test('at every node as much comes as goes', () => {
    fc.assert(
      fc.property(surroundings, (given) => {
        const { situation, rest } = atRestIn(id, given)
        const most = Math.max(...rest.fields.flow)
        for (const sum of imbalances(situation, rest)) expect(Math.abs(sum)).toBeLessThan(1e-9 * most)
      }),
    )
  })

  test('around every loop drops and lifts add up to nothing', () => {
    fc.assert(
      fc.property(surroundings, (given) => {
        const { situation, rest } = atRestIn(id, given)
        expect(openLoops(situation, rest)).toEqual([])
      }),
    )
  })

  test('what pumps, heaters and injectors give is carried out or lost', () => {
    fc.assert(
      fc.property(surroundings, (given) => {
        const { situation, rest } = atRestIn(id, given)
        const { carried, given: power, lost } = heatBalance(situation, rest)
        expect(Math.abs(carried - (power - lost))).toBeLessThan(0.02 * (power + Math.abs(lost)) + 5)
      }),
    )
  })

  test('without a difference nothing flows', () => {
    fc.assert(
      fc.property(between(0.3, 1), (level) => {
        const model = modelOf(id)
        const stopped = model.parts.flatMap(({ id: part, kind }) =>
          kind === 'motor-pump' || kind === 'engine-pump'
            ? [{ part, parameter: 'speedShare', value: 0 }]
            : [],
        )
        const conditions = conditionsOf(model, 'priming', { tankLevel: level })
        const most = (parameters: readonly BentParameter[]): number =>
          Math.max(...atRest(id, conditions, parameters).rest.fields.flow.map(Math.abs))
        // Lines that are colder than a heated tank make a trace of a difference: the fuel in them is heavier.
        expect(most(stopped)).toBeLessThan(1e-5 * most([]))
      }),
      { numRuns: 3 },
    )
  })

  test('injectors that are alike share evenly', () => {
    const running = fc.constantFrom<OperatingState>('idle', 'part', 'full')
    fc.assert(
      fc.property(running, between(0.4, 1), (state, level) => {
        const model = modelOf(id)
        const now = solveCircuit(model, conditionsOf(model, state, { tankLevel: level }))
        if (!now.ok) throw new Error(now.reason)
        const { exhaust } = now.engine
        expect(exhaust).toHaveLength(model.cylinders)
        expect(Math.max(...exhaust) - Math.min(...exhaust)).toBeLessThan(0.5)
      }),
      { numRuns: 4 },
    )
  })
})
