// What an answer costs at the finder of causes, in Chromium with thirty observations told: until the causes have come
// back from the worker, until they are painted, and until the next check is there. In frames of the screen, and as
// multiples of one solve of the circuit in the same browser. Prints a table; asserts nothing. Needs a built site in dist.
import { loadavg } from 'node:os'
import { build } from 'esbuild'
import type { Page } from 'playwright-core'
import { unpackSignatures } from '../../calculators/diagnosis/index.ts'
import type { Observation } from '../../calculators/diagnosis/types.ts'
import { kindOf } from '../../calculators/quantity/kinds.ts'
import { allFuels, circuitFile, plantFile } from '../../calculators/terminal/content.ts'
import { knowledgeOf, packedSignaturesOf, signatureSource } from '../../calculators/terminal/knowledge.ts'
import { conditionsOf, modelOf } from '../unit/circuit-model/shipped.ts'
import { FRAME_MS, median, onBuiltSite } from './built-site.mts'
import { drawPlant } from './ranking-trials.ts'
import { observeAll, seeded } from './simulate.ts'

const CIRCUIT = 'pq-12'
const SEED = 2027
const TOLD = 30
const CHANGES = 12
const OPENED = 4

/** One question to the worker and what came of it. [ms] */
interface Answered {
  readonly asked: number
  causes: number
  painted: number
  next: number
}

/** Runs in the page before its own scripts: notes each question to the worker and each answer. */
function watchWorkers(): void {
  const kept: Answered[] = []
  Object.assign(globalThis, { answered: kept })
  const Plain = Worker
  Object.assign(globalThis, {
    Worker: class extends Plain {
      constructor(...all: ConstructorParameters<typeof Worker>) {
        super(...all)
        this.addEventListener('message', ({ data }: MessageEvent<Record<string, unknown>>) => {
          const of = kept.at(-1)
          if (of === undefined) return
          if ('next' in data) of.next = performance.now()
          if (!('causes' in data)) return
          of.causes = performance.now()
          requestAnimationFrame(() => setTimeout(() => (of.painted = performance.now())))
        })
      }
      override postMessage(message: unknown): void {
        kept.push({ asked: performance.now(), causes: 0, painted: 0, next: 0 })
        // A worker’s own has no target.
        // oxlint-disable-next-line unicorn/require-post-message-target-origin
        super.postMessage(message)
      }
    },
  })
}

const answers = (page: Page): Promise<Answered[]> =>
  page.evaluate(() => (globalThis as unknown as { answered: Answered[] }).answered)

async function settled(page: Page, count: number): Promise<void> {
  await page.waitForFunction(
    (least) => {
      const all = (globalThis as unknown as { answered: Answered[] }).answered
      return all.length >= least && (all.at(-1)?.next ?? 0) > 0 && (all.at(-1)?.painted ?? 0) > 0
    },
    count,
    { polling: 50 },
  )
}

/** The last question that was answered after the page was changed. */
async function change(page: Page, make: () => Promise<void>): Promise<Answered> {
  const before = (await answers(page)).length
  await make()
  await settled(page, before + 1)
  const last = (await answers(page)).at(-1)
  if (last === undefined) throw new Error('the worker was asked nothing')
  return last
}

/** What can be told of a plant, as the address of the finder tells it. */
function addressOf(observations: readonly Observation[]): string {
  const { signatures } = knowledgeOf(CIRCUIT)
  const query = new URLSearchParams({ v: '1' })
  for (const { id, state, value } of observations) {
    const kind = state && signatures.states[state].readings.find((one) => one.id === id)?.kind
    const unit = kind === undefined ? '' : kindOf(kind).siUnit
    query.set(`${id}.${state ?? ''}`, unit === '' || unit === '1' ? String(value) : `${value} ${unit}`)
  }
  return query.toString()
}

