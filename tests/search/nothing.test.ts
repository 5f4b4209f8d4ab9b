import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { serveSite, type Site } from '../browser/site.ts'

let site: Site
let page: Page
beforeAll(async () => {
  site = await serveSite()
  page = (await site.open()).page
})
afterAll(() => site.close())

async function type(query: string): Promise<void> {
  await page.locator('.search-field').fill(query)
  await page.locator(`.search-results[data-query="${query}"]`).waitFor({ state: 'attached' })
}

describe('labelled queries with nothing to find', () => {
  it.each(['kubernetes', 'mozzarella', 'carburettor'])(
    '%s: says so, and leads to the list of all pages',
    async (query) => {
      await type(query)
      expect(await page.locator('.search-status').textContent()).toContain('Nothing found.')
      expect(await page.locator('.search-hit').count()).toBe(0)
      expect(await page.locator('.search-all').getAttribute('href')).toMatch(/\/all\/$/)
    },
  )

  it.each(['saxophone', 'xylophone'])(
    '%s: offers the words nearest in spelling, which are found',
    async (query) => {
      await type(query)
      expect(await page.locator('.search-status').textContent()).toContain('Nothing found.')
      const offered = page.locator('.search-results button')
      expect(await offered.count()).toBeGreaterThan(0)
      const word = (await offered.first().textContent()) ?? ''
      await offered.first().click()
      await page.locator(`.search-results[data-query="${word}"]`).waitFor({ state: 'attached' })
      expect(await page.locator('.search-hit').count()).toBeGreaterThan(0)
    },
  )
})
