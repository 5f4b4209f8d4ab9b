// What a keystroke costs in the browser, from the input event to the laid-out page, on the pages of the
// largest and the slowest calculators: as a ratio to the same event in a field whose handler does nothing, and against one frame of the
// screen. Prints a table, the slowest first; asserts nothing. Needs a built site in dist.
import { preview } from 'astro'
import { chromium, type Page } from 'playwright-core'
import { catalogue } from '../../calculators/catalogue/index.ts'
import { findChromium } from '../tools/chromium.mjs'

const FRAME_MS = 1000 / 60
const KEYSTROKES = 15
/** Calculators measured: the largest, and those whose method is the slowest by the table of results. */
const LARGEST = 4
const SLOWEST = ['tank-temperature', 'energy-content', 'filter-life']

interface Cost {
  readonly id: string
  readonly fields: number
  readonly typical: number
  readonly slowest: number
  readonly empty: number
}

/** Runs in the page: milliseconds of keystrokes in every field of the calculator, and of those in an idle field. */
async function costsInPage(keystrokes: number) {
  const form = document.querySelector('calculator-form')
  const fields = [...(form?.querySelectorAll<HTMLInputElement>('.calculator-given input[type="text"]') ?? [])]
    // A field that is folded away or does not count is not typed into.
    .filter((field) => field.name !== '' && !field.disabled && field.offsetParent !== null)
  const idle = document.createElement('input')
  idle.addEventListener('input', () => {})
  form?.append(idle)
  // Preact renders in a microtask or after the next timer; a message arrives after both, sooner than a frame.
  const channel = new MessageChannel()
  channel.port1.start()
  const turn = () =>
    new Promise<void>((done) => {
      channel.port1.addEventListener('message', () => done(), { once: true })
      channel.port2.postMessage(null)
    })
  const one = async (field: HTMLInputElement, text: string): Promise<number> => {
    const start = performance.now()
    field.value = text
    field.dispatchEvent(new Event('input', { bubbles: true }))
    await turn()
    // Asking for a size makes the browser lay the new page out.
    document.body.getBoundingClientRect()
    return performance.now() - start
  }
  const median = (times: number[]) => times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN
  const many = async (field: HTMLInputElement): Promise<number> => {
    const before = field.value
    const times: number[] = []
    for (let stroke = 0; stroke < keystrokes; stroke++)
      times.push(await one(field, stroke % 2 ? before : `${before}0`))
    await one(field, before)
    return median(times)
  }
  await many(idle)
  for (const field of fields) await many(field)
  const each: number[] = []
  for (const field of fields) each.push(await many(field))
  return {
    fields: fields.length,
    typical: median([...each]),
    slowest: Math.max(...each),
    empty: await many(idle),
  }
}

async function costOf(page: Page, address: string, id: string): Promise<Cost> {
  await page.goto(address)
  await page.locator('calculator-form').scrollIntoViewIfNeeded()
  await page.locator('.calculator-actions[data-ready="true"]').waitFor()
  return { id, ...(await page.evaluate(costsInPage, KEYSTROKES)) }
}

const server = await preview({
  root: process.cwd(),
  server: { port: 0, host: '127.0.0.1' },
  logLevel: 'error',
})
const browser = await chromium.launch({
  executablePath: findChromium() ?? '',
  args: ['--no-sandbox', '--disable-quic'],
})
const page = await browser.newPage({ viewport: { width: 1366, height: 768 }, serviceWorkers: 'block' })
const costs: Cost[] = []
const sizes = await Promise.all(
  Object.entries(catalogue).map(async ([id, load]) => ({
    id,
    inputs: Object.keys((await load()).inputs).length,
  })),
)
const largest = sizes.sort((a, b) => b.inputs - a.inputs).slice(0, LARGEST)
for (const id of [...largest.map((size) => size.id), ...SLOWEST])
  costs.push(await costOf(page, `http://127.0.0.1:${server.port}/calculators/${id}/`, id))
await browser.close()
await server.stop()

const inFrames = (milliseconds: number) => `${(milliseconds / FRAME_MS).toFixed(2).padStart(5)} frames`
console.log('\nOne keystroke, to the laid-out page: median over fields, and the slowest field')
for (const { id, fields, typical, slowest, empty } of costs.sort((a, b) => b.slowest - a.slowest))
  console.log(
    `${id.padEnd(34)} ${String(fields).padStart(2)} fields   ${inFrames(typical)}   slowest ${inFrames(slowest)}, ` +
      `${slowest.toFixed(1)} ms, ${(slowest / empty).toFixed(0)} × an empty handler (${empty.toFixed(2)} ms)`,
  )
