import { readFileSync } from 'node:fs'
import type { BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { looks, PHONE, sideways, violations } from './axe.ts'
import { serveSite, type OpenPage, type Site } from './site.ts'

const LESSON = 'lessons/the-way-round/'
const RECORD = 'lessons/record/'
const KEPT = 'clear-return:lessons'

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

const plain = (text: string) => text.replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim()
const question = (page: Page, id: string) => page.locator(`lesson-question[data-question="${id}"]`)
const verdict = (page: Page, id: string) => question(page, id).locator('.verdict').innerText()
const kept = (page: Page) => page.evaluate((key) => localStorage.getItem(key), KEPT)

async function withPage(
  path: string,
  use: (open: OpenPage) => Promise<void>,
  options: BrowserContextOptions = {},
): Promise<void> {
  const open = await site.open(path, options)
  await use(open)
  expect(open.faults).toEqual([])
  await open.context.close()
}

/** Puts texts on the device before the page's own scripts run. */
const putting = (texts: Record<string, string>) => (page: Page) =>
  page.evaluate((entries) => {
    for (const [key, text] of Object.entries(entries)) localStorage.setItem(key, text)
  }, texts)

const done = JSON.stringify({
  version: 1,
  answers: {
    'the-way-round/what-comes-back': { first: 'right', on: '2026-11-29', right: '2026-11-29' },
    'the-way-round/why-so-much': { first: 'wrong', on: '2026-11-29' },
  },
})
const solved = JSON.stringify({
  version: 1,
  acts: [{ state: 'priming', check: 'return-glass' }],
  tries: [],
  end: 'right',
})

describe('a question', () => {
  it('is answered by keyboard: wrong with its reason, then right with all reasons, and keeps the first try', async () => {
    await withPage(LESSON, async ({ page }) => {
      const one = question(page, 'what-comes-back')
      await one.locator('input').focus()
      await page.keyboard.type('33.3')
      await page.keyboard.press('Enter')
      await expect.poll(() => verdict(page, 'what-comes-back')).toContain('Not this figure')
      expect(await one.locator('.reason:visible').count()).toBe(1)
      expect(plain(await one.locator('.reason:visible').innerText())).toContain('The two were added')
      await one.locator('input').fill('1242 L/h')
      await page.keyboard.press('Enter')
      await expect.poll(() => verdict(page, 'what-comes-back')).toBe('Right.')
      expect(await one.locator('.reason:visible').count()).toBe(4)
      expect(await page.evaluate(() => document.activeElement?.textContent)).toContain('Answer again')

      const two = question(page, 'before-the-pump')
      await two.locator('input').first().focus()
      await page.keyboard.press('ArrowUp')
      await page.keyboard.press('Tab')
      await page.keyboard.press('Enter')
      await expect.poll(() => verdict(page, 'before-the-pump')).toBe('Right, at the first try.')

      await page.reload()
      expect(plain(await one.locator('.kept-note').innerText())).toMatch(
        /^Kept on this device: not right at the first try, .*; right on/,
      )
      expect(await one.locator('.reason:visible').count()).toBe(0)
    })
  })

  it('that has several right choices says how many are wrong and how many are missing', async () => {
    await withPage(LESSON, async ({ page }) => {
      const one = question(page, 'why-so-much')
      const check = one.getByRole('button', { name: /^Check/ })
      await check.click()
      expect(await verdict(page, 'why-so-much')).toBe('Choose an answer first.')
      expect(await kept(page)).toBeNull()
      await one.getByLabel(/It carries heat/).check()
      await one.getByLabel(/reserve of power/).check()
      await check.click()
      expect(plain(await verdict(page, 'why-so-much'))).toBe(
        'Not yet: 1 of those chosen is wrong, 2 right ones are missing.',
      )
      expect(await one.locator('.reason:visible').count()).toBe(1)
    })
  })

  it('takes no figure that it cannot read for an answer, and says what is accepted', async () => {
    await withPage(LESSON, async ({ page }) => {
      const one = question(page, 'what-comes-back')
      await one.locator('input').fill('much')
      await one.getByRole('button', { name: /^Check/ }).click()
      await expect.poll(() => verdict(page, 'what-comes-back')).toMatch(/^Your answer: .*Accepted: /)
      expect(await kept(page)).toBeNull()
    })
  })

  it('follows the units that the person has chosen', async () => {
    await withPage(LESSON, async ({ page }) => {
      const one = question(page, 'what-comes-back')
      await expect.poll(async () => plain(await one.locator('.entered').innerText())).toContain('L/min')
      await page.evaluate(() => {
        document.documentElement.dataset['units'] = 'us'
        document.dispatchEvent(new CustomEvent('clear-return:preferences'))
      })
      await expect.poll(async () => plain(await one.locator('.entered').innerText())).toContain('gal/min')
      await one.locator('input').fill('5.47')
      await one.getByRole('button', { name: /^Check/ }).click()
      await expect.poll(() => verdict(page, 'what-comes-back')).toBe('Right, at the first try.')
    })
  })

  it('counts as not known where the answer was shown first', async () => {
    await withPage(LESSON, async ({ page }) => {
      await question(page, 'who-holds-the-header')
        .getByRole('button', { name: /^Show the answer/ })
        .click()
      expect(await kept(page)).toContain('"the-way-round/who-holds-the-header":{"first":"shown"')
    })
  })

  it('is judged on a device that has no room, which it says', async () => {
    await withPage(LESSON, async ({ page }) => {
      await page.addInitScript(() => {
        Storage.prototype.setItem = () => {
          throw new DOMException('full', 'QuotaExceededError')
        }
      })
      await page.reload()
      const one = question(page, 'before-the-pump')
      await one.getByLabel(/suction strainer/).check()
      await one.getByRole('button', { name: /^Check/ }).click()
      expect(await verdict(page, 'before-the-pump')).toMatch(/^Right/)
      expect(await one.locator('.kept-note').innerText()).toContain('Not kept')
    })
  })

  it('leaves a record that it cannot read as it is', async () => {
    await withPage(LESSON, async ({ page }) => {
      const newer = '{"version":2,"answers":["of another form"]}'
      await putting({ [KEPT]: newer })(page)
      await page.reload()
      const one = question(page, 'before-the-pump')
      await one.getByRole('button', { name: /^Show the answer/ }).click()
      expect(await one.locator('.kept-note').innerText()).toContain('cannot be read')
      expect(await kept(page)).toBe(newer)
    })
  })

  it('is read without JavaScript, each reason folded under its choice', async () => {
    const { page, context } = await site.open(LESSON, { javaScriptEnabled: false })
    const one = question(page, 'before-the-pump')
    expect(await one.locator('input:visible').count()).toBe(0)
    expect(await one.locator('button:visible').count()).toBe(0)
    const reason = one.locator('.reason').last()
    expect(await reason.locator('p').isVisible()).toBe(false)
    await reason.locator('summary').click()
    expect(plain(await reason.locator('p').innerText())).toMatch(/^Right\. It keeps coarse dirt/)
    await context.close()
  })

  it('prints as a work sheet, without reasons, until it is answered', async () => {
    await withPage(LESSON, async ({ page }) => {
      await page.emulateMedia({ media: 'print' })
      // What the browser does before it prints: the page unfolds what is folded.
      await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')))
      const text = plain(await question(page, 'before-the-pump').innerText())
      expect(text).toContain('The suction strainer.')
      expect(text).not.toContain('Right')
      expect(text).not.toContain('Check')
    })
  })
})

describe('the record', () => {
  const open = async (page: Page) => {
    await putting({ [KEPT]: done, 'clear-return:exercise:105': solved, 'clear-return:units': 'us' })(page)
    await page.reload()
    await page.locator('lesson-record[data-filled]').waitFor()
  }
  const row = async (page: Page) => plain(await page.locator('tr[data-lesson="the-way-round"]').innerText())

  it('shows answers, what was missed, and the exercise with its minutes', async () => {
    await withPage(RECORD, async ({ page }) => {
      await open(page)
      expect(await row(page)).toMatch(/^1\. The way round 2 of 7 1 2 105 solved \d+$/)
      expect(plain(await page.locator('tfoot').innerText())).toMatch(/^Together 2 of \d\d 1 1 solved \d+$/)
    })
  })

  it('is taken along as a file without a name, deleted when asked twice, and restored', async () => {
    await withPage(RECORD, async ({ page }) => {
      await open(page)
      await page.getByLabel('Name').fill('Marmaduke Pellworth')
      const [file] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Save as a file' }).click(),
      ])
      const path = await file.path()
      expect(file.suggestedFilename()).toMatch(/^clear-return-lessons-\d{4}-\d\d-\d\d\.json$/)
      expect(readFileSync(path, 'utf8')).not.toContain('Pellworth')
      expect(await page.evaluate(() => JSON.stringify(localStorage))).not.toContain('Pellworth')

      await page.getByRole('button', { name: 'Delete from this device' }).click()
      await page.getByRole('button', { name: 'Keep' }).click()
      expect(await kept(page)).not.toBeNull()
      await page.getByRole('button', { name: 'Delete from this device' }).click()
      await page.getByRole('button', { name: 'Delete now' }).click()
      await expect.poll(() => row(page)).toContain('0 of 7')
      expect(await page.evaluate(() => Object.keys(localStorage))).toEqual(['clear-return:units'])

      await page.locator('[data-restore]').setInputFiles(path)
      await expect.poll(() => row(page)).toMatch(/2 of 7 1 2 105 solved \d+$/)
      await page.getByRole('button', { name: /^Take back/ }).click()
      await expect.poll(() => row(page)).toContain('0 of 7')
    })
  })

  it('refuses a file that does not fit, names the field, and changes nothing', async () => {
    await withPage(RECORD, async ({ page }) => {
      await open(page)
      const bad = (text: string) => ({
        name: 'bad.json',
        mimeType: 'application/json',
        buffer: Buffer.from(text),
      })
      const field = page.locator('[data-restore]')
      await field.setInputFiles(bad('soup'))
      await expect.poll(() => page.locator('[data-said]').innerText()).toContain('it is no JSON')
      const answers = { 'the-way-round/why-so-much': { first: 'perhaps', on: '2026-11-29' } }
      await field.setInputFiles(
        bad(JSON.stringify({ file: 'clear-return lessons', version: 1, answers, exercises: {} })),
      )
      await expect
        .poll(() => page.locator('[data-said]').innerText())
        .toContain('first is «"perhaps"»; accepted: right, wrong, shown. Nothing on this device has changed.')
      expect(await kept(page)).toBe(done)
    })
  })

  it('prints the sheet with the name, and no buttons', async () => {
    await withPage(RECORD, async ({ page }) => {
      await open(page)
      await page.getByLabel('Name').fill('A. Trainee')
      await page.emulateMedia({ media: 'print' })
      expect(await page.getByLabel('Name').isVisible()).toBe(true)
      expect(await page.locator('lesson-record button:visible').count()).toBe(0)
      const text = plain(await page.locator('main').innerText())
      expect(text).toContain('Instructor, signature and date')
      expect(text).not.toContain('What is kept, and where')
    })
  })

  it('is a blank sheet without JavaScript', async () => {
    const { page, context } = await site.open(RECORD, { javaScriptEnabled: false })
    const text = plain(await page.locator('main').innerText())
    expect(text).toContain('print this page and fill it in by hand')
    expect(text).toContain('Trainee, signature and date')
    expect(await page.locator('lesson-record button:visible').count()).toBe(0)
    await context.close()
  })
})

