import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { exercises } from '../unit/checks/content.ts'
import { looks, sideways, violations } from './axe.ts'
import { serveSite, type OpenPage, type Site } from './site.ts'

const NUMBER = '101'
/** More presses than the page has places to go to: a key that leads nowhere ends the test. */
const MOST_PRESSES = 400

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

const pathOf = (number: string) => `bench/exercises/${number}/`
const plain = (text: string) => text.replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim()

async function wake(page: Page): Promise<void> {
  await page.locator('hidden-fault').scrollIntoViewIfNeeded()
  await page.locator('.exercise-live[data-ready="true"]').waitFor()
}

/** Opens an exercise, waits until it answers, and checks at the end that nothing went wrong. */
async function withExercise(use: (open: OpenPage) => Promise<void>, number = NUMBER): Promise<void> {
  const open = await site.open(pathOf(number))
  await wake(open.page)
  await use(open)
  expect(open.faults).toEqual([])
  await open.context.close()
}

const spent = async (page: Page): Promise<string> => plain(await page.locator('.exercise-bar p').innerText())

/** Goes on by Tab until what has the focus is called so. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let press = 0; press < MOST_PRESSES; press++) {
    const called = await page.evaluate(() => {
      const element = document.activeElement
      return element?.getAttribute('aria-label') ?? element?.textContent ?? ''
    })
    if (name.test(plain(called))) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`No press of Tab leads to ${name}`)
}

describe('an exercise', () => {
  it('is done by keyboard from the first check to the way that is shown', async () => {
    await withExercise(async ({ page }) => {
      await page.locator('.exercise-bar a').focus()
      expect(await spent(page)).toBe('Idle, 0 min spent')
      await tabTo(page, /^Do it ?: Look at the bypass glass, 1 min/)
      await page.keyboard.press('Enter')
      expect(await spent(page)).toBe('Idle, 1 min spent')
      expect(await page.locator('.log-steps > li').count()).toBe(1)
      await tabTo(page, /^Do it ?: Read the drop across the secondary filters, 1 min/)
      await page.keyboard.press('Space')
      expect(await spent(page)).toBe('Idle, 2 min spent')
      await tabTo(page, /^Stopped, do it ?: Take off the secondary filters and look/)
      await page.keyboard.press('Enter')
      expect(await spent(page)).toMatch(/^Stopped, \d\d min spent$/)
      expect(plain(await page.locator('.log-steps').innerText())).toContain('heavy with dirt')

      const search = page.getByLabel(/^Search the \d+ faults/)
      await search.focus()
      await page.keyboard.type('tank vent')
      await page.keyboard.press('Tab')
      await page.keyboard.press('Enter')
      await page.keyboard.press('Enter')
      await expect.poll(() => page.locator('.answer').innerText()).toContain('Tank vent blocked: not it.')

      await page.getByRole('button', { name: 'Take back: Tank vent blocked' }).focus()
      await page.keyboard.press('Enter')
      await search.focus()
      await page.keyboard.type('plugged second')
      await page.keyboard.press('Tab')
      await page.keyboard.press('Enter')
      await tabTo(page, /^This is the cause$/)
      await page.keyboard.press('Enter')
      await expect.poll(() => page.locator('[data-outcome]').innerText()).toMatch(/right/i)
      expect(await page.evaluate(() => document.activeElement?.hasAttribute('data-outcome'))).toBe(true)
      expect(await page.locator('.way').count()).toBe(2)
      expect(plain(await page.locator('.exercise-outcome').innerText())).toMatch(
        /You took \d+ min, the shortest way takes \d+ min/,
      )
    })
  })

  it('leads at its end to the bench with the same fault on, and not before', async () => {
    await withExercise(async ({ page }) => {
      const link = page.getByRole('link', { name: 'See this fault on the bench' })
      expect(await link.count()).toBe(0)
      await page.getByRole('button', { name: /^Give up/ }).click()
      await link.click()
      await page.locator('circuit-bench[data-awake] .bench-controls[data-ready="true"]').waitFor()
      const hidden = exercises.find(({ number }) => number === NUMBER)?.faults ?? []
      for (const { fault, severity } of hidden) expect(page.url()).toContain(`fault.${fault}=${severity}`)
      expect(await page.locator('.faults-on .fault-on').count()).toBe(hidden.length)
      expect(await page.locator('.changes > li').count()).toBeGreaterThan(0)
    })
  })

  it('keeps on the device what was done, until it is started afresh', async () => {
    await withExercise(async ({ page }) => {
      await page.getByRole('button', { name: /: Look at the bypass glass/ }).click()
      await page.reload()
      await wake(page)
      expect(await spent(page)).toBe('Idle, 1 min spent')
      await page.getByRole('button', { name: 'Start afresh' }).click()
      expect(await spent(page)).toBe('Idle, 0 min spent')
      await page.reload()
      await wake(page)
      expect(await spent(page)).toBe('Idle, 0 min spent')
    })
  })

  it('says so when what was kept does not fit, and starts afresh', async () => {
    await withExercise(async ({ page }) => {
      // Before the page's own scripts: after them, the page that is left could still write what it keeps.
      await page.addInitScript(
        (key) => localStorage.setItem(key, '{"version":1,"acts":[{"state":"idle","check":"gone"}]}'),
        `clear-return:exercise:${NUMBER}`,
      )
      await page.reload()
      await wake(page)
      await expect.poll(() => page.locator('.said').innerText()).toContain('does not fit this edition')
    })
  })

  it('follows the units that the person has chosen', async () => {
    await withExercise(async ({ page }) => {
      await page.getByRole('button', { name: /: Read the pressure of the supply header/ }).click()
      const told = page.locator('.log-steps')
      expect(plain(await told.innerText())).toMatch(/\d kPa/)
      await page.evaluate(() => {
        document.documentElement.dataset['units'] = 'us'
        document.dispatchEvent(new CustomEvent('clear-return:preferences'))
      })
      await expect.poll(async () => plain(await told.innerText())).toMatch(/\d psi/)
    })
  })

  it('asks for both of two causes, and says when one is right', async () => {
    const both = exercises.find(({ faults }) => faults.length === 2)
    await withExercise(async ({ page }) => {
      const name = page.getByRole('button', { name: 'These are the causes' })
      await name.press('Enter')
      expect(plain(await page.locator('.exercise-name').innerText())).toContain('Choose two faults first')
      const take = async (typed: string) => {
        await page.getByLabel(/^Search the \d+ faults/).fill(typed)
        await page.locator('.found-list button').first().click()
      }
      await take('secondary filters plugged')
      await take('tank vent')
      await name.click()
      await expect.poll(() => page.locator('.answer').innerText()).toContain('One of the two is right')
    }, both?.number)
  })

  it('prints the answer only when it is asked for', async () => {
    await withExercise(async ({ page }) => {
      await page.emulateMedia({ media: 'print' })
      const printed = async () => plain(await page.locator('main').innerText())
      expect(await printed()).not.toContain('The shortest way')
      expect(await printed()).toContain('Look at the return glass')
      await page.emulateMedia({ media: 'screen' })
      await page.getByLabel(/^Print the answer too/).check()
      expect(await page.locator('.answer-page').isVisible()).toBe(false)
      await page.emulateMedia({ media: 'print' })
      expect(await page.locator('.answer-page').isVisible()).toBe(true)
      expect(await printed()).toContain('The shortest way')
    })
  })

  it('shows complaint and checks without JavaScript, and says what needs it', async () => {
    const { page, context } = await site.open(pathOf(NUMBER), { javaScriptEnabled: false })
    const text = plain(await page.locator('main').innerText())
    expect(text).toContain('the answer need JavaScript')
    expect(text).toContain('Look at the bypass glass')
    expect(text).toContain(plain(exercises.find(({ number }) => number === NUMBER)?.complaint ?? 'none'))
    await context.close()
  })

  it.each(exercises.map(({ number, faults }) => ({ number, faults })))(
    '$number does not give its cause away',
    async ({ number, faults }) => {
      const html = await (await fetch(site.address(pathOf(number)))).text()
      const visible = html.replace(/<[^>]*>/g, ' ')
      for (const { fault } of faults) expect(visible).not.toContain(fault)
      expect(html).not.toMatch(
        new RegExp(`data-course="[^"]*(${faults.map(({ fault }) => fault).join('|')})`),
      )
    },
  )

  it.each(looks)(
    'has no accessibility violation at its start and at its end, $look',
    async ({ options, rules }) => {
      const { page, context, faults } = await site.open(pathOf(NUMBER), options)
      await wake(page)
      expect(await violations(page, rules)).toEqual([])
      await page.getByRole('button', { name: /: Look at the return glass/ }).click()
      await page.getByRole('button', { name: /^Give up/ }).click()
      await page.locator('[data-outcome]').waitFor()
      expect(await violations(page, rules)).toEqual([])
      expect(await sideways(page), 'the page scrolls sideways').toBeLessThanOrEqual(0)
      expect(faults).toEqual([])
      await context.close()
    },
  )
})
