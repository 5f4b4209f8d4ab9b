import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { serveSite, type Site } from './site.ts'

const DENSITY = 'calculators/density-and-volume/'
/** A column is computed when the typing pauses. */
const PATIENCE = { timeout: 10_000 }

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

async function opened(query = '') {
  const open = await site.open(DENSITY + query)
  await open.page.locator('.calculator-actions[data-ready="true"]').waitFor()
  const scripts: string[] = []
  open.page.on('response', (response) => scripts.push(response.url()))
  await open.page.locator('.column-mode summary').click()
  await open.page.locator('.column textarea').waitFor()
  return { ...open, scripts }
}

describe('a column of values', () => {
  it('is fetched by who opens it', async () => {
    const { page, context, scripts, faults } = await opened()
    expect(scripts.some((address) => /\/Column\.[^/]*\.js$/.test(address))).toBe(true)
    expect(await page.locator('.column-table').count()).toBe(0)
    expect(faults).toEqual([])
    await context.close()
  })

  it('makes a table, a chart and a file, and names each bad line', async () => {
    const { page, context, faults } = await opened()
    await page.locator('.column textarea').fill('0\n59 degF\n\n<img src=x onerror=alert(1)>\n=1+1\n40\n1000')
    const table = page.locator('.column-table')
    await table.waitFor()
    expect(await table.locator('tbody tr').count()).toBe(3)
    expect(await table.locator('tbody tr').nth(1).locator('td').first().innerText()).toBe('15')
    const bad = await page.locator('.refused-lines li').allInnerTexts()
    expect(bad.map((line) => /^Line (\d+)/.exec(line)?.[1])).toEqual(['4', '5', '7'])
    expect(bad[0]).toContain('<img src=x onerror=alert(1)>')
    expect(await page.locator('.column img').count()).toBe(0)
    expect(await page.locator('.column .chart circle').count()).toBe(3)
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Download the table as CSV' }).click(),
    ])
    expect(download.suggestedFilename()).toBe('density-and-volume-column.csv')
    const lines = readFileSync(await download.path(), 'utf8')
      .trim()
      .split('\r\n')
    expect(lines).toHaveLength(7)
    expect(lines.map((line) => line.split(',')[0])).toEqual(['line', '1', '2', '4', '5', '6', '7'])
    expect(lines[4]).toContain("'=1+1")
    expect(faults).toEqual([])
    await context.close()
  })

  it('follows the other inputs and the chosen column', async () => {
    const { page, context } = await opened()
    await page.locator('.column textarea').fill('800\n850')
    await page.locator('.column select').first().selectOption('knownDensity')
    await page.locator('.column-table').waitFor()
    const mass = () => page.locator('.column-table tbody tr').first().innerText()
    const before = await mass()
    await page.locator('input[name="volume"]').fill('7')
    await expect.poll(mass, PATIENCE).not.toBe(before)
    await page.locator('input[name="volume"]').fill('nonsense')
    await expect
      .poll(() => page.locator('.column-problems').innerText())
      .toContain('Nothing is computed until')
    expect(await page.locator('.column-table').count()).toBe(0)
    await context.close()
  })

  it('takes five hundred values and says where it stopped', async () => {
    const { page, context } = await opened()
    const text = Array.from({ length: 520 }, (_, index) => String(index / 10)).join('\n')
    await page.locator('.column textarea').fill(text)
    await page.locator('.column-table').waitFor()
    expect(await page.locator('.column-table tbody tr').count()).toBe(500)
    expect(await page.locator('.column-problems').innerText()).toContain(
      'Line 501 and those after it were left out',
    )
    await context.close()
  })
})
