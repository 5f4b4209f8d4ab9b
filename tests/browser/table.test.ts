import type { Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { serveSite, type Site } from './site.ts'

const EXHAUST = 'calculators/exhaust-spread/'
const FILTER_LIFE = 'calculators/filter-life/'
const DUTY = 'calculators/range-and-hours/'

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

const awake = (page: Page) =>
  page.locator('calculator-form .calculator-actions[data-ready="true"]').first().waitFor()

async function withCalculator(path: string, use: (page: Page) => Promise<void>): Promise<void> {
  const open = await site.open(path)
  await open.page.locator('calculator-form').first().scrollIntoViewIfNeeded()
  await awake(open.page)
  await use(open.page)
  expect(open.faults).toEqual([])
  await open.context.close()
}

const cell = (page: Page, name: string): Locator => page.locator(`input[name="${name}"]`)
const rows = (page: Page) => page.locator('.table-field tbody tr').count()
const plain = (text: string) => text.replaceAll('\u00a0', ' ')
const messages = async (page: Page) => plain(await page.locator('.table-messages').innerText())
const output = async (page: Page, id: string) =>
  plain(await page.locator(`[data-output="${id}"] .value`).innerText())

/** What the clipboard of a spreadsheet gives, put into a cell as the browser does it. */
async function paste(target: Locator, text: string): Promise<void> {
  await target.evaluate((element, pasted) => {
    const clipboardData = new DataTransfer()
    clipboardData.setData('text/plain', pasted)
    element.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }))
  }, text)
}

describe('a table of readings', () => {
  it('computes at once from what is typed into a cell', () =>
    withCalculator(EXHAUST, async (page) => {
      expect(await output(page, 'cylinder')).toBe('6')
      await cell(page, 'cylinders.5.temperature').fill('429')
      expect(await output(page, 'cylinder')).toBe('10')
    }))

  it('names the row and the column of a bad cell, and keeps what was typed', () =>
    withCalculator(EXHAUST, async (page) => {
      await cell(page, 'cylinders.2.temperature').fill('abc')
      expect(await messages(page)).toMatch(/^Exhaust temperatures, cylinder 3: Temperature: «abc»/)
      expect(await cell(page, 'cylinders.2.temperature').getAttribute('aria-invalid')).toBe('true')
      await cell(page, 'cylinders.2.temperature').fill('4000')
      expect(await messages(page)).toMatch(/cylinder 3: Temperature is 4000 °C, above 1500 °C/)
      expect(await cell(page, 'cylinders.2.temperature').inputValue()).toBe('4000')
    }))

  it('takes a column from a spreadsheet, makes rows for it, and says what became of it', () =>
    withCalculator(EXHAUST, async (page) => {
      await paste(
        cell(page, 'cylinders.0.temperature'),
        'T/°C\n401\n402\n403\n404\n405\n406\n407\n408\n409\n410\n411\n412\n413\n500\n',
      )
      expect(await rows(page)).toBe(14)
      expect(await output(page, 'cylinder')).toBe('14')
      expect(await page.locator('.table-field .said').innerText()).toBe(
        '14 rows pasted. The first line holds no number and was taken as a heading.',
      )
    }))

  it('takes several columns from the cell on into which they are pasted', () =>
    withCalculator(FILTER_LIFE, async (page) => {
      await paste(cell(page, 'readings.1.drop'), '30\t26\n41\t27\tlost\ttoo')
      expect(await cell(page, 'readings.1.drop').inputValue()).toBe('30')
      expect(await cell(page, 'readings.1.flow').inputValue()).toBe('26')
      expect(await cell(page, 'readings.2.flow').inputValue()).toBe('27')
      expect(await messages(page)).toMatch(/reading 3: Viscosity: «lost»/)
      expect(await page.locator('.table-field .said').innerText()).toMatch(
        /to the right of 3 columns was left out/,
      )
    }))

  it('takes a whole table from a box, with units in the cells', () =>
    withCalculator(DUTY, async (page) => {
      await page.getByText('Paste a whole table').click()
      await page.locator('.paste-box textarea').fill('share; burn; speed\n50 %; 60 L/h; 0\n50; 3; 40')
      await page.getByText('Put into the table').click()
      expect(await rows(page)).toBe(2)
      expect(await cell(page, 'states.0.burn').inputValue()).toBe('1')
      expect(await output(page, 'hours')).toMatch(/^7\.5\d? ± /)
    }))

  it('is filled by the keyboard: Enter goes down and adds a row, arrows move', () =>
    withCalculator(EXHAUST, async (page) => {
      await cell(page, 'cylinders.11.temperature').press('Enter')
      expect(await rows(page)).toBe(13)
      await page.waitForFunction(
        () => document.activeElement?.getAttribute('name') === 'cylinders.12.temperature',
      )
      expect(await output(page, 'cylinder')).toBe('6')
      await page.keyboard.type('428')
      await page.keyboard.press('ArrowUp')
      await page.waitForFunction(
        () => document.activeElement?.getAttribute('name') === 'cylinders.11.temperature',
      )
      await page.getByLabel('Remove cylinder 6').click()
      expect(await rows(page)).toBe(12)
      await page.waitForFunction(
        () => document.activeElement?.getAttribute('name') === 'cylinders.5.temperature',
      )
    }))

  it('asks for the gap in the middle to be closed, since later cylinders would change their number', () =>
    withCalculator(EXHAUST, async (page) => {
      await cell(page, 'cylinders.2.temperature').fill('')
      expect(await messages(page)).toMatch(/cylinder 3: Temperature: nothing was typed/)
    }))

  it('keeps the quantities when the unit of a column changes, and reads an expression', () =>
    withCalculator(EXHAUST, async (page) => {
      await page.locator('select[name="cylinders.temperature.unit"]').selectOption('degF')
      expect(await cell(page, 'cylinders.0.temperature').inputValue()).toBe('802.4')
      expect(await output(page, 'cylinder')).toBe('6')
      await cell(page, 'cylinders.0.temperature').fill('700 degF + 100 degF')
      await cell(page, 'cylinders.0.temperature').fill('430 °C')
      expect(await output(page, 'cylinder')).toBe('6')
    }))

  it('comes back from its address on another page load, rows and all', () =>
    withCalculator(EXHAUST, async (page) => {
      await page.getByLabel('Remove cylinder 12').click()
      await cell(page, 'cylinders.0.temperature').fill('480')
      const query = () => new URL(page.url()).search
      await expect.poll(query).toMatch(/cylinders\.temperature=480\+degC_431\+degC/)
      await page.goto(site.address(EXHAUST) + query())
      await awake(page)
      expect(await rows(page)).toBe(11)
      expect(await output(page, 'cylinder')).toBe('1')
    }))

  it('can be reset and the reset undone', () =>
    withCalculator(EXHAUST, async (page) => {
      await cell(page, 'cylinders.0.temperature').fill('480')
      await page.getByText('Reset', { exact: true }).click()
      expect(await cell(page, 'cylinders.0.temperature').inputValue()).toBe('428')
      await page.getByText('Undo reset').click()
      expect(await cell(page, 'cylinders.0.temperature').inputValue()).toBe('480')
    }))

  it('stands on paper as a table', () =>
    withCalculator(FILTER_LIFE, async (page) => {
      await page.emulateMedia({ media: 'print' })
      const printed = page.locator('.printed-inputs').last()
      expect(plain(await printed.innerText())).toMatch(/Drop Δp, kPa/)
      expect(await printed.locator('tbody tr').count()).toBe(5)
      expect(await page.locator('.table-field').isVisible()).toBe(false)
    }))
})
