import { LinkChecker } from 'linkinator'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { builtPages } from './pages.ts'
import { serveSite, type Site } from './site.ts'

let site: Site
beforeAll(async () => {
  site = await serveSite()
})
afterAll(() => site.close())

describe('links', () => {
  it('every link and every anchor leads somewhere, and every page is reached from the start page', async () => {
    const checked = new Set<string>()
    const result = await new LinkChecker().check({
      path: site.address(),
      recurse: true,
      checkFragments: true,
      // On a busy machine the server may have shut the connection at the moment at which it is used again.
      retryErrors: true,
      // The sources name their publishers in words; a link that leaves the site is a mistake here.
      linksToSkip: ['^(mailto|data):'],
    })
    const broken = result.links
      .filter((link) => link.state === 'BROKEN')
      .map((link) => `${link.parent} → ${link.url}`)
    expect(broken).toEqual([])
    for (const link of result.links) checked.add(link.url.split('#')[0] ?? '')
    const unreached = builtPages().filter((path) => path !== '404/' && !checked.has(site.address(path)))
    expect(unreached).toEqual([])
  }, 120_000)
})
