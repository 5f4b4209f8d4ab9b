import { AxeBuilder } from '@axe-core/playwright'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { onePageOfEachKind } from './pages.ts'
import { serveSite, type Site } from './site.ts'

const PHONE = { width: 390, height: 844 }
const STANDARDS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

const looks = [
  { look: 'light', options: { colorScheme: 'light' as const } },
  { look: 'dark', options: { colorScheme: 'dark' as const } },
  { look: 'on a phone', options: { viewport: PHONE } },
]
const cases = onePageOfEachKind().flatMap((path) => looks.map((look) => ({ path, ...look })))

describe('every page kind', () => {
  it.each(cases)('/$path $look: no accessibility violation, no fault', async ({ path, options }) => {
    const { page, context, faults } = await site.open(path, options)
    const { violations } = await new AxeBuilder({ page }).withTags(STANDARDS).analyze()
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`)).toEqual(
      [],
    )
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    )
    expect(overflow, 'the page scrolls sideways').toBeLessThanOrEqual(0)
    expect(faults).toEqual([])
    await context.close()
  })
})
