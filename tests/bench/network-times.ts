// What a solve of the same circuit with the same laws costs in our solver and in EPANET, its engine open; runs in Node
// and, bundled, in the browser.
import { AnalysisStatistic, InitHydOption, LinkProperty } from 'epanet-js'
import { pipeLaw } from '../../calculators/hydraulics/elements/pipe.ts'
import { prepareNet, solveNet } from '../../calculators/hydraulics/network/index.ts'
import { netOf } from '../reference/network/case.ts'
import { openEngine } from '../reference/network/engine.ts'
import { injectorCircuit } from '../reference/network/injector-circuit.ts'

/** The browser's clock ticks in tenths of a millisecond. */
const BATCH_MS = 4
const BATCHES = 40

export interface SolveTimes {
  readonly injectors: number
  readonly links: number
  readonly accuracy: string
  readonly ours: number
  readonly theirs: number
  readonly ratio: number
  readonly ourIterations: number
  readonly theirIterations: number
}

function batch(call: () => void, calls: number): number {
  const start = performance.now()
  for (let i = 0; i < calls; i++) call()
  return (performance.now() - start) / calls
}

/** The least of three, since other work on the machine makes a batch look longer than it is. */
function callsInABatch(call: () => void): number {
  let calls = 1
  for (let elapsed = 0; elapsed < BATCH_MS; calls *= 2)
    elapsed = Math.min(...[1, 2, 3].map(() => batch(call, calls) * calls))
  return calls
}

/** Least times [ms] of batches in turn: what other work on the machine adds to a time is never less than nothing. */
function inTurn(one: () => void, other: () => void): { one: number; other: number } {
  // Twice, since the first count still has the warming up in it.
  callsInABatch(one)
  callsInABatch(other)
  const [oneCalls, otherCalls] = [callsInABatch(one), callsInABatch(other)]
  const pairs = Array.from(
    { length: BATCHES },
    () => [batch(one, oneCalls), batch(other, otherCalls)] as const,
  )
  return {
    one: Math.min(...pairs.map(([time]) => time)),
    other: Math.min(...pairs.map(([, time]) => time)),
  }
}

/**
 * A fitting in the delivery line goes to and fro and all is solved anew, from the last solution ('warm') or from the
 * first flows ('cold'). Ours stops at a share of the largest flow, EPANET at a share of the sum of flows.
 */
export async function solveTimes(
  injectors: number,
  begin: 'warm' | 'cold',
  ourAccuracy: number,
  theirAccuracy: number,
): Promise<SolveTimes> {
  const circuit = injectorCircuit(injectors)
  const net = netOf(circuit)
  const prepared = prepareNet(net)
  const place = circuit.parts.findIndex(({ id }) => id === 'delivery')
  const part = circuit.parts[place]
  if (part?.kind !== 'pipe') throw new Error('delivery is a pipe')
  const heights = new Map(circuit.points.map(({ id, height = 0 }) => [id, height]))
  const rise = (heights.get(part.to) ?? 0) - (heights.get(part.from) ?? 0)
  const variants = [6, 7].map((minorLosses) =>
    net.links.map(({ law }, i) =>
      i === place ? pipeLaw({ ...part.pipe, minorLosses, rise }, circuit.fuel) : law,
    ),
  )
  let turn = 0
  let solution = solveNet(prepared)
  const ours = () => {
    const laws = variants[turn++ % 2] ?? []
    const start = begin === 'warm' ? { start: solution.flows } : {}
    solution = solveNet(prepared, { laws }, { ...start, into: solution, tolerance: ourAccuracy })
  }

  const project = await openEngine(circuit, theirAccuracy)
  project.initH(InitHydOption.NoSave)
  project.runH()
  const index = project.getLinkIndex('delivery')
  let other = 0
  const theirs = () => {
    if (begin === 'cold') project.initH(InitHydOption.InitFlow)
    project.setLinkValue(index, LinkProperty.MinorLoss, 6 + (other++ % 2))
    project.runH()
  }
  const times = inTurn(ours, theirs)
  if (!solution.converged) throw new Error(`not converged: ${solution.worst}`)
  const theirIterations = project.getStatistic(AnalysisStatistic.Iterations)
  project.closeH()
  project.close()
  return {
    injectors,
    links: net.links.length,
    accuracy: `${begin}, ours ${ourAccuracy}, EPANET ${theirAccuracy}`,
    ours: times.one * 1000,
    theirs: times.other * 1000,
    ratio: times.one / times.other,
    ourIterations: solution.iterations,
    theirIterations,
  }
}

export async function allTimes(): Promise<SolveTimes[]> {
  const rows: SolveTimes[] = []
  for (const [begin, ourAccuracy, theirAccuracy] of [
    ['warm', 1e-5, 1e-5],
    ['warm', 1e-9, 1e-5],
    ['warm', 1e-3, 1e-3],
    ['cold', 1e-3, 1e-3],
    ['cold', 1e-5, 1e-5],
    ['cold', 1e-9, 1e-5],
  ] as const)
    for (const injectors of [4, 12, 25, 50, 100, 200])
      rows.push(await solveTimes(injectors, begin, ourAccuracy, theirAccuracy))
  return rows
}
