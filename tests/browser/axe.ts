import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'

const STANDARDS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

const COLOUR = 'color-contrast'

/**
 * What axe finds wrong, by all rules of the standards or of the colours alone. No page has a frame, for which axe would
 * open another page, and nobody reads what was found right, which is most of what it would report.
 */
export async function violations(page: Page, rules: 'all' | 'colours' = 'all'): Promise<string[]> {
  const axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] })
  const found = await (rules === 'all' ? axe.withTags(STANDARDS) : axe.withRules(COLOUR)).analyze()
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`)
}

/** By how much a page can be scrolled sideways. */
export const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

export const PHONE = { width: 390, height: 844 }

/** How a page is looked at, and by which rules: the dark one differs from the light one in its colours only. */
export const looks = [
  { look: 'light', options: { colorScheme: 'light' }, rules: 'all' },
  { look: 'dark', options: { colorScheme: 'dark' }, rules: 'colours' },
  { look: 'on a phone', options: { viewport: PHONE }, rules: 'all' },
] as const
