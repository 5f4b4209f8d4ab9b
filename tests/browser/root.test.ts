import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { builtPages } from './pages.ts'
import { serveSite, type Site } from './site.ts'

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

describe('the site at the root of an address', () => {
  it.each(builtPages())('/%s opens without a fault', async (path) => {
    const { page, context, faults } = await site.open(path)
    await page.waitForLoadState('networkidle')
    expect(await page.locator('h1').count()).toBe(1)
    expect(faults).toEqual([])
    await context.close()
  })
})
