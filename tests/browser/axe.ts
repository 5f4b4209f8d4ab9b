import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'

const STANDARDS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

const COLOUR = 'color-contrast'

/** The rules of the standards, those of them that colours break, or all others. */
export type Rules = 'all' | 'colours' | 'all but colours'

/** Marks one text of each colour, ground, size and weight: contrast hangs on nothing else. */
const markEachLook = (page: Page) =>
  page.evaluate(() => {
    const groundOf = (element: Element): string => {
      const grounds: string[] = []
      for (let at: Element | null = element; at !== null; at = at.parentElement) {
        const { backgroundColor, backgroundImage, opacity } = getComputedStyle(at)
        if (backgroundImage !== 'none' || opacity !== '1') grounds.push(backgroundImage, opacity)
        if (backgroundColor === 'rgba(0, 0, 0, 0)') continue
        grounds.push(backgroundColor)
        if (!backgroundColor.startsWith('rgba')) break
      }
      return grounds.join()
    }
    const hasText = ({ childNodes }: Element) =>
      [...childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim() !== '')
    const known = new Set<string>()
    for (const element of document.querySelectorAll('body *')) {
      element.removeAttribute('data-look')
      if (!hasText(element) || !element.checkVisibility()) continue
      const { color, fontSize, fontWeight } = getComputedStyle(element)
      const look = [color, fontSize, fontWeight, groundOf(element)].join(' ')
      if (!known.has(look)) element.toggleAttribute('data-look', true)
      known.add(look)
    }
  })

/**
 * What axe finds wrong. No page has a frame, for which axe would open another page, and nobody reads what was found
 * right, which is most of what it would report. To look at colours takes it longer than all other rules: where they
 * alone are asked for, one text stands for all that are written so.
 * @param within a selector of the parts that are looked at; the whole page without it
 */
export async function violations(page: Page, rules: Rules = 'all', within?: string): Promise<string[]> {
  const axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] })
  if (within !== undefined) axe.include(within)
  else if (rules === 'colours') {
    await markEachLook(page)
    axe.include('[data-look]')
  }
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