/** Milliseconds of one solve at full load in the page, the least of several. */
async function solveTime(page: Page): Promise<number> {
  const bundle = await build({
    stdin: {
      contents: `export { readCircuit } from './calculators/circuit/read-model.ts'
        export { solveCircuit } from './calculators/circuit/solve-circuit.ts'`,
      resolveDir: process.cwd(),
      loader: 'ts',
    },
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    globalName: 'model',
  })
  const circuit = circuitFile(CIRCUIT)
  const given = { circuit, setPoints: plantFile(circuit.plant).setPoints, fuels: allFuels() }
  const conditions = conditionsOf(modelOf(CIRCUIT), 'full')
  return page.evaluate<number>(`(() => { ${bundle.outputFiles[0]?.text ?? ''}
    const read = model.readCircuit(${JSON.stringify(given)})
    const conditions = ${JSON.stringify(conditions)}
    const times = Array.from({ length: 40 }, () => {
      const start = performance.now()
      for (let call = 0; call < 10; call++) model.solveCircuit(read.model, conditions)
      return (performance.now() - start) / 10
    })
    return Math.min(...times) })()`)
}

const knowledge = { ...knowledgeOf(CIRCUIT), signatures: unpackSignatures(packedSignaturesOf(CIRCUIT)) }
const plant = drawPlant(knowledge, signatureSource(CIRCUIT), ['priming', 'full'], 1, seeded(SEED))
const observations = observeAll(knowledge, plant, seeded(SEED)).slice(0, TOLD)
const [before = 0] = loadavg()

const { result, version } = await onBuiltSite(async (page, site) => {
  await page.addInitScript(watchWorkers)
  const opened: Answered[] = []
  for (let count = 0; count < OPENED; count++) {
    await page.goto('about:blank')
    await page.goto(`${site}/causes/?${addressOf(observations)}`)
    await settled(page, 1)
    opened.push(...(await answers(page)).slice(-1))
  }
  const accuracies = page.locator('summary', { hasText: 'How right the gauges are' })
  await accuracies.click()
  const accuracy = page.locator(
    '.gauges input[id*="header-gauge"][id*="accuracy" i], [id$="accuracy-header-gauge"]',
  )
  const anew: Answered[] = []
  for (let count = 0; count < OPENED; count++)
    anew.push(await change(page, () => accuracy.fill(String(8 + count))))
  const gauge = page.locator('#finder-secondary-drop-gauge-full')
  await page.locator('.states label', { hasText: 'Full load' }).click()
  const after: Answered[] = []
  for (let count = 0; count < CHANGES; count++)
    after.push(await change(page, () => gauge.fill(String(40 + count))))
  return { opened, anew, after, solve: await solveTime(page) }
})

const [later = 0] = loadavg()
console.log(
  `\nAn answer at the finder of causes, ${observations.length} observations told, in Chromium ${version}; a frame is ` +
    `${FRAME_MS.toFixed(1)} ms, one solve of the circuit ${result.solve.toFixed(2)} ms; load of the machine ` +
    `${before.toFixed(1)} to ${later.toFixed(1)}`,
)
const line = (name: string, all: readonly Answered[]): void => {
  for (const [what, until] of [
    ['causes back', 'causes'],
    ['painted', 'painted'],
    ['next check', 'next'],
  ] as const) {
    const times = all.map((one) => one[until] - one.asked)
    const [middle, least] = [median(times), Math.min(...times)]
    console.log(
      `${name.padEnd(46)} ${what.padEnd(12)} median ${middle.toFixed(0).padStart(5)} ms, least ` +
        `${least.toFixed(0).padStart(5)} ms = ${(least / FRAME_MS).toFixed(1).padStart(5)} frames = ` +
        `${(least / result.solve).toFixed(0).padStart(4)} solves`,
    )
  }
}
line('page opened, with what it rests on fetched', result.opened)
line('all of it anew, after another accuracy', result.anew)
line('one more answer', result.after)
