import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { checkValveLaw } from '../../calculators/hydraulics/elements/check-valve.ts'
import { leakLaw } from '../../calculators/hydraulics/elements/leak.ts'
import { partlyShutValveLaw } from '../../calculators/hydraulics/elements/partly-shut-valve.ts'
import { pipeLaw } from '../../calculators/hydraulics/elements/pipe.ts'
import { pumpLaw } from '../../calculators/hydraulics/elements/pump.ts'
import { springValveLaw } from '../../calculators/hydraulics/elements/spring-valve.ts'
import { twoTermLaw } from '../../calculators/hydraulics/elements/two-terms.ts'
import {
  prepareNet,
  solveNet,
  type Law,
  type Link,
  type Net,
  type NetSolution,
} from '../../calculators/hydraulics/network/index.ts'
import { drawWith } from './draws.ts'

/** The same cases on every machine, `npm run laws` many more. A net has too many parts to be made smaller in good time. */
drawWith({
  seed: 1988,
  numRuns: import.meta.env.MODE === 'long' ? 10_000 : 500,
  endOnFailure: true,
})

/** What a wide link may let seep to and fro, since pressures have so many digits only: a drop in three hours. [m³/s] */
const SEEP = 5e-12

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const decades = (min: number, max: number) => between(Math.log(min), Math.log(max)).map(Math.exp)

const fuels = fc.record({ density: between(780, 1000), kinematicViscosity: decades(8e-7, 6e-4) })

const pipes = fc
  .tuple(
    fc.record({
      length: decades(0.05, 30),
      bore: decades(0.006, 0.08),
      roughness: decades(1e-7, 1e-4),
      minorLosses: between(0, 20),
    }),
    fuels,
  )
  .map(([pipe, fuel]) => pipeLaw(pipe, fuel))

const filters = fc
  .tuple(decades(1e5, 1e9), decades(1e8, 1e12))
  .map(([linear, quadratic]) => twoTermLaw(linear, quadratic))

const springValves = fc
  .record({
    cracking: decades(1e4, 1e6),
    override: decades(1e3, 3e5),
    fullFlow: decades(1e-5, 1e-2),
    leakage: decades(1e-18, 1e-13),
    stuckOpen: fc.oneof(fc.constant(0), between(0.001, 1)),
    stuckShut: fc.boolean(),
  })
  .chain((valve) => fuels.map((fuel) => springValveLaw(valve, fuel)))

const checkValves = fc
  .record({
    cracking: fc.oneof(fc.constant(0), decades(10, 1e5)),
    linear: decades(1e5, 1e8),
    quadratic: decades(1e8, 1e12),
    leakage: decades(1e-18, 1e-12),
  })
  .map(checkValveLaw)

const squeezes = fc
  .tuple(decades(0.005, 0.05), between(0.01, 1), fuels)
  .map(([bore, opening, fuel]) => partlyShutValveLaw(bore, opening, 0.2, fuel))

const pumps = fc
  .tuple(
    fc.record({
      displacement: decades(1e-6, 1e-4),
      speed: fc.oneof(fc.constant(0), between(10, 300)),
      slip: decades(1e-16, 1e-13),
      liquidShare: between(0, 1),
    }),
    fuels,
  )
  .map(([pump, fuel]) => pumpLaw(pump, fuel))

const elements = fc.oneof(pipes, filters, squeezes, springValves, checkValves, pumps)

