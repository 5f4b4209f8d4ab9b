import type { Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { looks, PHONE, sideways, violations } from './axe.ts'
import { serveSite, type Site } from './site.ts'

const BENCH = 'bench/pq-12/'
const CIRCUITS = ['pq-12', 'ps-6', 'pb-8']
const BUBBLES = 'Suction strainer cover draws air'

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

const plain = (text: string): string => text.replaceAll(/\s+/g, ' ').trim()

const awake = (page: Page): Promise<void> =>
  page.locator('circuit-bench[data-awake] .bench-controls[data-ready="true"]').waitFor()

/** The words beside a large glass. */
const glassWords = (page: Page, label: string): Locator =>
  page.locator('.glass-panel', { hasText: label }).locator('.glass-words')

async function openBench(path: string, options?: Parameters<Site['open']>[1]) {
  const opened = await site.open(path, options)
  await awake(opened.page)
  return opened
}

async function switchOn(page: Page, fault: string): Promise<void> {
  await page.getByRole('searchbox', { name: 'Find a fault' }).fill(fault)
  await page.locator('.fault-group').getByLabel(fault, { exact: true }).check()
}

describe('the bench', () => {
  it('a fault is switched on, the glass says so, and the address opens the same state', async () => {
    const { page, context, faults } = await openBench(BENCH)
    expect(await glassWords(page, 'Return glass').textContent()).toBe('Full and clear')
    await switchOn(page, BUBBLES)
    await expect.poll(() => glassWords(page, 'Return glass').textContent()).toBe('Full with bubbles')
    expect(await page.locator('.changes').textContent()).toContain('Return glass')
    await expect.poll(() => page.url()).toContain('fault.strainer-cover-draws-air=0.5')
    const words = await page.locator('.facts').textContent()

    const again = await context.newPage()
    await again.goto(page.url())
    await awake(again)
    await expect.poll(() => again.locator('.facts').textContent()).toBe(words)
    expect(faults).toEqual([])
    await context.close()
  })

  it('works by keyboard alone: state, a part of the drawing, its fault and how bad it is', async () => {
    const { page, context, faults } = await openBench(BENCH)
    await page.getByRole('radio', { name: 'Part load' }).focus()
    await page.keyboard.press('ArrowLeft')
    await page.keyboard.press('ArrowLeft')
    expect(await page.getByRole('radio', { name: 'Priming' }).isChecked()).toBe(true)

    await page.locator('#drawn-secondary-filters').focus()
    await page.keyboard.press('Enter')
    const panel = page.locator('.part-panel')
    await panel.waitFor()
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Secondary filters')
    expect(await panel.textContent()).toContain('Drop = element × dynamic viscosity × flow')
    await panel.getByLabel('Secondary filters plugged', { exact: true }).focus()
    await page.keyboard.press('Space')
    const severity = panel.getByRole('slider')
    await severity.focus()
    await page.keyboard.press('End')
    await expect.poll(() => glassWords(page, 'Bypass glass').textContent()).toMatch(/running from above/)
    await panel.getByRole('button', { name: 'Close' }).press('Enter')
    await panel.waitFor({ state: 'detached' })
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('drawn-secondary-filters')
    expect(faults).toEqual([])
    await context.close()
  })

  it('an address that cannot be used whole says so in sentences and opens with the rest', async () => {
    const query = '?v=1&state=full&fault.gone-long-ago=0.5&fault.pump-worn=7&wing=2'
    const { page, context, faults } = await openBench(BENCH + query)
    const problems = page.locator('.address-problems')
    await expect.poll(() => problems.textContent()).toContain('gone-long-ago')
    expect(await problems.textContent()).toMatch(/read the severity «7»; accepted: 0 to 1/)
    expect(await problems.textContent()).toContain('«wing»')
    expect(await page.getByRole('radio', { name: 'Full load' }).isChecked()).toBe(true)
    await expect.poll(() => new URL(page.url()).search).toBe('?v=1&state=full')
    expect(faults).toEqual([])
    await context.close()
  })

  it('several faults act together; reset brings health back, and can be undone', async () => {
    const { page, context } = await openBench(
      `${BENCH}?v=1&fault.strainer-cover-draws-air=0.6&fault.return-line-squeezed=0.8`,
    )
    await expect.poll(() => glassWords(page, 'Bypass glass').textContent()).toMatch(/rising from its drain/)
    expect(await glassWords(page, 'Return glass').textContent()).toMatch(/bubbles/)
    await page.getByRole('button', { name: 'Reset' }).first().click()
    await expect.poll(() => page.locator('.changes-none').count()).toBe(1)
    await page.getByRole('button', { name: 'Undo reset' }).click()
    await expect.poll(() => glassWords(page, 'Return glass').textContent()).toMatch(/bubbles/)
    await context.close()
  })

  it('a number out of range is kept as typed and refused, and the last state stays', async () => {
    const { page, context } = await openBench(BENCH)
    const field = page.getByRole('textbox', { name: 'Fuel in the tank' })
    await field.fill('900')
    await field.press('Enter')
    await expect.poll(() => page.locator('.slider-refused').textContent()).toMatch(/Read «900»; accepted:/)
    expect(await page.locator('.facts-setting').textContent()).toMatch(/tank 25\s°C/)
    await field.fill('50 degF')
    await field.press('Enter')
    await expect.poll(() => page.locator('.facts-setting').textContent()).toMatch(/tank 10\s°C/)
    await context.close()
  })

  it('says at a slider that a fault sets its condition in its place', async () => {
    const { page, context } = await openBench(`${BENCH}?v=1&fault.fuel-too-hot=1`)
    const slider = page.getByRole('slider', { name: 'Fuel in the tank' })
    const note = page.locator(`[id="${await slider.getAttribute('aria-describedby')}"]`)
    expect(await note.textContent()).toMatch(/«.+»: now 65(\.0)?\s°C\. What is set here has no effect\./)
    expect(
      await page.getByRole('slider', { name: 'Level in the tank' }).getAttribute('aria-describedby'),
    ).toBe(null)

    await context.close()
  })

  it('takes the altitude: where the air is thin, a plugged strainer brings air out of the fuel', async () => {
    const { page, context } = await openBench(`${BENCH}?v=1&state=full&fault.suction-strainer-plugged=0.75`)
    await expect.poll(() => glassWords(page, 'Return glass').textContent()).toBe('Full and clear')
    await page.getByRole('slider', { name: 'Altitude' }).fill('2000')
    await expect.poll(() => glassWords(page, 'Return glass').textContent()).toBe('Full with bubbles')
    await expect.poll(() => page.url()).toContain('height=2000')
    await expect.poll(() => page.locator('.facts-setting').textContent()).toMatch(/at an altitude of 2000\sm/)
    await context.close()
  })

  it('follows the units, and a change is spoken once', async () => {
    const { page, context } = await openBench(`${BENCH}?v=1&state=priming`)
    await page.getByRole('button', { name: 'Settings' }).click()
    await page.getByRole('radio', { name: /^US/ }).check()
    await expect.poll(() => page.locator('.facts').textContent()).toContain('psi')
    await page.getByRole('button', { name: 'Close' }).first().click()
    await switchOn(page, BUBBLES)
    await expect
      .poll(() => page.locator('circuit-bench output.unseen').allTextContents())
      .toContainEqual(expect.stringMatching(/Return glass: full with bubbles\./))
    await context.close()
  })
})

describe('for everybody', () => {
  const dashes = (page: Page): Promise<string[]> =>
    page
      .locator('.circuit-dashes')
      .evaluateAll((lines) => lines.map((line) => getComputedStyle(line).animationName))

  it('the flow moves, and stands still for who wants no motion and on paper', async () => {
    const moving = await openBench(BENCH, { reducedMotion: 'no-preference' })
    expect(new Set(await dashes(moving.page))).toEqual(new Set(['circuit-flow']))
    await moving.page.emulateMedia({ media: 'print' })
    expect(new Set(await dashes(moving.page))).toEqual(new Set(['none']))
    await moving.context.close()
    const still = await openBench(BENCH)
    expect(new Set(await dashes(still.page))).toEqual(new Set(['none']))
    await still.context.close()
  })

  it('a phone shows all of it without the page moving sideways', async () => {
    const { page, context, faults } = await openBench(BENCH, { viewport: PHONE })
    await switchOn(page, BUBBLES)
    await expect.poll(() => page.locator('.bench-bar').textContent()).toContain('full with bubbles')
    expect(await sideways(page)).toBeLessThanOrEqual(0)
    expect(faults).toEqual([])
    await context.close()
  })

  it.each(CIRCUITS)('every part of %s tells by keyboard what it does, its law and its faults', async (id) => {
    const { page, context, faults } = await openBench(`bench/${id}/`)
    const parts = page.locator('.circuit-part')
    const panel = page.locator('.part-panel')
    const count = await parts.count()
    expect(count).toBeGreaterThan(15)
    for (let place = 0; place < count; place++) {
      await parts.nth(place).press('Enter')
      const name = (await parts.nth(place).getAttribute('aria-label')) ?? ''
      const heading = panel.getByRole('heading', { level: 2 })
      await expect.poll(async () => name.includes((await heading.textContent()) ?? '–')).toBe(true)
      const text = (await panel.textContent()) ?? ''
      expect(text, name).toMatch(/In health: .*Law \(.+\): .+/)
      expect(text, name).toMatch(/Its faults|No fault of this part/)
    }
    expect(faults).toEqual([])
    await context.close()
  })

  it('the tables hold every reading that the drawing shows', async () => {
    const { page, context } = await openBench(`${BENCH}?v=1&state=full&fault.secondary-filters-plugged=0.7`)
    const drawn = await page.locator('.circuit-reading').allTextContents()
    expect(drawn.length).toBeGreaterThan(5)
    // The tables follow when what is set has rested.
    const tables = async () => plain((await page.locator('.facts').innerText()).toLowerCase())
    for (const reading of drawn)
      await expect.poll(tables).toContain(plain(reading.replace(/[▲▼]/, '').toLowerCase()))
    await context.close()
  })

  it.each(looks)(
    'has no accessibility violation with faults on, a part open and a bad address, $look',
    async ({ options, rules }) => {
      const query =
        '?v=1&state=full&fault.secondary-filters-plugged=0.7&fault.fuel-too-hot=1&part=supply-pump&wing=1'
      const { page, context } = await openBench(BENCH + query, options)
      await page.locator('.address-problems li').first().waitFor()
      expect(await violations(page, rules)).toEqual([])
      await context.close()
    },
  )

  it('the door says what each circuit is, and leads to it', async () => {
    const { page, context, faults } = await site.open('bench/')
    const choices = page.locator('.bench-choice')
    expect(await choices.count()).toBe(CIRCUITS.length)
    for (const text of await choices.allTextContents()) expect(text).toMatch(/invented .*\d+ faults/s)
    await choices.getByRole('link').first().click()
    await awake(page)
    expect(page.url()).toContain(BENCH)
    expect(faults).toEqual([])
    await context.close()
  })

  it('a shop PC’s screen holds drawing, glasses, changes and conditions at once', async () => {
    const { page, context } = await openBench(`${BENCH}?v=1&fault.strainer-cover-draws-air=0.6`)
    for (const part of ['.circuit-sheet', '.glass-panels', '.changes', '.states']) {
      const box = await page.locator(part).first().boundingBox()
      expect((box?.y ?? Infinity) + (box?.height ?? Infinity), part).toBeLessThanOrEqual(768)
    }
    await context.close()
  })

  it('without JavaScript the circuit in health is there, drawn and as a table, and no controls', async () => {
    const { page, context } = await site.open(BENCH, { javaScriptEnabled: false })
    expect(await page.locator('.facts').textContent()).toMatch(/Return glass.*Full and clear/)
    expect(await page.locator('.circuit-dashes').count()).toBeGreaterThan(20)
    expect(await page.locator('.bench-controls').isVisible()).toBe(false)
    await context.close()
  })
})

describe('a small bench in an article', () => {
  it('sets itself to its subject, is moved, and leads to the whole bench with the same state', async () => {
    const { page, context, faults } = await site.open('circuit/air-and-gas-in-fuel/')
    const bench = page.locator('circuit-bench')
    await bench.scrollIntoViewIfNeeded()
    await page.locator('circuit-bench[data-awake]').waitFor()
    expect(await glassWords(page, 'Return glass').textContent()).toBe('Full with bubbles')
    await bench.getByRole('slider').fill('0')
    await expect.poll(() => glassWords(page, 'Return glass').textContent()).toBe('Full and clear')
    await bench.getByRole('slider').fill('90')
    await bench.getByRole('link', { name: 'On the whole bench' }).click()
    await awake(page)
    expect(page.url()).toContain('fault.strainer-cover-draws-air=0.9')
    expect(await page.getByRole('radio', { name: 'Priming' }).isChecked()).toBe(true)
    expect(faults).toEqual([])
    await context.close()
  })

  it('a cause of a symptom can be seen on the bench', async () => {
    const { page, context } = await site.open('symptoms/bubbles-when-priming/')
    await page.getByRole('link', { name: new RegExp(`^Show on the bench\\s*: ${BUBBLES}`) }).click()
    await awake(page)
    await expect.poll(() => glassWords(page, 'Return glass').textContent()).toMatch(/bubbles/)
    await context.close()
  })
})
