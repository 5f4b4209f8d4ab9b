import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'

const STANDARDS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

const COLOUR = 'color-contrast'

/** The rules of the standards, those of them that colours break, or all others. */
export type Rules = 'all' | 'colours' | 'all but colours'

/**
 * What axe finds wrong. No page has a frame, for which axe would open another page, and nobody reads what was found
 * right, which is most of what it would report.
 * @param within a selector of the parts that are looked at; the whole page without it
 */
export async function violations(page: Page, rules: Rules = 'all', within?: string): Promise<string[]> {
  const axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] })
  if (within !== undefined) axe.include(within)
  if (rules === 'all but colours') axe.disableRules(COLOUR)
  const found = await (rules === 'colours' ? axe.withRules(COLOUR) : axe.withTags(STANDARDS)).analyze()
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
