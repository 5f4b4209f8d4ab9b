// What a calculation costs, as a ratio to one unit conversion by mathjs in the same run, so that the figures mean
// the same on every machine. Prints a table; asserts nothing.
import { existsSync } from 'node:fs'
import { cpus } from 'node:os'
import { create, unitDependencies } from 'mathjs'
import { run, runPlain } from '../../calculators/calculator/run.ts'
import { readCase } from '../../calculators/calculator/cases.ts'
import { catalogue } from '../../calculators/catalogue/index.ts'
import type { InputValue } from '../../calculators/calculator/types.ts'

/** Short timings are batched until a batch takes this long, since clocks tick coarsely. */
const BATCH_MS = 50
const BATCHES = 5

/** Milliseconds of one call, the median of several batches after a warm-up. */
function timeOf(call: () => unknown): number {
  let calls = 1
  for (let elapsed = 0; elapsed < BATCH_MS; calls *= 2) {
    const start = performance.now()
    for (let i = 0; i < calls; i++) call()
    elapsed = performance.now() - start
  }
  const times = Array.from({ length: BATCHES }, () => {
    const start = performance.now()
    for (let i = 0; i < calls; i++) call()
    return (performance.now() - start) / calls
  })
  return times.sort((a, b) => a - b)[Math.floor(BATCHES / 2)] ?? Number.NaN
}

const math = create({ ...unitDependencies })
const conversion = timeOf(() => math.unit(45, 'psi').toNumber('kPa'))

console.log(`Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? 'unknown'}`)
console.log(`One mathjs unit conversion: ${(conversion * 1000).toFixed(1)} µs; all else as multiples of it`)
for (const [id, load] of Object.entries(catalogue)) {
  const calculator = await load()
  const first = calculator.cases[0]
  const values: Readonly<Record<string, InputValue>> = first ? readCase(calculator, first) : {}
  const plain = timeOf(() => runPlain(calculator, values)) / conversion
  const whole = timeOf(() => run(calculator, values)) / conversion
  console.log(
    `${id.padEnd(34)} result ${plain.toFixed(1).padStart(7)}   with uncertainty ${whole.toFixed(1).padStart(8)}`,
  )
}

await import('./network.mts')
await import('./state.mts')

// Last, since it needs a built site.
if (existsSync('dist/index.html')) {
  await import('./keystroke.mts')
  await import('./slider.mts')
  await import('./finder.mts')
} else
  console.log(
    'No built site in dist: run `npm run build` first to measure keystrokes, sliders and the finder too.',
  )
