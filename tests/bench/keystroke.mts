// What a keystroke costs in the browser, from the input event to the new result laid out on the page, on the pages
// of the largest and the slowest calculators: as a ratio to the same event in a field whose handler does nothing,
// and against one frame of the screen. Prints a table, the slowest first; asserts nothing. Needs a built site in
// dist.
import type { Page } from 'playwright-core'
import { catalogue } from '../../calculators/catalogue/index.ts'
import { FRAME_MS, onBuiltSite } from './built-site.mts'

/** Every field is typed into once a round: a moment in which the machine is busy spoils no field's median. */
const ROUNDS = 7
/** Calculators measured: the largest, and those whose method or whose ± takes longest. */
const LARGEST = 4
const SLOWEST = ['tank-temperature', 'energy-content', 'filter-life', 'valve-coefficient']

interface Cost {
  readonly id: string
  readonly fields: number
  readonly typical: number
  readonly slowest: number
  readonly slowestField: string
  readonly settled: number
  readonly empty: number
}

/** Runs in the page: milliseconds of keystrokes in every field of the calculator, and of those in an idle field. */
async function costsInPage(rounds: number): Promise<Omit<Cost, 'id'>> {
  const form = document.querySelector('calculator-form')
  const found = form?.querySelector('.calculator-found')
  const fields = [...(form?.querySelectorAll<HTMLInputElement>('.calculator-given input[type="text"]') ?? [])]
    // A field that is folded away or does not count is not typed into.
    .filter((field) => field.name !== '' && !field.disabled && field.offsetParent !== null)
  const idle = document.createElement('input')
  idle.addEventListener('input', () => {})
  form?.append(idle)
  const settled = async (): Promise<void> => {
    do await new Promise((done) => setTimeout(done, 20))
    while (found?.querySelector('[data-lagging="true"]'))
  }
  /** To the result laid out. Preact renders in a microtask, which has run when the next line is reached. */
  const one = async (field: HTMLInputElement, text: string): Promise<void> => {
    field.value = text
    field.dispatchEvent(new Event('input', { bubbles: true }))
    await Promise.resolve()
    await Promise.resolve()
    // Asking for a size makes the browser lay the new page out.
    document.body.getBoundingClientRect()
  }
  const median = (times: readonly number[]) =>
    times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN
  const before = fields.map((field) => field.value)
  const results = fields.map((): number[] => [])
  const wholes: number[] = []
  for (let round = 0; round <= rounds; round++)
    for (const [place, field] of fields.entries()) {
      const start = performance.now()
      await one(field, `${before[place]}0`)
      const time = performance.now() - start
      await settled()
      // The first round warms up.
      if (round > 0) {
        results[place]?.push(time)
        wholes.push(performance.now() - start)
      }
      await one(field, before[place] ?? '')
      await settled()
    }
  // The clock ticks in tenths of a millisecond, far longer than an empty handler takes.
  const BATCH = 500
  const empties: number[] = []
  for (let round = 0; round < rounds; round++) {
    const start = performance.now()
    for (let stroke = 0; stroke < BATCH; stroke++) await one(idle, stroke % 2 ? '1' : '10')
    empties.push((performance.now() - start) / BATCH)
  }
  const each = results.map(median)
  const slowest = Math.max(...each)
  return {
    fields: fields.length,
    typical: median(each),
    slowest,
    slowestField: fields[each.indexOf(slowest)]?.name ?? '',
    settled: median(wholes),
    empty: median(empties),
  }
}

async function costOf(page: Page, address: string, id: string): Promise<Cost> {
  await page.goto(address)
  await page.locator('calculator-form').scrollIntoViewIfNeeded()
  await page.locator('.calculator-actions[data-ready="true"]').waitFor()
  return { id, ...(await page.evaluate(costsInPage, ROUNDS)) }
}

const sizes = await Promise.all(
  Object.entries(catalogue).map(async ([id, load]) => ({
    id,
    inputs: Object.keys((await load()).inputs).length,
  })),
)
const largest = sizes.sort((a, b) => b.inputs - a.inputs).slice(0, LARGEST)
const { result: costs, version } = await onBuiltSite(async (page, site) => {
  const found: Cost[] = []
  for (const id of [...largest.map((size) => size.id), ...SLOWEST])
    found.push(await costOf(page, `${site}/calculators/${id}/`, id))
  return found
})

console.log(
  `\nOne keystroke to the new result laid out, in Chromium ${version}; a frame is ${FRAME_MS.toFixed(1)} ms`,
)
for (const { id, fields, typical, slowest, slowestField, settled, empty } of costs.toSorted(
  (a, b) => b.slowest - a.slowest,
))
  console.log(
    `${id.padEnd(24)} ${String(fields).padStart(2)} fields   median field ${typical.toFixed(1)} ms, ` +
      `worst ${slowest.toFixed(1)} ms = ${(slowest / FRAME_MS).toFixed(2)} frames ` +
      `= ${(slowest / empty).toFixed(0)} × an empty handler (${(empty * 1000).toFixed(0)} µs), ${slowestField}; ` +
      `with ± and chart ${settled.toFixed(0)} ms`,
  )
