import { globSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { catalogue } from '../../calculators/catalogue/index.ts'
import { builtPages } from './pages.ts'
import { serveSite, type Site } from './site.ts'

const SITE_DIRECTORY = process.env['SITE_DIRECTORY'] ?? 'dist'
const ONE = 'calculators/viscosity-at-temperature/'
const SEVERAL = 'circuit/viscosity-and-temperature/'

/** Chunks by name, each with its text. */
const chunks = globSync('_astro/*.js', { cwd: SITE_DIRECTORY }).map((path): [string, string] => [
  basename(path),
  readFileSync(join(SITE_DIRECTORY, path), 'utf8'),
])

/** Calculator → chunks that hold its declaration: what it answers is written in no other code. */
const chunksOf = new Map<string, string[]>()
for (const [id, load] of Object.entries(catalogue)) {
  const { purpose } = await load()
  chunksOf.set(
    id,
    chunks.filter(([, text]) => text.includes(purpose)).map(([name]) => name),
  )
}
/** A word that the unit parser's errors have, and no other code. */
const unitParser = chunks.filter(([, text]) => text.includes('ConditionalNode')).map(([name]) => name)

/** Calculators that a built page holds, by its HTML. */
const heldBy = (path: string): string[] => [
  ...new Set(
    [
      ...readFileSync(join(SITE_DIRECTORY, path, 'index.html'), 'utf8').matchAll(
        /data-calculator="([^"]+)"/g,
      ),
    ].map((match) => match[1] ?? ''),
  ),
]

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

/** Opens a page and collects the code it fetches. */
async function opened(
  path: string,
): Promise<{ page: Page; fetched: Set<string>; calculators: () => string[] }> {
  const { page } = await site.open('404.html')
  const fetched = new Set<string>()
  page.on('request', (request) => {
    const { pathname } = new URL(request.url())
    if (pathname.endsWith('.js')) fetched.add(basename(pathname))
  })
  await page.goto(site.address(path))
  for (const form of await page.locator('calculator-form').all()) {
    await form.scrollIntoViewIfNeeded()
    await form.locator('.calculator-actions[data-ready="true"]').waitFor()
  }
  await page.waitForLoadState('networkidle')
  const calculators = () =>
    [...chunksOf].filter(([, names]) => names.some((name) => fetched.has(name))).map(([id]) => id)
  return { page, fetched, calculators }
}

it('every calculator is in exactly one chunk of its own, and the unit parser in one', () => {
  const names = [...chunksOf.values()].flat()
  expect([...chunksOf].filter(([, held]) => held.length !== 1)).toEqual([])
  expect(new Set(names).size).toBe(chunksOf.size)
  expect(unitParser).toHaveLength(1)
})

it.each([ONE, SEVERAL])(
  '%s fetches the code of its own calculators only, and no unit parser',
  async (path) => {
    const { page, fetched, calculators } = await opened(path)
    expect(heldBy(path).length).toBeGreaterThan(path === ONE ? 0 : 1)
    expect(calculators().sort()).toEqual(heldBy(path).sort())
    expect(unitParser.filter((name) => fetched.has(name))).toEqual([])
    await page.context().close()
  },
)

it('the unit parser is fetched for an expression, not for a number with a unit', async () => {
  const { page, fetched } = await opened(ONE)
  const field = page.locator('input[name="wantedTemperature"]')
  await field.fill('50 degC')
  await page.waitForLoadState('networkidle')
  expect(unitParser.filter((name) => fetched.has(name))).toEqual([])
  const answered = page.waitForResponse((response) => response.url().includes(unitParser[0] ?? 'none'))
  await field.fill('300 K + 20 K')
  await answered
  expect(unitParser.filter((name) => fetched.has(name))).toEqual(unitParser)
  await page.context().close()
})

it('a page without a calculator fetches the code of none', async () => {
  const without = builtPages().find((path) => path.startsWith('symptoms/') && heldBy(path).length === 0)
  const { page, fetched, calculators } = await opened(without ?? '')
  expect(without).toBeDefined()
  expect(calculators()).toEqual([])
  expect([...fetched].filter((name) => /^(mount|expression)\./.test(name))).toEqual([])
  await page.context().close()
})
