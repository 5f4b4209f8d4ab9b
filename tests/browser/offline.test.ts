import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { serveSite, type Site } from './site.ts'

// A copy of the built site, so that a newer edition can be put in its place.
const directory = mkdtempSync(join(tmpdir(), 'clear-return-edition-'))
let site: Site
beforeAll(async () => {
  cpSync(process.env['SITE_DIRECTORY'] ?? 'dist', directory, { recursive: true })
  site = await serveSite(directory)
})
afterAll(async () => {
  await site.close()
  rmSync(directory, { recursive: true, force: true })
})

/** Ready means that a service worker is active, which it is only once every file is kept. */
const untilKept = (page: Page) => page.evaluate(async () => void (await navigator.serviceWorker.ready))

/** The same site with one page changed, as a deployment would leave it. */
function deployNewEdition(marker: string): void {
  const path = join(directory, 'glossary', 'index.html')
  writeFileSync(path, readFileSync(path, 'utf8').replace('</title>', ` ${marker}</title>`))
  const worker = join(directory, 'sw.js')
  const text = readFileSync(worker, 'utf8')
  const position = text.indexOf('glossary/index.html')
  expect(position, 'the precache names the glossary').toBeGreaterThan(0)
  const start = text.lastIndexOf('{', position)
  const end = text.indexOf('}', position)
  const changed = text.slice(start, end).replace(/[0-9a-f]{32}/, 'f'.repeat(32))
  expect(changed).not.toBe(text.slice(start, end))
  writeFileSync(worker, text.slice(0, start) + changed + text.slice(end))
}

describe('offline', () => {
  it('keeps every page, the search, the calculators and the bench; a new edition waits until it is asked for', async () => {
    const { page, context } = await site.open('', { serviceWorkers: 'allow' })
    await untilKept(page)

    await context.setOffline(true)
    await page.goto(site.address('circuit/viscosity-and-temperature/?from=a-link'))
    expect(await page.locator('h1').textContent()).toContain('iscosity')
    await page.locator('calculator-form').first().scrollIntoViewIfNeeded()
    await page.locator('.calculator-actions[data-ready="true"]').first().waitFor()
    // The finder fetches its form, what it ranks with and its worker: all of it is kept.
    await page.goto(site.address('causes/?v=1&from=bubbles-when-priming&return-glass.priming=bubbles'))
    const settled = page.locator('.found-causes[data-status="ready"]')
    await settled.waitFor()
    const first = page.locator('.cause-rows > li').first()
    const before = await first.innerText()
    const clear = page
      .getByRole('group', { name: /^Return glass, priming/ })
      .getByRole('button', { name: 'Full and clear.' })
    await clear.first().click()
    await expect.poll(() => first.innerText()).not.toBe(before)
    await settled.waitFor()
    expect(await page.locator('.next-check h2').innerText()).toMatch(/^Next check: /)
    // Another circuit’s files are kept too.
    await page.locator('.finder-circuits a', { hasText: 'PS-6' }).click()
    await page.locator('.finder-circuits [aria-current]', { hasText: 'PS-6' }).waitFor()
    await settled.waitFor()
    await page.goto(site.address(''))
    await page.getByRole('searchbox').first().fill('bubbles when priming')
    await page
      .getByRole('link', { name: /bubbles in the return glass when priming/i })
      .first()
      .waitFor()
    await page.goto(site.address('bench/pq-12/?v=1&fault.strainer-cover-draws-air=0.6'))
    await page.locator('circuit-bench[data-awake]').waitFor()
    const returnGlass = page.locator('.glass-panel', { hasText: 'Return glass' })
    await expect.poll(() => returnGlass.textContent()).toMatch(/bubbles/)

    await context.setOffline(false)
    deployNewEdition('second edition')
    await page.goto(site.address('glossary/'))
    expect(await page.title()).not.toContain('second edition')
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update())
    await page.getByRole('button', { name: 'Use the new edition' }).click()
    await page.waitForFunction(() => document.title.includes('second edition'))
    await context.close()
  }, 90_000)
})
