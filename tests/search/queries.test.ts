import { globSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { JSHandle, Page } from 'playwright-core'
import { parse } from 'yaml'
import type { Engine } from '../../components/search/engine.ts'
import { notesOn } from '../../components/search/lines.ts'
import { builtPages } from '../browser/pages.ts'
import { serveSite } from '../browser/site.ts'
import type { Site } from '../browser/site.ts'

interface Query {
  query: string
  /** The page that comes first. */
  first?: string
  /** The page that comes among the first three. */
  top?: string
  shown?: string
}

const queries = parse(readFileSync('tests/search/queries.yaml', 'utf8')) as Query[]
const TOP = 3
/** One query in so many is typed into the field too, and more often one that is misspelt. */
const EVERY = 20
const EVERY_MISSPELT = 4

/** Shares of the queries below which the search has become worse than it was. */
const LEAST_FIRST = 0.8
const LEAST_TOP = 1

const directory = process.env['SITE_DIRECTORY'] ?? 'dist'

let site: Site
let page: Page
let engine: JSHandle<Engine>
beforeAll(async () => {
  site = await serveSite()
  page = (await site.open()).page
  // The built module that the field loads when somebody types.
  const [path = ''] = globSync('_astro/engine.*.js', { cwd: directory })
  const address = JSON.stringify(site.address(path.replaceAll('\\', '/')))
  engine = await page.evaluateHandle<Engine>(`import(${address}).then((module) => module.loadEngine())`)
})
afterAll(() => site.close())

interface Found {
  /** The results in their order. */
  paths: string[]
  notes: string[]
}

const pathOf = (address: string) => new URL(address, site.address()).href.slice(site.address().length)

/** Asks the search without its field. */
async function search(query: string): Promise<Found> {
  const answer = await engine.evaluate((loaded, asked) => loaded.answer(asked), query)
  const hits = [...answer.named, ...answer.groups.flatMap((group) => group.hits)]
  return { paths: hits.map(({ url }) => pathOf(url)), notes: notesOn(answer) }
}

/** Types a query into the field of the start page, and reads what is shown. */
async function searchByField(query: string): Promise<Found> {
  await page.locator('.search-field').fill(query)
  await page.locator(`.search-results[data-query="${query}"]`).waitFor({ state: 'attached' })
  const addresses = await page
    .locator('.search-hit')
    .evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).href))
  return {
    paths: addresses.map(pathOf),
    notes: await page.locator('.search-status .search-note').allTextContents(),
  }
}

/** Whether a result leads to a page: to any heading of it, or to the very entry when one is named. */
function leadsTo(path: string, wanted: string): boolean {
  return wanted.includes('#') ? path === wanted : path.replace(/#.*$/, '') === `${wanted}/`
}

const found = { first: 0, top: 0 }

describe('labelled queries', () => {
  it.each(queries)('$query', async ({ query, first, top, shown }) => {
    const wanted = first ?? top ?? ''
    const { paths, notes } = await search(query)
    const place = paths.findIndex((path) => leadsTo(path, wanted))
    if (place === 0) found.first += 1
    if (place >= 0 && place < TOP) found.top += 1
    const leading = paths.slice(0, first === undefined ? TOP : 1)
    expect(leading).toSatisfy((leads: string[]) => leads.some((path) => leadsTo(path, wanted)))
    expect(notes.join(' ')).toContain(shown === undefined ? '' : `showing “${shown}”`)
  })

  const some = queries.filter(
    ({ shown }, index) => index % (shown === undefined ? EVERY : EVERY_MISSPELT) === 0,
  )
  it.each(some)('$query: the field shows what was found, in that order', async ({ query }) => {
    const found = await search(query)
    expect(found.paths).not.toEqual([])
    expect(await searchByField(query)).toEqual(found)
  })

  it('are found as often as they were', () => {
    const share = (count: number) =>
      `${count} of ${queries.length} (${((100 * count) / queries.length).toFixed(0)} %)`
    console.log(`search: first ${share(found.first)}, among the first three ${share(found.top)}`)
    expect(found.first / queries.length).toBeGreaterThanOrEqual(LEAST_FIRST)
    expect(found.top / queries.length).toBeGreaterThanOrEqual(LEAST_TOP)
  })
})

describe('every page that can be found', () => {
  const findable = builtPages().filter((path) =>
    readFileSync(join(directory, path, 'index.html'), 'utf8').includes('data-pagefind-body'),
  )

  it.each(findable)('/%s comes first when its title is typed', async (path) => {
    const html = readFileSync(join(directory, path, 'index.html'), 'utf8')
    const title = /<h1[^>]*>([^<]*)<\/h1>/.exec(html)?.[1] ?? ''
    expect(title).not.toBe('')
    const { paths } = await search(title.replaceAll('&amp;', '&').replaceAll('&#39;', "'"))
    expect(paths[0]?.replace(/#.*$/, '')).toBe(path)
  })
})
