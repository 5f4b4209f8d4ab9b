import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { PHONE, sideways, violations } from './axe.ts'
import { onePageOfEachKind } from './pages.ts'
import { serveSite, type Site } from './site.ts'

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

const background = (page: Page) => page.evaluate(() => getComputedStyle(document.body).backgroundColor)

describe('every page kind', () => {
  it.each(onePageOfEachKind())(
    '/%s light, dark and on a phone: no accessibility violation, no fault',
    async (path) => {
      const { page, context, faults } = await site.open(path, { colorScheme: 'light' })
      expect(await page.locator('iframe').count()).toBe(0)
      expect(await violations(page), 'light').toEqual([])
      expect(await sideways(page), 'the page scrolls sideways').toBeLessThanOrEqual(0)

      // The dark page differs in its colours only.
      const light = await background(page)
      await page.emulateMedia({ colorScheme: 'dark' })
      expect(await background(page)).not.toBe(light)
      expect(await violations(page, 'colours'), 'dark').toEqual([])

      // On a phone other parts are shown, in other places.
      await page.emulateMedia({ colorScheme: 'light' })
      await page.setViewportSize(PHONE)
      expect(await violations(page), 'on a phone').toEqual([])
      expect(await sideways(page), 'the page scrolls sideways on a phone').toBeLessThanOrEqual(0)

      expect(faults).toEqual([])
      await context.close()
    },
    // The list of all pages has thousands of elements, each looked at three times.
    120_000,
  )
})
