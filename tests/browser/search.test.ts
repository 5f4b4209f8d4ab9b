import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { serveSite } from './site.ts'
import type { Site } from './site.ts'

const PRIMING = 'symptoms/bubbles-when-priming/'
const ARTICLE = 'circuit/the-two-valves/'

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

const field = (page: Page) => page.getByRole('searchbox')
const hits = (page: Page) => page.locator('.search-hit')
const focused = (page: Page) => page.evaluate(() => document.activeElement?.className)

/** Waits for the results of that query: while it is typed, those of its first letters may come. */
async function untilAnswered(page: Page, query: string): Promise<void> {
  await page.locator(`.search-results[data-query="${query}"]`).waitFor({ state: 'attached' })
  await hits(page).first().waitFor()
}

async function typeAndWait(page: Page, query: string): Promise<void> {
  await page.keyboard.type(query)
  await untilAnswered(page, query)
}

/** Holds back what the following answers are made of, as a slow network does. */
async function holdAnswers(page: Page): Promise<{ asked: () => number; letGo: () => void }> {
  let asked = 0
  let letGo = () => {}
  const held = new Promise<void>((resolve) => (letGo = resolve))
  await page.route('**/pagefind/fragment/**', async (route) => {
    asked += 1
    await held
    await route.continue()
  })
  return { asked: () => asked, letGo }
}

