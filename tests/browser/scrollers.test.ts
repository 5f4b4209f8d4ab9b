import { afterAll, beforeAll, expect, it } from 'vitest'
import { PHONE } from './axe.ts'
import { serveSite, type Site } from './site.ts'

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

const PAGE = 'circuit/viscosity-scales-and-conversions/'

it('a table that goes on to the right fades there on a phone, until one has come to its end', async () => {
  const { page, context, faults } = await site.open(PAGE, { viewport: PHONE })
  const table = page.locator('.scroller[data-goes-on]:has(table)').first()
  await table.scrollIntoViewIfNeeded()
  const handle = await table.elementHandle()
  const fades = () => handle?.evaluate((box) => getComputedStyle(box).maskImage !== 'none')
  expect(await fades()).toBe(true)
  await handle?.evaluate((box) => box.scrollTo({ left: box.scrollWidth }))
  await expect.poll(fades).toBe(false)
  await handle?.evaluate((box) => box.scrollTo({ left: 0 }))
  await expect.poll(fades).toBe(true)
  expect(faults).toEqual([])
  await context.close()
})

it('what there is room for does not fade', async () => {
  const { page, context } = await site.open(PAGE)
  // As on a phone, the script has looked once the boxes have their sizes.
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))))
  expect(await page.locator('.scroller:has(table)').count()).toBeGreaterThan(0)
  expect(await page.locator('.scroller[data-goes-on]:has(table)').count()).toBe(0)
  await context.close()
})
