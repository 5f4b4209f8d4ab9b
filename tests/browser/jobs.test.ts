import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { serveSite, type Site } from './site.ts'

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

const WAY_OF_THE_FUEL = [
  'tank',
  'foot-valve',
  'suction-strainer',
  'supply-pump',
  'fuel-heater',
  'primary-filter',
  'secondary-filters',
  'supply-header',
  'injectors',
  'return-header',
  'back-pressure-valve',
  'return-glass',
  'return-line',
]
const PHONE = { width: 390, height: 844 }
const screens = [
  { screen: 'on a shop PC', options: {} },
  { screen: 'on a phone', options: { viewport: PHONE } },
]

const headings = (page: Page) => page.locator('main h2').allInnerTexts()
const positionOf = (titles: readonly string[], pattern: RegExp) =>
  titles.findIndex((title) => pattern.test(title))

/** Text of the page as the printer gets it. */
async function printed(page: Page): Promise<string> {
  await page.emulateMedia({ media: 'print' })
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')))
  const text = await page.locator('body').innerText()
  await page.evaluate(() => dispatchEvent(new Event('afterprint')))
  await page.emulateMedia({ media: null })
  return text
}

describe.each(screens)('the three jobs, $screen', ({ options }) => {
  it('a mechanic types a symptom and prints the procedure', async () => {
    const { page, context, faults } = await site.open('', options)
    // The field has the focus: no click before typing.
    await page.keyboard.type('bubbles in glass when priming')
    await page.locator('.search-hit').first().waitFor()
    await page.keyboard.press('Enter')
    await page.waitForURL(/symptoms\/bubbles-when-priming\//)

    const titles = await headings(page)
    const order = [/caution/i, /what you see/i, /first checks/i, /causes/i].map((pattern) =>
      positionOf(titles, pattern),
    )
    expect(order[0]).toBe(0)
    expect(order).toEqual([...order].sort((a, b) => a - b))
    const text = await page.locator('main').innerText()
    expect(text).toContain('DANGER')
    expect(await page.getByText('Strainer cover', { exact: false }).count()).toBeGreaterThan(0)

    await page
      .getByRole('link', { name: /strainer/i })
      .first()
      .click()
    await page.waitForURL(/procedures\/suction-strainer\//)
    const paper = await printed(page)
    for (const expected of ['WARNING', 'torque', '25', 'Prove it tight', 'procedures/suction-strainer/']) {
      expect(paper).toContain(expected)
    }
    expect(faults).toEqual([])
    await context.close()
  })

  it('a trainee follows the fuel from tank to tank', async () => {
    const { page, context, faults } = await site.open('', options)
    await page
      .getByRole('link', { name: /from tank to tank/i })
      .first()
      .click()
    await page.waitForURL(/circuit\/the-circuit\//)
    const parts = page.locator('svg a[href^="#part-"]')
    expect(await parts.count()).toBeGreaterThanOrEqual(16)

    // From the drawing to a part, and on along the way until the tank is reached again.
    await page.locator('svg a[href="#part-tank"]').first().click()
    await page.waitForURL(/#part-tank$/)
    const met: string[] = []
    for (let step = 0; step < 20; step++) {
      const id = new URL(page.url()).hash.slice(1)
      if (id === '' || met.includes(id)) break
      met.push(id)
      const part = page.locator(`[id="${id}"]`)
      expect((await part.innerText()).length, `${id} tells its purpose and what it shows`).toBeGreaterThan(80)
      const next = part.getByRole('link', { name: /^next/i })
      if ((await next.count()) === 0) break
      const place = await next.first().getAttribute('href')
      await next.first().click()
      await page.waitForURL((address) => address.hash === place)
    }
    expect(met.slice(0, WAY_OF_THE_FUEL.length)).toEqual(WAY_OF_THE_FUEL.map((id) => `part-${id}`))
    expect(faults).toEqual([])
    await context.close()
  })

  it('an engineer computes a viscosity in the article and gets an address that reproduces it', async () => {
    const { page, context, faults } = await site.open('', options)
    await page.getByRole('link', { name: 'Viscosity and temperature' }).first().click()
    await page.waitForURL(/circuit\/viscosity-and-temperature\//)
    const form = page.locator('calculator-form[data-calculator="viscosity-at-temperature"]')
    await form.scrollIntoViewIfNeeded()
    await form.locator('.calculator-actions[data-ready="true"]').waitFor()
    // Two viscosities and two temperatures, each in a unit of its own: the worked example of a published source.
    await form.locator('input[name="firstTemperature"]').fill('104 °F')
    await form.locator('input[name="firstViscosity"]').fill('404 cSt')
    await form.locator('input[name="secondTemperature"]').fill('373.15 K')
    await form.locator('input[name="secondViscosity"]').fill('0.28 St')
    await form.locator('input[name="wantedTemperature"]').fill('60 °C')
    await expect
      .poll(async () => (await form.locator('.value').first().innerText()).replaceAll('\u00a0', ' '))
      .toMatch(/^132\.1 ± [\d.]+ mm²\/s$/)
    await form.getByText('Equation, where it holds, worked example and sources').click()
    const all = await form.innerText()
    for (const expected of ['Working', 'ASTM D341', 'Worked example']) expect(all).toContain(expected)
    await expect.poll(() => form.locator('svg[role="img"]').count()).toBe(1)
    await expect.poll(() => new URL(page.url()).search).toContain('wantedTemperature=60')
    const address = page.url()
    // Texts that say their unit themselves need none beside them.
    expect(address).not.toContain('.unit=')
    const result = await form.locator('.value').first().innerText()

    const second = await context.newPage()
    await second.goto(address)
    const again = second.locator('calculator-form[data-calculator="viscosity-at-temperature"]')
    await expect.poll(() => again.locator('.value').first().innerText()).toBe(result)
    expect(await again.locator('input[name="firstViscosity"]').inputValue()).toBe('404 cSt')
    expect(faults).toEqual([])
    await context.close()
  })
})

describe('without JavaScript', () => {
  it('the start page leads to every symptom, and an article shows its calculator with a worked result', async () => {
    const { page, context } = await site.open('', { javaScriptEnabled: false })
    await page.getByRole('link', { name: /bubbles in the return glass when priming/i }).click()
    await page.waitForURL(/symptoms\/bubbles-when-priming\//)
    await page.goto(site.address('calculators/viscosity-at-temperature/'))
    expect(await page.locator('.value').first().innerText()).toContain('132.1')
    expect(await page.locator('main').innerText()).toContain('ASTM D341')
    await context.close()
  })
})