/** Nets of up to thirty nodes that hang together: each node is joined to an earlier one, then come loops. */
const nets = (laws: fc.Arbitrary<Law>, mostTaken = 0) =>
  fc.integer({ min: 2, max: 30 }).chain((count) => {
    const place = fc.nat({ max: count - 1 })
    return fc
      .record({
        trunk: fc.array(fc.tuple(fc.nat(), laws, fc.boolean()), {
          minLength: count - 1,
          maxLength: count - 1,
        }),
        loops: fc.array(fc.tuple(place, place, laws), { maxLength: count }),
        fixed: fc.array(fc.tuple(place, between(-5e4, 8e5)), { minLength: 1, maxLength: 4 }),
        outflows: fc.array(fc.tuple(place, between(-mostTaken, mostTaken)), { maxLength: 3 }),
      })
      .map(({ trunk, loops, fixed, outflows }): Net => {
        const fixedAt = new Map(fixed)
        const takenAt = new Map(outflows)
        const ends = [
          ...trunk.map(([to, law, turned], i) => ({ ends: [i + 1, to % (i + 1)], law, turned })),
          ...loops.filter(([a, b]) => a !== b).map(([a, b, law]) => ({ ends: [a, b], law, turned: false })),
        ]
        return {
          nodes: Array.from({ length: count }, (_, i) => {
            const pressure = fixedAt.get(i)
            const outflow = takenAt.get(i) ?? 0
            return pressure === undefined ? { id: `n${i}`, outflow } : { id: `n${i}`, pressure }
          }),
          links: ends.map(({ ends: [one = 0, other = 0], law, turned }, i) => ({
            id: `l${i}`,
            from: turned ? one : other,
            to: turned ? other : one,
            law,
          })),
        }
      })
  })

const dropOf = (law: Law, flow: number) => {
  const into = { drop: Number.NaN, slope: Number.NaN }
  law(flow, into)
  return into
}

const largest = (values: Float64Array) => Math.max(...values.map(Math.abs), 1e-12)

function solved(net: Net): NetSolution {
  const solution = solveNet(prepareNet(net))
  expect(solution.converged, `worst ${solution.worst}, off by ${solution.residual} m³/s`).toBe(true)
  return solution
}

/** How far a solution misses mass at its nodes and the laws of its links, in parts of what is allowed. */
function missed(net: Net, { flows, pressures }: NetSolution): number {
  const allowed = 1e-9 * largest(flows) + 2e-13
  const balance = net.nodes.map((node) => -(node.outflow ?? 0))
  for (const [i, { from, to }] of net.links.entries()) {
    balance[from] = (balance[from] ?? 0) - (flows[i] ?? 0)
    balance[to] = (balance[to] ?? 0) + (flows[i] ?? 0)
  }
  const masses = net.nodes.map((node, i) =>
    node.pressure === undefined ? Math.abs(balance[i] ?? Number.NaN) / allowed : 0,
  )
  const energies = net.links.map(({ from, to, law }, i) => {
    const { drop, slope } = dropOf(law, flows[i] ?? Number.NaN)
    const [start, end] = [pressures[from] ?? Number.NaN, pressures[to] ?? Number.NaN]
    const rounding = 8 * Number.EPSILON * (Math.abs(start) + Math.abs(end))
    return Math.abs(start - end - drop) / (Math.max(slope, 1e3) * allowed + rounding)
  })
  return Math.max(...masses, ...energies)
}

test('from cold, nets of any elements with kinks in their laws converge, with mass and energy kept', () => {
  fc.assert(
    fc.property(nets(elements), (net) => {
      expect(missed(net, solved(net))).toBeLessThanOrEqual(1)
    }),
  )
})

test('so do nets from which fuel is taken and into which it is fed', () => {
  // Not behind a shut valve: its leakage would pass the flow at pressures without sense.
  const open = nets(fc.oneof(pipes, filters, squeezes), 2e-4)
  fc.assert(
    fc.property(open, (net) => {
      expect(missed(net, solved(net))).toBeLessThanOrEqual(1)
    }),
  )
})

test('energy around any loop: what is lost along one way is lost along every other', () => {
  fc.assert(
    fc.property(
      fc.array(fc.array(elements, { minLength: 1, maxLength: 4 }), { minLength: 2, maxLength: 5 }),
      decades(1e2, 1e6),
      (ways, rise) => {
        const nodes: { id: string; pressure?: number }[] = [
          { id: 'a', pressure: rise },
          { id: 'b', pressure: 0 },
        ]
        const links: Link[] = []
        for (const [w, way] of ways.entries())
          for (const [i, law] of way.entries()) {
            const from = i === 0 ? 0 : nodes.length - 1
            if (i < way.length - 1) nodes.push({ id: `${w}-${i}` })
            links.push({ id: `${w}-${i}`, from, to: i < way.length - 1 ? nodes.length - 1 : 1, law })
          }
        const { flows } = solved({ nodes, links })
        let place = 0
        for (const way of ways) {
          let sum = 0
          let allowed = 1e-9 * rise
          for (const law of way) {
            const { drop, slope } = dropOf(law, flows[place++] ?? Number.NaN)
            sum += drop
            allowed += Math.max(slope, 1e3) * (2e-9 * largest(flows) + 2e-13)
          }
          expect(Math.abs(sum - rise)).toBeLessThanOrEqual(allowed)
        }
      },
    ),
  )
})