describe('the search on the start page', () => {
  it('has the focus, fetches nothing before somebody types, and opens the first result on Enter', async () => {
    const { page, context, faults } = await site.open()
    const asked: string[] = []
    page.on('request', (request) => asked.push(request.url()))
    expect(await focused(page)).toBe('search-field')
    await page.waitForLoadState('networkidle')
    expect(asked.filter((address) => address.includes('/pagefind/'))).toEqual([])
    await typeAndWait(page, 'bubbles in glass when priming')
    await page.keyboard.press('Enter')
    await page.waitForURL(site.address(PRIMING))
    expect(faults).toEqual([])
    await context.close()
  })

  it('is walked by the keyboard from first to last', async () => {
    const { page, context } = await site.open()
    await typeAndWait(page, 'strainer')
    const last = (await hits(page).count()) - 1
    const isOn = (index: number) =>
      hits(page)
        .nth(index)
        .evaluate((hit) => hit === document.activeElement)
    await page.keyboard.press('ArrowDown')
    expect(await isOn(0)).toBe(true)
    await page.keyboard.press('ArrowDown')
    expect(await isOn(1)).toBe(true)
    await page.keyboard.press('End')
    expect(await isOn(last)).toBe(true)
    await page.keyboard.press('ArrowDown')
    expect(await isOn(last)).toBe(true)
    await page.keyboard.press('Home')
    await page.keyboard.press('ArrowUp')
    expect(await focused(page)).toBe('search-field')
    await page.keyboard.press('ArrowDown')
    await page.keyboard.type('s')
    expect(await field(page).inputValue()).toBe('strainers')
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Escape')
    expect(await focused(page)).toBe('search-field')
    await page.keyboard.press('Escape')
    expect(await field(page).inputValue()).toBe('')
    await hits(page).first().waitFor({ state: 'detached' })
    await context.close()
  })

  it.each([
    { leaves: 'the same page in the new results', keys: ['ArrowDown'], kept: 1, back: ['Escape'] },
    { leaves: 'the field when that page is not there', keys: ['ArrowDown', 'End'], kept: 0, back: [] },
  ])('a late answer leaves the focus of who walks the results on $leaves', async ({ keys, kept, back }) => {
    const { page, context, faults } = await site.open()
    const standsOn = () =>
      page.evaluate(() => (document.activeElement as HTMLElement | null)?.dataset['page'])
    await typeAndWait(page, 'strainer')
    const { asked, letGo } = await holdAnswers(page)
    await page.keyboard.insertText(' cover')
    await expect.poll(asked).toBeGreaterThan(0)
    for (const key of keys) await page.keyboard.press(key)
    const before = await standsOn()
    expect(before).toMatch(/\/$/)
    letGo()
    await untilAnswered(page, 'strainer cover')
    expect(await page.locator(`.search-hit[data-page="${before}"]`).count()).toBe(kept)
    expect(await standsOn()).toBe(kept === 1 ? before : undefined)
    for (const key of back) await page.keyboard.press(key)
    expect(await focused(page)).toBe('search-field')
    expect(await field(page).inputValue()).toBe('strainer cover')
    await page.keyboard.press('Escape')
    expect(await field(page).inputValue()).toBe('')
    expect(faults).toEqual([])
    await context.close()
  })

  it('is left for the field by Escape from its button too', async () => {
    const { page, context } = await site.open()
    await page.locator('[data-search][data-ready]').waitFor()
    await page.locator('.search-go').focus()
    await page.keyboard.press('Escape')
    expect(await focused(page)).toBe('search-field')
    await context.close()
  })

  it('shows all of a group once, and the focus goes on to the first of the new lines', async () => {
    const { page, context } = await site.open()
    await typeAndWait(page, 'valve')
    const more = page.locator('.search-more').first()
    const group = page.locator('.search-group', { has: page.locator('.search-more') }).first()
    const id = await group.getAttribute('aria-labelledby')
    const lines = page.locator(`.search-group[aria-labelledby="${id}"] .search-hit`)
    const shown = await lines.count()
    await more.evaluate((button: HTMLElement) => {
      button.focus()
      // Twice, before the first answer can have come.
      button.click()
      button.click()
    })
    await expect.poll(() => lines.count()).toBeGreaterThan(shown)
    expect(await lines.nth(shown).evaluate((line) => line === document.activeElement)).toBe(true)
    const pages = await lines.evaluateAll((all) => all.map((line) => line.getAttribute('href')))
    expect(new Set(pages).size).toBe(pages.length)
    await context.close()
  })

  it('groups results by kind, symptoms first, and tells how many there are', async () => {
    const { page, context } = await site.open()
    await typeAndWait(page, 'fuel')
    const headings = await page.locator('.search-heading').allTextContents()
    const kinds = headings
      .map((heading) => heading.replace(/ ?\d+$/, ''))
      .filter((heading) => !heading.startsWith('Best'))
    expect(kinds.slice(0, 3)).toEqual(['Symptoms', 'Procedures', 'How the circuit works'])
    expect(await page.locator('.search-status').textContent()).toMatch(/^\d+ results\.$/)
    await context.close()
  })

  it('keeps the query in the address and shows the results again when one comes back', async () => {
    const { page, context } = await site.open()
    await typeAndWait(page, 'bubbles in glass when priming')
    await page.keyboard.press('Enter')
    await page.waitForURL(site.address(PRIMING))
    await page.goBack()
    expect(new URL(page.url()).searchParams.get('q')).toBe('bubbles in glass when priming')
    await hits(page).first().waitFor()
    expect(await field(page).inputValue()).toBe('bubbles in glass when priming')
    await context.close()
  })

  it('shows what a hostile address holds as text', async () => {
    const hostile = '<img src=x onerror="document.title=1"><b>filter</b>'
    const { page, context, faults } = await site.open(`?q=${encodeURIComponent(hostile)}`)
    await page.locator('.search-results > *').first().waitFor()
    expect(await field(page).inputValue()).toBe(hostile)
    expect(await page.locator('.search-results :is(img, b)').count()).toBe(0)
    expect(await page.title()).not.toBe('1')
    expect(faults).toEqual([])
    const long = await site.open(`?q=${'a'.repeat(5000)}`)
    expect((await field(long.page).inputValue()).length).toBe(200)
    await long.context.close()
    await context.close()
  })

  it('says so when a word was taken for another, and when nothing is found', async () => {
    const { page, context } = await site.open()
    await typeAndWait(page, 'fitler')
    expect(await page.locator('.search-note').allTextContents()).toEqual([
      'No word “fitler” in the handbook; showing “filter”.',
    ])
    await field(page).fill('zxqvbnm')
    await page.getByText('Nothing found.').waitFor()
    expect(await page.locator('.search-all').getAttribute('href')).toMatch(/\/all\/$/)
    await context.close()
  })

  it('does not open a page for other words before they were seen', async () => {
    const { page, context } = await site.open()
    await page.locator('[data-search][data-ready]').waitFor()
    const { asked, letGo } = await holdAnswers(page)
    await page.keyboard.type('fitler')
    await expect.poll(asked).toBeGreaterThan(0)
    await page.keyboard.press('Enter')
    letGo()
    await untilAnswered(page, 'fitler')
    await expect.poll(() => focused(page)).toBe('search-hit')
    expect(new URL(page.url()).pathname).toBe(new URL(site.address()).pathname)
    await context.close()
  })

  it('finds what was sent off before the search was ready', async () => {
    const { page, context, faults } = await site.open('all/?q=fitler')
    await untilAnswered(page, 'fitler')
    expect(await field(page).inputValue()).toBe('fitler')
    expect(faults).toEqual([])
    await context.close()
  })

  it('says so when the index cannot be had, and finds again once it can', async () => {
    const { page, context } = await site.open()
    await page.route('**/search/near.json', (route) => route.abort())
    // In one piece: a letter at a time would be asked for more than once.
    await page.keyboard.insertText('strainer')
    await page.getByText('could not be loaded').waitFor()
    expect(await page.locator('.search-all').count()).toBe(1)
    await page.unroute('**/search/near.json')
    await page.keyboard.press('Enter')
    await page.waitForURL(site.address('procedures/suction-strainer/'))
    await context.close()
  })

  it('leads to the list of all pages without JavaScript', async () => {
    const { page, context } = await site.open('', { javaScriptEnabled: false })
    expect(await page.locator('.search noscript').count()).toBe(1)
    await field(page).fill('strainer')
    await field(page).press('Enter')
    await page.waitForURL(site.address('all/?q=strainer'))
    await context.close()
  })
})

