// Our solver against EPANET on the same circuit and laws, as a ratio, in Node and in Chromium, and how the time grows
// with the number of injectors. Prints tables; asserts nothing.
import { build } from 'esbuild'
import { chromium } from 'playwright-core'
import { findChromium } from '../tools/chromium.mjs'
import { allTimes, type SolveTimes } from './network-times.ts'

/** Power of the number of links with which the time grows, a straight line through logarithms. */
function growth(rows: readonly SolveTimes[]): number {
  const points = rows.map(({ links, ours }) => [Math.log(links), Math.log(ours)] as const)
  const mean = (of: (point: readonly [number, number]) => number) =>
    points.reduce((sum, point) => sum + of(point), 0) / points.length
  const [x, y] = [mean(([a]) => a), mean(([, b]) => b)]
  return mean(([a, b]) => (a - x) * (b - y)) / mean(([a]) => (a - x) ** 2)
}

function print(where: string, rows: readonly SolveTimes[]): void {
  console.log(`\nSolving a circuit against EPANET 2.3, ${where}; below 1 ours is the faster`)
  for (const [accuracy, group] of Map.groupBy(rows, (row) => row.accuracy)) {
    console.log(`${accuracy}: time grows with the links to the power ${growth(group).toFixed(2)}`)
    for (const row of group)
      console.log(
        `${String(row.injectors).padStart(5)} injectors ${String(row.links).padStart(4)} links   ` +
          `${row.ours.toFixed(1).padStart(8)} µs (${row.ourIterations})   EPANET ${row.theirs.toFixed(1).padStart(8)} µs ` +
          `(${row.theirIterations})   ratio ${row.ratio.toFixed(2)}`,
      )
  }
}

print(`Node ${process.version}`, await allTimes())

const bundle = await build({
  entryPoints: ['tests/bench/network-times.ts'],
  bundle: true,
  write: false,
  format: 'iife',
  globalName: 'network',
  platform: 'browser',
})
const browser = await chromium.launch({
  executablePath: findChromium() ?? '',
  args: ['--no-sandbox', '--disable-quic', '--disable-background-networking'],
})
const page = await browser.newPage()
await page.addScriptTag({ content: bundle.outputFiles[0]?.text ?? '' })
const rows = (await page.evaluate('network.allTimes()')) as SolveTimes[]
print(`Chromium ${browser.version()}`, rows)
await browser.close()