const passive = fc.oneof(pipes, filters, springValves, checkValves)

test('no flow without a difference', () => {
  fc.assert(
    fc.property(nets(passive), between(-5e4, 8e5), (net, level) => {
      const still: Net = {
        links: net.links,
        nodes: net.nodes.map(({ id, pressure }) =>
          pressure === undefined ? { id } : { id, pressure: level },
        ),
      }
      const { flows } = solved(still)
      for (const flow of flows) expect(Math.abs(flow)).toBeLessThanOrEqual(SEEP)
    }),
  )
})

test('like branches share evenly, whatever stands before and behind them', () => {
  fc.assert(
    fc.property(
      passive,
      passive,
      elements,
      passive,
      fc.integer({ min: 2, max: 16 }),
      decades(1e3, 1e6),
      (inlet, outlet, before, behind, count, pressure) => {
        const nodes = [{ id: 'high', pressure }, { id: 'in' }, { id: 'out' }, { id: 'low', pressure: 0 }]
        const middles = Array.from({ length: count }, (_, i) => ({ id: `m${i}` }))
        const links: Link[] = [
          { id: 'before', from: 0, to: 1, law: before },
          { id: 'behind', from: 2, to: 3, law: behind },
          ...middles.flatMap((_, i) => [
            { id: `a${i}`, from: 1, to: 4 + i, law: inlet },
            { id: `b${i}`, from: 4 + i, to: 2, law: outlet },
          ]),
        ]
        const { flows } = solved({ nodes: [...nodes, ...middles], links })
        const share = (flows[0] ?? Number.NaN) / count
        for (let i = 0; i < count; i++)
          expect(Math.abs((flows[2 + 2 * i] ?? Number.NaN) - share)).toBeLessThanOrEqual(
            2e-9 * largest(flows) + SEEP,
          )
      },
    ),
  )
})

test('more resistance in a series branch never raises its flow', () => {
  fc.assert(
    fc.property(nets(elements), fc.nat(), decades(1e4, 1e9), (net, place, more) => {
      const chosen = place % net.links.length
      const before = solved(net)
      const added = leakLaw(1 / more)
      const links = net.links.map((link, i) => {
        if (i !== chosen) return link
        const law: Law = (flow, into) => {
          added(flow, into)
          const { drop, slope } = into
          link.law(flow, into)
          into.drop += drop
          into.slope += slope
        }
        return { ...link, law }
      })
      const after = solved({ ...net, links })
      const slack = 2e-9 * Math.max(largest(before.flows), largest(after.flows)) + SEEP
      const [was, is] = [before.flows[chosen] ?? Number.NaN, after.flows[chosen] ?? Number.NaN]
      expect(Math.abs(is)).toBeLessThanOrEqual(Math.abs(was) + slack)
    }),
  )
})

test('the order of nodes and links changes nothing', () => {
  fc.assert(
    fc.property(nets(elements), (net) => {
      const last = net.nodes.length - 1
      const turned: Net = {
        nodes: net.nodes.toReversed(),
        links: net.links
          .map((link) => ({ ...link, from: last - link.from, to: last - link.to }))
          .toReversed(),
      }
      const [one, other] = [solved(net), solved(turned)]
      const slack = 2e-9 * largest(one.flows) + SEEP
      for (const [i, flow] of one.flows.entries())
        expect(Math.abs(flow - (other.flows[net.links.length - 1 - i] ?? Number.NaN))).toBeLessThanOrEqual(
          slack,
        )
    }),
  )
})
