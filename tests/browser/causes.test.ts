import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { looks, sideways, violations } from './axe.ts'
import { serveSite, type OpenPage, type Site } from './site.ts'

const SMALLEST_TARGET = 44
/** More presses than the page has places to go to: a key that leads nowhere ends the test. */
const MOST_PRESSES = 400

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

const plain = (text: string) => text.replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim()

/** Waits until the page has ranked what was told last. */
const ranked = (page: Page) => page.locator('.found-causes[data-status="ready"]').waitFor()
const causes = async (page: Page) => plain(await page.locator('.cause-rows').innerText())
const question = (page: Page, name: RegExp, where = '.finder-seen') =>
  page.locator(where).getByRole('group', { name }).first()

/** Opens the finder, waits until it has ranked, and checks at the end that nothing went wrong. */
async function withFinder(use: (open: OpenPage) => Promise<void>, query = ''): Promise<void> {
  const open = await site.open(`causes/${query}`)
  await open.page.locator('.finder-live').waitFor()
  await ranked(open.page)
  await use(open)
  expect(open.faults).toEqual([])
  await open.context.close()
}

describe('the finder of causes', () => {
  it('takes a mechanic from the start page by a symptom to a cause, a check and a summary', async () => {
    const { page, context, faults } = await site.open('')
    await page.getByRole('link', { name: 'Bubbles in the return glass when priming' }).first().click()
    await page.getByRole('link', { name: 'Find the cause from what you see' }).click()
    await ranked(page)
    expect(await causes(page)).toContain('Suction strainer cover draws air')
    expect(plain(await page.locator('.finder-start').innerText())).toContain(
      'Bubbles in the return glass when priming',
    )

    const next = page.locator('.next-check')
    const first = plain(await next.locator('h2').innerText())
    expect(first).toMatch(/^Next check: /)
    expect(plain(await next.innerText())).toMatch(/\d+ min/)
    expect(await next.locator('.caution-lines li').count()).toBeGreaterThan(0)
    await next.getByRole('button', { name: 'Cannot be done now' }).click()
    await expect.poll(async () => plain(await next.locator('h2').innerText())).not.toBe(first)

    await page.locator('.observed-group summary', { hasText: 'Checks made already' }).click()
    await page.locator('.made-check summary', { hasText: 'Wet the joints' }).click()
    await question(page, /^Wet the joints/)
      .getByRole('button', { name: /edge of the strainer cover/ })
      .click()
    await expect.poll(() => causes(page)).toMatch(/^▸? ?Suction strainer cover draws air \d\d %/)
    await ranked(page)

    await page.getByLabel('What was found').selectOption({ label: 'Suction strainer cover draws air' })
    await page.getByLabel('Note').fill('Ring pinched.')
    await page.emulateMedia({ media: 'print' })
    const sheet = plain(await page.locator('main').innerText())
    for (const words of [
      'Return glass, priming: Full, with bubbles in the moving fuel.',
      'Checks made Wet the joints',
      'Causes in order',
      'What was found Suction strainer cover draws air Ring pinched.',
      'Name and signature',
    ])
      expect(sheet).toContain(words)
    expect(sheet).not.toContain('Next check')
    expect(faults).toEqual([])
    await context.close()
  })

  it('moves the order as one answers, takes an answer back, and keeps all in the address', async () => {
    await withFinder(async ({ page }) => {
      const before = await causes(page)
      const full = question(page, /^Return glass, priming/).getByRole('button', { name: 'Empty.' })
      await full.click()
      expect(await full.getAttribute('aria-pressed')).toBe('true')
      await expect.poll(() => causes(page)).not.toBe(before)
      await expect.poll(() => page.url()).toContain('return-glass.priming=empty')
      await ranked(page)
      const told = await causes(page)

      await page.reload()
      await ranked(page)
      expect(await causes(page)).toBe(told)
      await full.click()
      await expect.poll(() => causes(page)).toBe(before)
      await expect.poll(() => page.url()).not.toContain('return-glass')
    })
  })

  it('answers a check where it is proposed, by keys alone, and goes on to the next', async () => {
    await withFinder(async ({ page }) => {
      const heading = page.locator('.next-check h2')
      const proposed = plain(await heading.innerText())
      await page.locator('.next-body .question').first().waitFor()
      const field = page.locator('.next-body input').first()
      const isRead = (await field.count()) > 0
      await (isRead ? field : page.locator('.next-body .choice-button').first()).focus()
      // What a sound plant reads there: another figure might be asked about first.
      if (isRead) await page.keyboard.type('6')
      // What is being typed does not take the check away.
      expect(plain(await heading.innerText())).toBe(proposed)
      await page.keyboard.press('Enter')
      await expect.poll(async () => plain(await heading.innerText())).not.toBe(proposed)
      await expect
        .poll(() => page.evaluate(() => document.activeElement?.id ?? ''))
        .toBe('finder-next-heading')
    }, '?v=1&return-glass.priming=bubbles')
  })

  it('asks about a reading that cannot be right, and takes the unit that was meant', async () => {
    await withFinder(async ({ page }) => {
      expect(plain(await page.locator('.finder-verdict').innerText())).toContain('cannot be right')
      await page.getByRole('button', { name: 'Go to it' }).click()
      await expect
        .poll(() => page.evaluate(() => document.activeElement?.id ?? ''))
        .toBe('finder-suction-vacuum-gauge-full')
      await page.locator('.doubt').getByRole('button').first().click()
      await expect.poll(() => page.locator('.doubt').count()).toBe(0)
      await expect.poll(() => page.locator('.finder-verdict').innerText()).not.toContain('cannot be right')
    }, '?v=1&suction-vacuum-gauge.full=900+kPa')
  })

  it('starts from a symptom that is told without a figure, and lets the figure take the word’s place', async () => {
    const { page, context, faults } = await site.open('symptoms/low-power-at-full-load/')
    await page.getByRole('link', { name: 'Find the cause from what you see' }).click()
    await ranked(page)
    const lower = page.locator('.finder-start .in-words').first().getByRole('button', { name: 'Lower' })
    expect(await lower.getAttribute('aria-pressed')).toBe('true')
    expect(plain(await page.locator('.finder-verdict').innerText())).not.toContain('Nothing was told')
    const before = await causes(page)
    await page
      .locator('.finder-start')
      .getByRole('textbox', { name: /^Power, full load/ })
      .fill('1350')
    await expect.poll(() => lower.getAttribute('aria-pressed')).toBe('false')
    await expect.poll(() => page.url()).toContain('power.full=1350')
    await expect.poll(() => causes(page)).not.toBe(before)
    await lower.click()
    await expect.poll(() => page.url()).toContain('power.full=lower')
    expect(
      await page
        .locator('.finder-start')
        .getByRole('textbox', { name: /^Power, full load/ })
        .inputValue(),
    ).toBe('')
    expect(faults).toEqual([])
    await context.close()
  })

  it('offers a way for each thing that a symptom’s page holds', async () => {
    const { page, context, faults } = await site.open('symptoms/black-or-white-smoke/')
    expect(await page.locator('.find-cause a').count()).toBe(2)
    await page.getByRole('link', { name: 'White smoke' }).click()
    await ranked(page)
    expect(page.url()).toContain('smoke=white')
    expect(await causes(page)).toContain('Water in the tank')
    expect(faults).toEqual([])
    await context.close()
  })

  it('names what goes with no cause, and leads to it', async () => {
    await withFinder(async ({ page }) => {
      expect(plain(await page.locator('.finder-verdict').innerText())).toContain('goes with no cause')
      const again = page.locator('.doubts', { hasText: 'Look again at' })
      expect(plain(await again.innerText())).toContain('Header gauge, full load: 600 kPa')
      await again.getByRole('button', { name: 'Go to it' }).click()
      await expect
        .poll(() => page.evaluate(() => document.activeElement?.id ?? ''))
        .toBe('finder-header-gauge-full')
    }, '?v=1&header-gauge.full=600+kPa&sure=header-gauge.full')
  })

  it('says above the causes what must not be run, and proposes nothing with the engine running', async () => {
    await withFinder(async ({ page }) => {
      const stop = page.locator('.found-causes .do-not-run')
      expect(plain(await stop.innerText())).toContain('Stop the engine')
      for (let count = 0; count < 5; count++) {
        expect(plain(await page.locator('.next-check h2').innerText())).not.toMatch(
          /, (idle|part load|full load)$/,
        )
        await page.getByRole('button', { name: 'Cannot be done now' }).click()
      }
    }, '?v=1&leaks=at-the-engine&now=full')
  })

  it('tells a limit in the reader’s own unit', async () => {
    await withFinder(async ({ page }) => {
      await page.getByRole('button', { name: 'Go to it' }).click()
      expect(plain(await page.locator('.doubt').innerText())).toContain('about 29.9 inHg')
    }, '?v=1&suction-vacuum-gauge.full=40+inHg')
  })

  it('mends an address of an older edition with a sentence and opens with the rest', async () => {
    await withFinder(async ({ page }) => {
      expect(await page.locator('.address-problems').innerText()).toContain('«gone-glass.idle»')
      const pressed = question(page, /^Return glass, priming/).locator('[aria-pressed="true"]')
      expect(plain(await pressed.innerText())).toBe('Empty.')
      await expect.poll(() => page.url()).not.toContain('gone-glass')
    }, '?v=1&gone-glass.idle=full&return-glass.priming=empty')
  })

  it('can be answered before the ranking is there, and says so; what fails is said and tried again', async () => {
    const context = await site.context()
    let held: () => void = () => undefined
    let fails = true
    const holding = new Promise<void>((done) => (held = done))
    await context.route('**/causes/knowledge/*.json', async (route) => {
      await holding
      await (fails ? route.abort() : route.continue())
    })
    const { page } = await site.openIn(context, 'causes/')
    await page.locator('.finder-loading').waitFor()
    const empty = question(page, /^Return glass, priming/).getByRole('button', { name: 'Empty.' })
    await empty.click()
    expect(await empty.getAttribute('aria-pressed')).toBe('true')
    held()
    const again = page.getByRole('button', { name: 'Try again' })
    await again.waitFor()
    fails = false
    await again.click()
    await ranked(page)
    expect(await page.locator('.cause-rows > li').count()).toBeGreaterThan(1)
    expect(await empty.getAttribute('aria-pressed')).toBe('true')
    await context.close()
  })

  it('tells a screen reader the first cause and the next check once the answering pauses', async () => {
    await withFinder(async ({ page }) => {
      const said = page.locator('.finder-live > output')
      expect(await said.innerText()).toBe('')
      await question(page, /^Return glass, priming/)
        .getByRole('button', { name: 'Empty.' })
        .click()
      await expect.poll(() => said.innerText()).toMatch(/First cause: .+, \d+ per cent\. Next check: .+\./)
    })
  })

  it('offers the other circuits and starts on one by its address', async () => {
    await withFinder(async ({ page }) => {
      await page.locator('.finder-circuits a', { hasText: 'PS-6' }).click()
      await ranked(page)
      expect(page.url()).toContain('circuit=ps-6')
      expect(plain(await page.locator('.finder-circuits [aria-current]').innerText())).toBe('PS-6')
      expect(plain(await page.locator('.finder-circuits').innerText())).toContain('invented')
    })
  })

  it('shows without JavaScript what it needs, and leads to the tables', async () => {
    const { page, context } = await site.open('causes/', { javaScriptEnabled: false })
    const main = plain(await page.locator('main').innerText())
    expect(main).toContain('works with JavaScript')
    expect(main).not.toContain('on its way')
    await page.getByRole('link', { name: 'tables of the symptoms' }).click()
    expect(page.url()).toBe(site.address('symptoms/'))
    await context.close()
  })

  it('reaches the results from any question by Tab', async () => {
    await withFinder(async ({ page }) => {
      await question(page, /^Return glass, priming/)
        .getByRole('button')
        .first()
        .focus()
      const arrived = () => page.evaluate(() => document.activeElement?.closest('.cause-rows') !== null)
      let presses = 0
      for (; presses < MOST_PRESSES && !(await arrived()); presses++) await page.keyboard.press('Tab')
      expect(presses, 'no press of Tab leads to the causes').toBeLessThan(MOST_PRESSES)
    })
  })

  it.each(looks)(
    'has no accessibility violation with answers and an opened cause, $look',
    async ({ look, options, rules }) => {
      const { page, context, faults } = await site.open(
        'causes/?v=1&from=bubbles-when-priming&return-glass.priming=bubbles&suction-vacuum-gauge.full=900+kPa&gone=1',
        { ...options, hasTouch: look === 'on a phone' },
      )
      await ranked(page)
      await page.locator('.cause-row summary').first().click()
      expect(await violations(page, rules)).toEqual([])
      expect(await sideways(page), 'the page scrolls sideways').toBeLessThanOrEqual(0)
      const small = await page
        .locator('.finder-live button:visible')
        .evaluateAll(
          (buttons, least) => buttons.filter((one) => one.getBoundingClientRect().height < least).length,
          SMALLEST_TARGET,
        )
      expect(small, 'buttons that a thumb misses').toBe(0)
      expect(faults).toEqual([])
      await context.close()
    },
  )
})
