// What a moved slider costs on the bench of the PQ-12, from the input event to the new result painted: as a share of
// one frame of the screen, and as a ratio to an event whose handler does nothing. Counted is the time that the
// page's own thread spends working, so that a busy machine does not spoil it. Every slider in every state, in health
// and with a fault. Prints a table; asserts nothing. Needs a built site in dist.
import type { CDPSession, Page } from 'playwright-core'
import { operatingStates, type OperatingState } from '../../calculators/circuit/types.ts'
import { FRAME_MS, median, onBuiltSite, quantile } from './built-site.mts'

const MOVES = 15
const FAULT = 'strainer-cover-draws-air'

interface TraceEvent {
  readonly name: string
  readonly ts: number
  readonly tdur?: number
  readonly pid: number
  readonly tid: number
}

/** Working time of the page's own thread. [ms] */
interface Move {
  /** From the input event until the page holds the new result. */
  readonly script: number
  readonly layout: number
  /** All together, with the painting. */
  readonly all: number
}

/** Runs in the page: moves a slider back and forth, and marks when each move begins and when it is painted. */
async function moveInPage([selector, moves]: readonly [string, number]): Promise<void> {
  const pause = (milliseconds: number) => new Promise((done) => setTimeout(done, milliseconds))
  const painted = () =>
    new Promise<void>((done) =>
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel()
        port1.addEventListener('message', () => done(), { once: true })
        port1.start()
        port2.postMessage(undefined)
      }),
    )
  const slider = document.querySelector<HTMLInputElement>(selector)
  if (slider === null) throw new Error(`no slider ${selector}`)
  const middle = Number(slider.value)
  const [least, most, step] = [Number(slider.min), Number(slider.max), Number(slider.step)]
  for (let move = 0; move <= moves; move++) {
    // Whatever waits for a pause in the sliding has its turn first: it is not part of the next move.
    await pause(move === 0 ? 1200 : 60)
    // Two steps down, two up, and so on, never out at an end.
    const value = String(Math.min(most, Math.max(least, middle + (move % 2 === 0 ? -2 : 2) * step)))
    performance.mark('move-begins')
    await new Promise<void>((done) =>
      setTimeout(() => {
        slider.value = value
        slider.dispatchEvent(new Event('input', { bubbles: true }))
        done()
      }),
    )
    await painted()
    performance.mark('move-painted')
  }
}

/** What the page's own thread did between the marks of each move. [ms] */
function movesIn(events: readonly TraceEvent[]): Move[] {
  const begins = events.filter(({ name }) => name === 'move-begins')
  const ends = events.filter(({ name }) => name === 'move-painted')
  return begins.map((begin, place) => {
    const end = ends[place]?.ts ?? begin.ts
    const within = events.filter(
      ({ pid, tid, ts }) => pid === begin.pid && tid === begin.tid && ts >= begin.ts && ts <= end,
    )
    const sum = (...names: readonly string[]) =>
      within.reduce((total, { name, tdur = 0 }) => (names.includes(name) ? total + tdur : total), 0) / 1000
    // The timer's handler holds the event and all that the page does at once for it.
    return { script: sum('TimerFire'), layout: sum('UpdateLayoutTree', 'Layout'), all: sum('RunTask') }
  })
}

async function traced(session: CDPSession, work: () => Promise<void>): Promise<TraceEvent[]> {
  const events: TraceEvent[] = []
  const collect = ({ value }: { value: object[] }) => events.push(...(value as TraceEvent[]))
  session.on('Tracing.dataCollected', collect)
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: {
      includedCategories: ['devtools.timeline', 'disabled-by-default-devtools.timeline', 'blink.user_timing'],
    },
  })
  await work()
  const complete = new Promise((done) => session.once('Tracing.tracingComplete', done))
  await session.send('Tracing.end')
  await complete
  session.off('Tracing.dataCollected', collect)
  return events.toSorted((a, b) => a.ts - b.ts)
}

async function costOf(page: Page, session: CDPSession, selector: string): Promise<Move[]> {
  const events = await traced(session, () => page.evaluate(moveInPage, [selector, MOVES] as const))
  // The first move warms up.
  return movesIn(events).slice(1)
}

const { result: rows, version } = await onBuiltSite(async (page, site) => {
  const session = await page.context().newCDPSession(page)
  const found: { readonly state: OperatingState; readonly name: string; readonly moves: readonly Move[] }[] =
    []
  for (const state of operatingStates)
    for (const fault of [false, true]) {
      await page.goto(`${site}/bench/pq-12/?v=1&state=${state}${fault ? `&fault.${FAULT}=0.5` : ''}`)
      await page.locator('circuit-bench[data-awake] .bench-controls[data-ready="true"]').waitFor()
      const ids = await page
        .locator('.bench-controls .slider input[type="range"]')
        .evaluateAll((sliders) => sliders.map(({ id }) => id))
      for (const id of ids.filter((name) => !name.includes('-all-')))
        found.push({
          state,
          name: `${state}, ${fault ? 'a fault on' : 'in health'}, ${id.replace(/^bench-pq-12-(on-)?/, '')}`,
          moves: await costOf(page, session, `[id="${id}"]`),
        })
    }
  await page.evaluate(() => {
    const idle = Object.assign(document.createElement('input'), { id: 'idle', type: 'range', value: '50' })
    idle.addEventListener('input', () => {})
    document.querySelector('.bench-controls')?.append(idle)
  })
  return { found, idle: await costOf(page, session, '#idle') }
})

const empty = median(rows.idle.map(({ all }) => all))
console.log(
  `\nOne move of a slider of the bench to its result painted, in Chromium ${version}: working time of the page's ` +
    `thread; a frame is ${FRAME_MS.toFixed(1)} ms, an empty handler takes ${empty.toFixed(2)} ms with its painting`,
)

/** Times of moves in words: median, least, what nine of ten moves do not exceed. */
function inWords(moves: readonly Move[]): string {
  const of = (part: keyof Move) => median(moves.map((move) => move[part]))
  const times = moves.map((move) => move.all)
  const all = median(times)
  return (
    `median ${all.toFixed(1).padStart(5)} ms = ${(all / FRAME_MS).toFixed(2)} frames ` +
    `= ${(all / empty).toFixed(0).padStart(3)} × empty, least ${Math.min(...times)
      .toFixed(1)
      .padStart(5)} ms, ` +
    `p90 ${quantile(times, 0.9).toFixed(1).padStart(5)} ms; ` +
    `script ${of('script').toFixed(1)}, layout ${of('layout').toFixed(1)}, the rest is painting`
  )
}
for (const { name, moves } of rows.found) console.log(`${name.padEnd(62)} ${inWords(moves)}`)
for (const state of operatingStates) {
  const moves = rows.found.filter((row) => row.state === state).flatMap((row) => row.moves)
  console.log(`${`${state}, all ${moves.length} moves`.padEnd(62)} ${inWords(moves)}`)
}
