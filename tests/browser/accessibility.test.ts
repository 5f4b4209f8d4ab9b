import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { onePageOfEachKind } from './pages.ts'
import { serveSite, type Site } from './site.ts'

const PHONE = { width: 390, height: 844 }
const STANDARDS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']
const COLOUR = 'color-contrast'

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

/**
 * What axe finds wrong, by all rules of the standards or by one. No page has a frame, for which axe would open another
 * page, and nobody reads what was found right, which is most of what it would report.
 */
async function violations(page: Page, rule?: string): Promise<string[]> {
  const axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] })
  const found = await (rule === undefined ? axe.withTags(STANDARDS) : axe.withRules(rule)).analyze()
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`)
}

const background = (page: Page) => page.evaluate(() => getComputedStyle(document.body).backgroundColor)

const sideways = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

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
      expect(await violations(page, COLOUR), 'dark').toEqual([])

      // On a phone other parts are shown, in other places.
      await page.emulateMedia({ colorScheme: 'light' })
      await page.setViewportSize(PHONE)
      expect(await violations(page), 'on a phone').toEqual([])
      expect(await sideways(page), 'the page scrolls sideways on a phone').toBeLessThanOrEqual(0)

      expect(faults).toEqual([])
      await context.close()
    },
  )
})
