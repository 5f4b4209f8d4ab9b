import type { BrowserContext } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { builtPages, onePageOfEachKind } from './pages.ts'
import { serveSite, type OpenPage, type Site } from './site.ts'

/** Tabs that may go on to the next page: a new one for each page would take longer than the page. */
const idle: OpenPage[] = []

let site: Site
let context: BrowserContext
beforeAll(async () => {
  site = await serveSite()
  context = await site.context()
})
afterAll(() => site.close())

/** One page of each kind and each fifth of the others; the links of all are followed in links.test.ts. */
const EVERY = 5
const paths = [
  ...new Set([...onePageOfEachKind(), ...builtPages().filter((_, place) => place % EVERY === 0)]),
]

describe('the site at the root of an address', () => {
  it.concurrent.each(paths)('/%s opens without a fault', async (path) => {
    const tab = idle.pop() ?? (await site.openIn(context))
    const { page, faults } = tab
    await page.goto(site.address(path))
    // What wakes later and fails is met on the tab's next page.
    await page.evaluate(() => new Promise((idle) => requestIdleCallback(idle)))
    expect(await page.locator('h1').count()).toBe(1)
    expect(faults).toEqual([])
    idle.push(tab)
  })

  it('keeps its offline edition without a fault', async () => {
    const keeping = await site.open('', { serviceWorkers: 'allow' })
    await keeping.page.evaluate(async () => void (await navigator.serviceWorker.ready))
    expect(keeping.faults).toEqual([])
    await keeping.context.close()
  })
})