describe('the search on other pages', () => {
  it.each(['Control+k', 'Meta+k'])('opens on %s, and a result leads on', async (keys) => {
    const { page, context, faults } = await site.open(ARTICLE)
    await page.keyboard.press(keys)
    expect(await focused(page)).toBe('search-field')
    await typeAndWait(page, 'bubbles in glass when priming')
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Enter')
    await page.waitForURL(site.address(PRIMING))
    expect(faults).toEqual([])
    await context.close()
  })

  it('is emptied by Escape, then closed, and the focus goes back to its button', async () => {
    const { page, context } = await site.open(ARTICLE)
    const dialog = page.getByRole('dialog', { name: 'Search the handbook' })
    await page.getByRole('button', { name: 'Search' }).first().click()
    await typeAndWait(page, 'valve')
    await page.keyboard.press('Escape')
    expect(await dialog.isVisible()).toBe(true)
    expect(await field(page).inputValue()).toBe('')
    await page.keyboard.press('Escape')
    await dialog.waitFor({ state: 'hidden' })
    expect(await focused(page)).toContain('search-button')
    await context.close()
  })

  it('opens at the heading under which the words stand, and closes when that is on the same page', async () => {
    const { page, context } = await site.open(ARTICLE)
    await page.keyboard.press('Control+k')
    await typeAndWait(page, 'gauge misleads valve')
    const onThisPage = page.locator(`.search-hit[href*="${ARTICLE}#"]`).first()
    const address = await onThisPage.getAttribute('href')
    await onThisPage.click()
    await page.getByRole('dialog', { name: 'Search the handbook' }).waitFor({ state: 'hidden' })
    await expect.poll(() => new URL(page.url()).hash).toBe(new URL(address ?? '', page.url()).hash)
    await context.close()
  })
})
