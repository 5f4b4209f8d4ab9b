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

/** What is shown, with how it is written: by what its contrast is judged. */
const remember = (page: Page) =>
  page.evaluate(() => {
    const look = (element: Element) => {
      const { color, backgroundColor, fontSize, fontWeight } = getComputedStyle(element)
      return [color, backgroundColor, fontSize, fontWeight].join()
    }
    const shown = new Map<Element, string>()
    for (const element of document.querySelectorAll('body *'))
      if (element.checkVisibility()) shown.set(element, look(element))
    Object.assign(window, { shown, look })
  })

/** Marks what is shown and was not when it was remembered, or was written otherwise; how much that is. */
const markNew = (page: Page) =>
  page.evaluate(() => {
    const { shown, look } = window as unknown as {
      shown: Map<Element, string>
      look: (element: Element) => string
    }
    const all = [...document.querySelectorAll('body *')].filter((element) => element.checkVisibility())
    const appeared = all.filter((element) => shown.get(element) !== look(element))
    for (const element of appeared) element.toggleAttribute('data-new', true)
    return appeared.length
  })

const background = (page: Page) => page.evaluate(() => getComputedStyle(document.body).backgroundColor)

describe('every page kind', () => {
  it.each(onePageOfEachKind())(
    '/%s light, dark and on a phone: no accessibility violation, no fault',
    async (path) => {
      const { page, context, faults } = await site.open(path, { colorScheme: 'light' })
      expect(await page.locator('iframe').count()).toBe(0)
      expect(await violations(page), 'light').toEqual([])
      await remember(page)
      expect(await sideways(page), 'the page scrolls sideways').toBeLessThanOrEqual(0)

      // The dark page differs in its colours only.
      const light = await background(page)
      await page.emulateMedia({ colorScheme: 'dark' })
      expect(await background(page)).not.toBe(light)
      expect(await violations(page, 'colours'), 'dark').toEqual([])

      // On a phone other parts are shown, in other places. What had its colours looked at keeps them: to look at
      // colours takes longer than all else.
      await page.emulateMedia({ colorScheme: 'light' })
      await page.setViewportSize(PHONE)
      expect(await violations(page, 'all but colours'), 'on a phone').toEqual([])
      // Axe refuses to look at nothing.
      const ofNew = (await markNew(page)) > 0 ? await violations(page, 'colours', '[data-new]') : []
      expect(ofNew, 'colours on a phone').toEqual([])
      expect(await sideways(page), 'the page scrolls sideways on a phone').toBeLessThanOrEqual(0)

      expect(faults).toEqual([])
      await context.close()
    },
    // The list of all pages has thousands of elements, each looked at three times.
    120_000,
  )
})
