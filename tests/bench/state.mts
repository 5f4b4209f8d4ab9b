// What a whole state of the PQ-12 costs, with heat, gas and engine at rest together, as a multiple of one bare solve of
// its net from no flow, and what model and solver weigh beside EPANET. Prints figures; asserts nothing.
import { gzipSync } from 'node:zlib'
import { build } from 'esbuild'
import { networkOf } from '../../calculators/circuit/circuit-net.ts'
import { comeToRest } from '../../calculators/circuit/come-to-rest.ts'
import { linkLaws } from '../../calculators/circuit/link-laws.ts'
import { setFixedPressures, situationOf } from '../../calculators/circuit/situation.ts'
import { solveCircuit } from '../../calculators/circuit/solve-circuit.ts'
import { startIn } from '../../calculators/circuit/starts.ts'
import { solveNet } from '../../calculators/hydraulics/network/index.ts'
import { conditionsOf, modelOf, rested } from '../unit/circuit-model/shipped.ts'

const CALLS = 100
const BATCHES = 20

/** Least time of a call [µs] among several batches: other work on the machine only adds. */
function leastTime(call: () => void): number {
  const times = Array.from({ length: BATCHES }, () => {
    const start = performance.now()
    for (let i = 0; i < CALLS; i++) call()
    return (performance.now() - start) / CALLS
  })
  return Math.min(...times) * 1000
}

const model = modelOf('pq-12')
for (const state of ['priming', 'idle', 'part', 'full'] as const) {
  const conditions = conditionsOf(model, state)
  rested(solveCircuit(model, conditions))
  const read = situationOf(model, conditions, { parameters: [], conditions: {} })
  if (!read.ok) throw new Error(read.reason)
  const rest = comeToRest(read.situation, startIn(model, state))
  if ('ok' in rest) throw new Error(rest.reason)
  const { net } = networkOf(read.situation)
  const pressures = new Float64Array(net.net.nodes.length)
  setFixedPressures(read.situation, conditions.airPressure, pressures)
  const laws = linkLaws(read.situation, rest.fields, new Float64Array(model.links.length))
  const bare = leastTime(() => solveNet(net, { laws, pressures }))
  const whole = leastTime(() => rested(solveCircuit(model, conditions)))
  console.log(
    `PQ-12, ${state.padEnd(8)} whole state ${whole.toFixed(0).padStart(5)} µs, one bare solve of its ${model.links.length} links ` +
      `${bare.toFixed(0).padStart(4)} µs: ${(whole / bare).toFixed(1)} bare solves`,
  )
}

async function compressed(contents: string): Promise<number> {
  const bundle = await build({
    stdin: { contents, resolveDir: process.cwd(), loader: 'ts' },
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    platform: 'browser',
  })
  return gzipSync(bundle.outputFiles[0]?.contents ?? '', { level: 9 }).length
}

const ours = await compressed(
  `export { readCircuit } from './calculators/circuit/read-model.ts'
   export { solveCircuit } from './calculators/circuit/solve-circuit.ts'
   export { bendCircuit } from './calculators/faults/bend-circuit.ts'`,
)
const theirs = await compressed(`export * from 'epanet-js'`)
console.log(
  `Model, faults and solver: ${(ours / 1000).toFixed(1)} kB compressed; EPANET ${(theirs / 1000).toFixed(1)} kB: ` +
    `ratio ${(ours / theirs).toFixed(3)}`,
)
