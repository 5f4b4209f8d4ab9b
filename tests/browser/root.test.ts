import type { BrowserContext } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { builtPages } from './pages.ts'
import { serveSite, type Site } from './site.ts'

let site: Site
let context: BrowserContext
beforeAll(async () => {
  site = await serveSite()
  context = await site.context()
})
afterAll(() => site.close())

describe('the site at the root of an address', () => {
  it.concurrent.each(builtPages())('/%s opens without a fault', async (path) => {
    const { page, faults } = await site.openIn(context, path)
    await page.waitForLoadState('networkidle')
    expect(await page.locator('h1').count()).toBe(1)
    expect(faults).toEqual([])
    await page.close()
  })

  it('keeps its offline edition without a fault', async () => {
    const keeping = await site.open('', { serviceWorkers: 'allow' })
    await keeping.page.evaluate(async () => void (await navigator.serviceWorker.ready))
    expect(keeping.faults).toEqual([])
    await keeping.context.close()
  })
})
