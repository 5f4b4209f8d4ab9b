import { filterLaw } from '../../../calculators/hydraulics/elements/filter.ts'
import { pumpLaw } from '../../../calculators/hydraulics/elements/pump.ts'
import { springValveLaw } from '../../../calculators/hydraulics/elements/spring-valve.ts'
import type { Law } from '../../../calculators/hydraulics/network/index.ts'
import type { Pipe } from '../../../calculators/hydraulics/pipe.ts'
import type { Case, Part, Point } from './case.ts'
import { injectorCircuit } from './injector-circuit.ts'

/** All invented; sizes are those of the fuel circuit of a medium-speed engine. */
const FUEL = { density: 840, kinematicViscosity: 3e-6 }
const HEAVY = { density: 960, kinematicViscosity: 1.5e-4 }

const tube = (length: number, bore: number, minorLosses = 0, roughness = 4.5e-5): Pipe => ({
  length,
  bore,
  roughness,
  minorLosses,
})
const pipe = (id: string, from: string, to: string, size: Pipe): Part => ({ id, from, to, kind: 'pipe', pipe: size })
const fixed = (id: string, pressure: number, height = 0): Point => ({ id, pressure, height })

/** Lines through points of flow [m³/s] and rise [Pa], falling: the head curve of a centrifugal pump. */
function headCurve(points: readonly (readonly [number, number])[]): Law {
  return (flow, into) => {
    let place = 1
    while (place < points.length - 1 && flow > (points[place]?.[0] ?? 0)) place++
    const [[q0, p0], [q1, p1]] = [points[place - 1] ?? [0, 0], points[place] ?? [1, 0]]
    into.slope = (p0 - p1) / (q1 - q0)
    into.drop = -p0 + into.slope * (flow - q0)
  }
}

const CURVE = [
  [0, 4.2e5],
  [2e-4, 4.0e5],
  [4e-4, 3.5e5],
  [6e-4, 2.6e5],
  [8e-4, 1.2e5],
] as const

const GEAR = { displacement: 2e-5, speed: 160, slip: 2e-14, liquidShare: 1 }
const GEAR_MOST = (GEAR.displacement * GEAR.speed) / (2 * Math.PI)

const holding = (cracking: number): Law =>
  springValveLaw(
    { cracking, override: 10, fullFlow: 1e-3, leakage: 1e-15, stuckOpen: 0, stuckShut: false },
    FUEL,
  )

const backPressure = springValveLaw(
  { cracking: 2.4e5, override: 5e4, fullFlow: 4e-4, leakage: 1e-13, stuckOpen: 0, stuckShut: false },
  FUEL,
)
const wideOpen = 4e-4 + 1e-13 * 2.9e5