describe('the course', () => {
  it('shows how each lesson stands on this device', async () => {
    await withPage('lessons/', async ({ page }) => {
      await putting({ [KEPT]: done })(page)
      await page.reload()
      await expect
        .poll(() => page.locator('[data-status="the-way-round"]').innerText())
        .toBe('2 of 7 answered, 1 right at the first try')
    })
  })

  it.each(looks)(
    'has no accessibility violation where answers are wrong and right, $look',
    async ({ options, rules }) => {
      await withPage(
        LESSON,
        async ({ page }) => {
          await question(page, 'before-the-pump')
            .getByLabel(/The heater/)
            .check()
          await question(page, 'before-the-pump')
            .getByRole('button', { name: /^Check/ })
            .click()
          await question(page, 'once-through-the-tank').locator('input').fill('148 min')
          await question(page, 'once-through-the-tank')
            .getByRole('button', { name: /^Check/ })
            .click()
          await expect.poll(() => verdict(page, 'once-through-the-tank')).toMatch(/^Right/)
          expect(await violations(page, rules)).toEqual([])
          expect(await sideways(page), 'the page scrolls sideways').toBeLessThanOrEqual(0)
        },
        options,
      )
    },
  )

  it.each([RECORD, 'lessons/instructor/', 'lessons/'])('%s has no accessibility violation', async (path) => {
    await withPage(path, async ({ page }) => {
      expect(await violations(page)).toEqual([])
      await page.setViewportSize(PHONE)
      expect(await sideways(page), 'the page scrolls sideways on a phone').toBeLessThanOrEqual(0)
    })
  })
})
