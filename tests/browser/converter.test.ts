import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { serveSite, type OpenPage, type Site } from './site.ts'

const CONVERTER = 'calculators/unit-converter/'
/** The reader of expressions is fetched for the first of them. */
const PATIENCE = { timeout: 10_000 }

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

/** Opens the converter, waits until it is alive, and checks at the end that nothing went wrong. */
async function withConverter(query: string, use: (open: OpenPage) => Promise<void>): Promise<void> {
  const open = await site.open(CONVERTER + query, { permissions: ['clipboard-read', 'clipboard-write'] })
  await open.page.locator('.calculator-actions[data-ready="true"]').waitFor()
  await use(open)
  expect(open.faults).toEqual([])
  await open.context.close()
}

const plain = (text: string) => text.replaceAll('\u00a0', ' ')
/** What the first table says in a unit. */
const shownIn = async (page: Page, symbol: string): Promise<string> =>
  plain(
    await page
      .locator('.converter-units')
      .first()
      .locator('tr', { has: page.locator(`th:text-is("${symbol}")`) })
      .locator('.converter-number')
      .innerText(),
  )

describe('the unit converter', () => {
  it('shows a first conversion without JavaScript, and the factors', async () => {
    const { page, context } = await site.open(CONVERTER, { javaScriptEnabled: false })
    expect(await shownIn(page, 'kPa')).toBe('310.2640782')
    expect(await page.locator('main').innerText()).toContain(
      'Without JavaScript this page shows one conversion',
    )
    await context.close()
  })

  it('converts as one types: a number, a unit, a sum', async () => {
    await withConverter('', async ({ page }) => {
      const value = page.locator('input[name="value"]')
      await value.fill('2.5 bar')
      await expect.poll(() => shownIn(page, 'psi'), PATIENCE).toBe('36.25943443')
      await value.fill('2 bar + 30 kPa')
      await expect.poll(() => shownIn(page, 'kPa'), PATIENCE).toBe('230')
      await value.fill('2 bar + 3 m')
      await expect
        .poll(() => page.locator('.refused').first().innerText(), PATIENCE)
        .toContain('cannot be added')
      expect(await page.locator('.converter-units').count()).toBe(0)
    })
  })

  it('keeps a temperature and a difference apart', async () => {
    await withConverter('?kind=temperature&value=9+degF', async ({ page }) => {
      expect(await shownIn(page, '°C')).toBe('−12.77777778')
      await page.getByRole('button', { name: 'Take it as a temperature difference' }).click()
      expect(await shownIn(page, 'K')).toBe('5')
    })
  })

  it('steps between gauge and absolute with the barometer that is given', async () => {
    await withConverter('?kind=gaugePressure&value=-20+kPa', async ({ page }) => {
      await page.locator('input[name="barometer"]').fill('95')
      const absolute = page.locator('.converter-units', { hasText: 'As absolute pressure' })
      await expect
        .poll(async () => plain(await absolute.locator('.converter-number').first().innerText()))
        .toBe('75')
      await page.locator('input[name="value"]').fill('-99 kPa')
      await expect
        .poll(() => page.locator('.calculator-found').innerText())
        .toContain('below a perfect vacuum')
    })
  })

  it('keeps its state in the address, from which it comes back', async () => {
    await withConverter('', async ({ page, context }) => {
      await page.locator('select[name="kind"]').selectOption('volume')
      await page.locator('input[name="value"]').fill('12')
      await page.locator('select[name="value.unit"]').selectOption('gal')
      await expect.poll(() => new URL(page.url()).search, PATIENCE).toBe('?v=1&kind=volume&value=12&unit=gal')
      const again = await context.newPage()
      await again.goto(page.url())
      await expect.poll(() => shownIn(again, 'L'), PATIENCE).toBe('45.42494141')
    })
  })

  it('names what it cannot use of an address, as plain text', async () => {
    await withConverter('?kind=%3Cimg+src%3Dx+onerror%3Dalert(1)%3E', async ({ page }) => {
      const problems = page.locator('.address-problems')
      expect(await problems.innerText()).toContain('<img src=x onerror=alert(1)>')
      expect(await problems.locator('img').count()).toBe(0)
    })
  })

  it('copies a value with its unit', async () => {
    await withConverter('?kind=volume&value=1+gal', async ({ page }) => {
      await page.getByRole('button', { name: /^Copy 3\.785411784/ }).click()
      await page.locator('.said', { hasText: 'copied' }).waitFor()
      expect(plain(await page.evaluate(() => navigator.clipboard.readText()))).toBe('3.785411784 L')
    })
  })

  it('is listed among the calculators', async () => {
    const { page, context } = await site.open('calculators/')
    await page.getByRole('link', { name: 'Unit converter' }).click()
    await page.waitForURL(site.address(CONVERTER))
    expect(await page.locator('h1').innerText()).toBe('Unit converter')
    await context.close()
  })
})