export const NETWORKS: readonly Case[] = [
  {
    name: 'one pipe, laminar',
    fuel: HEAVY,
    points: [fixed('a', 1e5), { id: 'b' }, fixed('c', 0)],
    parts: [pipe('p', 'a', 'b', tube(10, 0.02)), pipe('q', 'b', 'c', tube(5, 0.02))],
  },
  {
    name: 'one pipe, turbulent, with bends',
    fuel: FUEL,
    points: [fixed('a', 1e5), { id: 'b' }, fixed('c', 0)],
    parts: [pipe('p', 'a', 'b', tube(10, 0.025, 6)), pipe('q', 'b', 'c', tube(5, 0.025, 4))],
  },
  {
    name: 'one pipe between laminar and turbulent',
    fuel: FUEL,
    points: [fixed('a', 2.5e3), { id: 'b' }, fixed('c', 0)],
    parts: [pipe('p', 'a', 'b', tube(10, 0.02)), pipe('q', 'b', 'c', tube(5, 0.02))],
  },
  {
    name: 'three bores in series, nearly smooth to rough',
    fuel: FUEL,
    points: [fixed('a', 3e5), { id: 'b' }, { id: 'c' }, fixed('d', 0)],
    parts: [
      pipe('p', 'a', 'b', tube(4, 0.03, 2, 1e-8)),
      pipe('q', 'b', 'c', tube(3, 0.015, 3, 1e-5)),
      pipe('r', 'c', 'd', tube(6, 0.02, 5, 3e-4)),
    ],
  },
  {
    name: 'three pipes side by side, uphill',
    fuel: FUEL,
    points: [fixed('a', 2e5), { id: 'b', height: 3 }, { id: 'c', height: 5 }, fixed('d', 0, 6)],
    parts: [
      pipe('feed', 'a', 'b', tube(3, 0.025, 2)),
      pipe('one', 'b', 'c', tube(4, 0.01, 1)),
      pipe('two', 'b', 'c', tube(6, 0.015, 4)),
      pipe('three', 'b', 'c', tube(5, 0.02, 12)),
      pipe('out', 'c', 'd', tube(3, 0.02, 2)),
    ],
  },
  {
    name: 'a bridge of five pipes',
    fuel: FUEL,
    points: [fixed('high', 1.5e5), { id: 'left' }, { id: 'right' }, fixed('low', 0)],
    parts: [
      pipe('a', 'high', 'left', tube(3, 0.012)),
      pipe('b', 'left', 'low', tube(8, 0.02)),
      pipe('c', 'high', 'right', tube(4, 0.02)),
      pipe('d', 'right', 'low', tube(3, 0.012)),
      pipe('bridge', 'left', 'right', tube(2, 0.01, 2)),
    ],
  },
  {
    name: 'a ring of four with three takers',
    fuel: FUEL,
    points: [
      fixed('tank', 3e5),
      { id: 'a', outflow: 1e-4 },
      { id: 'b', outflow: 2e-4 },
      { id: 'c', outflow: 0.5e-4 },
    ],
    parts: [
      pipe('ta', 'tank', 'a', tube(5, 0.02, 2)),
      pipe('ab', 'a', 'b', tube(6, 0.015, 2)),
      pipe('bc', 'b', 'c', tube(4, 0.015, 2)),
      pipe('ct', 'c', 'tank', tube(7, 0.02, 2)),
    ],
  },
  {
    name: 'a tree of six takers at several heights, thick fuel',
    fuel: HEAVY,
    points: [
      fixed('tank', 2e5, 4),
      { id: 'm', height: 1 },
      ...[1, 2, 3, 4, 5, 6].map((i) => ({ id: `t${i}`, height: i / 2, outflow: 1e-5 * i })),
    ],
    parts: [
      pipe('main', 'tank', 'm', tube(8, 0.04, 3)),
      pipe('m1', 'm', 't1', tube(3, 0.03, 2)),
      pipe('m2', 'm', 't2', tube(3, 0.03, 2)),
      pipe('b3', 't1', 't3', tube(2, 0.025, 2)),
      pipe('b4', 't1', 't4', tube(2, 0.025, 2)),
      pipe('b5', 't2', 't5', tube(2, 0.025, 2)),
      pipe('b6', 't2', 't6', tube(2, 0.025, 2)),
    ],
  },
  {
    name: 'a grid of nine points, two supplies',
    fuel: FUEL,
    points: Array.from({ length: 9 }, (_, i) =>
      i === 0 ? fixed('g0', 2e5) : i === 8 ? fixed('g8', 1.2e5) : { id: `g${i}`, outflow: 3e-5 * (i % 3) },
    ),
    parts: Array.from({ length: 9 }, (_, i) => [
      ...(i % 3 < 2 ? [pipe(`x${i}`, `g${i}`, `g${i + 1}`, tube(2 + i / 4, 0.016, 1))] : []),
      ...(i < 6 ? [pipe(`y${i}`, `g${i}`, `g${i + 3}`, tube(3 - i / 4, 0.012, 1))] : []),
    ]).flat(),
  },
  {
    name: 'a gear pump with slip, lifting from a tank',
    fuel: FUEL,
    points: [fixed('tank', 0), { id: 'in', height: 1.2 }, { id: 'out', height: 1.2 }, fixed('header', 2.8e5, 2)],
    parts: [
      pipe('suction', 'tank', 'in', tube(4, 0.032, 5)),
      {
        id: 'pump',
        from: 'in',
        to: 'out',
        kind: 'pump',
        law: pumpLaw(GEAR, FUEL),
        flows: [0.2, 0.4, 0.6, 0.8, 1].map((share) => share * GEAR_MOST),
      },
      pipe('delivery', 'out', 'header', tube(5, 0.02, 6)),
    ],
  },
  {
    name: 'a centrifugal pump on its curve',
    fuel: FUEL,
    points: [fixed('tank', 0), { id: 'in' }, { id: 'out' }, fixed('header', 1.5e5, 3)],
    parts: [
      pipe('suction', 'tank', 'in', tube(2, 0.032, 3)),
      { id: 'pump', from: 'in', to: 'out', kind: 'pump', law: headCurve(CURVE), flows: CURVE.map(([q]) => q) },
      pipe('delivery', 'out', 'header', tube(8, 0.02, 6)),
    ],
  },
  {
    name: 'a check pipe that stays shut and one that opens',
    fuel: FUEL,
    points: [fixed('high', 1e5), { id: 'm' }, fixed('higher', 2e5), fixed('low', 0)],
    parts: [
      pipe('feed', 'high', 'm', tube(4, 0.015, 2)),
      { id: 'shut', from: 'm', to: 'higher', kind: 'check', pipe: tube(3, 0.02, 2) },
      { id: 'open', from: 'm', to: 'low', kind: 'check', pipe: tube(6, 0.015, 4) },
    ],
  },
  {
    name: 'a pressure-sustaining valve before a tank',
    fuel: FUEL,
    points: [fixed('supply', 4e5), { id: 'before' }, { id: 'behind' }, fixed('tank', 0)],
    parts: [
      pipe('feed', 'supply', 'before', tube(10, 0.012, 8)),
      { id: 'valve', from: 'before', to: 'behind', kind: 'sustaining', pressure: 2.5e5, law: holding(2.5e5), bore: 0.02 },
      // So wide that nothing is lost behind the valve: ours rides on that pressure, EPANET's does not.
      pipe('out', 'behind', 'tank', tube(0.1, 0.2)),
    ],
  },
  {
    name: 'a spring valve half open, pressure behind it',
    fuel: FUEL,
    points: [fixed('supply', 4e5), { id: 'before' }, { id: 'behind' }, fixed('tank', 0)],
    parts: [
      pipe('feed', 'supply', 'before', tube(8, 0.012, 5)),
      { id: 'valve', from: 'before', to: 'behind', kind: 'curve', law: backPressure, flows: [2.4e-8, wideOpen] },
      pipe('out', 'behind', 'tank', tube(6, 0.012, 4)),
    ],
  },
  {
    name: 'a spring valve wide open',
    fuel: FUEL,
    points: [fixed('supply', 8e5), { id: 'before' }, { id: 'behind' }, fixed('tank', 0)],
    parts: [
      pipe('feed', 'supply', 'before', tube(3, 0.016, 5)),
      {
        id: 'valve',
        from: 'before',
        to: 'behind',
        kind: 'curve',
        law: backPressure,
        flows: [2.4e-8, ...Array.from({ length: 80 }, (_, i) => wideOpen * 1.01 ** i)],
      },
      pipe('out', 'behind', 'tank', tube(3, 0.02, 4)),
    ],
  },
  {
    name: 'two filters side by side, one loaded',
    fuel: FUEL,
    points: [fixed('supply', 2e5), { id: 'before' }, { id: 'behind' }, fixed('tank', 0)],
    parts: [
      pipe('feed', 'supply', 'before', tube(4, 0.02, 5)),
      ...[1, 6].map(
        (loading): Part => ({
          id: `filter${loading}`,
          from: 'before',
          to: 'behind',
          kind: 'curve',
          law: filterLaw({ element: 3e10, housing: 6e8 }, loading, FUEL),
          flows: Array.from({ length: 101 }, (_, i) => i * 1e-5),
        }),
      ),
      pipe('out', 'behind', 'tank', tube(4, 0.02, 5)),
    ],
  },
  injectorCircuit(4),
  injectorCircuit(12),
  injectorCircuit(12, 12),
  injectorCircuit(50),
]
