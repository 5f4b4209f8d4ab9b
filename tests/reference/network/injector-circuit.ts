import { filterLaw } from '../../../calculators/hydraulics/elements/filter.ts'
import { pumpLaw } from '../../../calculators/hydraulics/elements/pump.ts'
import { springValveLaw } from '../../../calculators/hydraulics/elements/spring-valve.ts'
import type { Law } from '../../../calculators/hydraulics/network/index.ts'
import { displacedFlow } from '../../../calculators/hydraulics/slip.ts'
import type { Pipe } from '../../../calculators/hydraulics/pipe.ts'
import type { Case, Part, Point } from './case.ts'

const FUEL = { density: 840, kinematicViscosity: 3e-6 }
const ROUGHNESS = 4.5e-5

const pipe = (length: number, bore: number, minorLosses = 0): Pipe => ({
  length,
  bore,
  roughness: ROUGHNESS,
  minorLosses,
})

/**
 * A spring valve. Ours gets the whole law with its kinks; on these EPANET, which does not damp such curves, goes to and
 * fro without end, so it gets the branch on which the valve works here: seat leakage, or opening and wide open.
 */
function valve(state: 'open' | 'shut', cracking: number, override: number, fullFlow: number) {
  // A seat of 0.2 % leakage: EPANET takes every flow through a curve as 1e-6 ft³/s at least.
  const leakage = (2e-3 * fullFlow) / cracking
  const law = springValveLaw(
    { cracking, override, fullFlow, leakage, stuckOpen: 0, stuckShut: false },
    FUEL,
  )
  const opens = leakage * cracking
  const full = fullFlow + leakage * (cracking + override)
  const wide = Array.from({ length: 40 }, (_, i) => full * 1.02 ** i)
  if (state === 'shut') return { kind: 'curve' as const, law, flows: [0, opens], first: 0 }
  return { kind: 'curve' as const, law, flows: [opens, ...wide], first: fullFlow / 2 }
}

const evenly = (most: number, pieces: number) => Array.from({ length: pieces + 1 }, (_, i) => (most * i) / pieces)

/**
 * An invented return-regulated circuit with any number of injectors: tank, strainer, pump with relief valve, two filters,
 * bypass valve, supply header, injectors that burn a part, return header, back-pressure valve and return line.
 * @param count of injectors
 * @param plugging resistance of the secondary filter's element over that when clean; at 12 the bypass valve is open
 */
export function injectorCircuit(count: number, plugging = 1): Case {
  const each = 3e-5
  const total = each * count
  // Headers and lines grow with the flow, so that speeds stay alike.
  const bore = 0.02 * Math.sqrt(count / 12)
  const strainer = filterLaw({ element: 2e9 / count, housing: 1.5e9 / count ** 2 }, 1, FUEL)
  const primary = filterLaw({ element: 1.5e11 / count, housing: 1.2e10 / count ** 2 }, 1, FUEL)
  const secondary = filterLaw({ element: 4e11 / count, housing: 1.2e10 / count ** 2 }, plugging, FUEL)
  const curve = (law: Law) => ({ kind: 'curve' as const, law, flows: evenly(1.6 * total, 50) })
  const pump = pumpLaw(
    { displacement: (1.1 * total) / 24, speed: 24 * 2 * Math.PI, slip: 1e-15 * count, liquidShare: 1 },
    FUEL,
  )
  const most = displacedFlow((1.1 * total) / 24, 24 * 2 * Math.PI)
  const points: Point[] = [
    { id: 'tank', pressure: 0 },
    { id: 'strainer-in', height: 0.5 },
    { id: 'pump-in', height: 0.5 },
    { id: 'pump-out', height: 0.5 },
    { id: 'primary-in', height: 1.2 },
    { id: 'primary-out', height: 1.2 },
    { id: 'secondary-in', height: 1.2 },
    { id: 'secondary-out', height: 1.2 },
    { id: 'relief-out', height: 0.5 },
    { id: 'bypass-out', height: 1.2 },
    { id: 'valve-in', height: 1.5 },
    { id: 'valve-out', height: 1.5 },
    { id: 'return', height: 0.6 },
  ]
  const parts: Part[] = [
    { id: 'suction', from: 'tank', to: 'strainer-in', kind: 'pipe', pipe: pipe(3, 1.6 * bore, 4) },
    { id: 'strainer', from: 'strainer-in', to: 'pump-in', ...curve(strainer) },
    { id: 'pump', from: 'pump-in', to: 'pump-out', kind: 'pump', law: pump, flows: [0.6, 0.7, 0.8, 0.9, 1].map((s) => s * most) },
    { id: 'relief', from: 'pump-out', to: 'relief-out', ...valve('shut', 9e5, 1e5, total) },
    { id: 'relief-line', from: 'relief-out', to: 'tank', kind: 'pipe', pipe: pipe(2, bore, 3) },
    { id: 'delivery', from: 'pump-out', to: 'primary-in', kind: 'pipe', pipe: pipe(4, bore, 6) },
    { id: 'primary', from: 'primary-in', to: 'primary-out', ...curve(primary) },
    { id: 'between', from: 'primary-out', to: 'secondary-in', kind: 'pipe', pipe: pipe(1.5, bore, 3) },
    { id: 'secondary', from: 'secondary-in', to: 'secondary-out', ...curve(secondary) },
    { id: 'bypass', from: 'secondary-in', to: 'bypass-out', ...valve(plugging > 1 ? 'open' : 'shut', 5.5e5, 6e4, total) },
    { id: 'bypass-line', from: 'bypass-out', to: 'return', kind: 'pipe', pipe: pipe(2, bore, 4) },
    { id: 'to-header', from: 'secondary-out', to: 's1', kind: 'pipe', pipe: pipe(2, bore, 4) },
    { id: 'back-pressure', from: 'valve-in', to: 'valve-out', ...valve('open', 2.4e5, 4e4, total) },
    { id: 'from-header', from: 'r1', to: 'valve-in', kind: 'pipe', pipe: pipe(1, bore, 2) },
    { id: 'down', from: 'valve-out', to: 'return', kind: 'pipe', pipe: pipe(2, bore, 3) },
    { id: 'return-line', from: 'return', to: 'tank', kind: 'pipe', pipe: pipe(5, 1.3 * bore, 5) },
  ]
  for (let i = 1; i <= count; i++) {
    points.push(
      { id: `s${i}`, height: 1.6 },
      { id: `i${i}`, height: 1.6, outflow: (0.25 + 0.02 * (i % 3)) * each },
      { id: `r${i}`, height: 1.6 },
    )
    if (i > 1)
      parts.push(
        { id: `supply${i}`, from: `s${i - 1}`, to: `s${i}`, kind: 'pipe', pipe: pipe(0.4, 1.2 * bore) },
        { id: `gather${i}`, from: `r${i}`, to: `r${i - 1}`, kind: 'pipe', pipe: pipe(0.4, 1.2 * bore) },
      )
    parts.push(
      { id: `in${i}`, from: `s${i}`, to: `i${i}`, kind: 'pipe', pipe: pipe(0.4, 0.0035, 2.5) },
      { id: `out${i}`, from: `i${i}`, to: `r${i}`, kind: 'pipe', pipe: pipe(0.4, 0.003, 2.5) },
    )
  }
  return { name: `circuit with ${count} injectors${plugging > 1 ? ', secondary filter plugged, bypass open' : ''}`, fuel: FUEL, points, parts }
}
