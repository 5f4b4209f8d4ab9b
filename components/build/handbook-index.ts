import { createHash } from 'node:crypto'
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import type { AstroIntegration } from 'astro'
import { nearWordsBudget } from './budgets.ts'
import { indexedHtml, treeOf } from './indexed-html.ts'
import { listEntries } from './list-entries.ts'
import { WordUses } from './near-words.ts'
import { outputPages } from './output-pages.ts'
import type { OutputPage } from './output-pages.ts'
import { overBudget, pageSizes, sizeTable } from './page-sizes.ts'
import { writeTextIndex, type IndexedPage } from './text-index.ts'

/** After each build: writes the search index, prints what the pages weigh and holds them to their budgets. */
export function handbookIndex(): AstroIntegration {
  let base = '/'
  return {
    name: 'handbook-index',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = config.base
      },
      'astro:build:done': async ({ dir, logger }) => {
        const folder = fileURLToPath(dir)
        const pages = outputPages(folder)
        if (pages.length === 0) {
          logger.warn('no pages in the output yet: nothing to index')
          return
        }
        const excesses: string[] = []
        const found = pages.filter((page) => page.html.includes('data-pagefind-body'))
        if (found.length > 0) {
          const wordBytes = await writeSearch(folder, pages, found)
          logger.info(`search: ${found.length} pages; words for near spellings ${wordBytes} bytes compressed`)
          if (wordBytes > nearWordsBudget) {
            excesses.push(`search/near.json is ${wordBytes} bytes compressed, allowed: ${nearWordsBudget}`)
          }
        } else {
          logger.warn('no page has data-pagefind-body: nothing to search')
        }
        const sizes = pageSizes(folder, base, pages)
        for (const line of sizeTable(sizes)) logger.info(line)
        excesses.push(...overBudget(sizes))
        if (excesses.length > 0) throw new Error(`Over the budgets of the build:\n${excesses.join('\n')}`)
      },
    },
  }
}

/**
 * Writes the index and, beside it, the words of the handbook with the tag of the index that they belong to.
 * Returns the compressed bytes of the words.
 */
async function writeSearch(folder: string, pages: OutputPage[], found: OutputPage[]): Promise<number> {
  const records = listEntries(pages)
  const uses = new WordUses()
  for (const record of records) uses.addRecord(record)
  await writeTextIndex(folder, indexed(found, uses), records)
  const entry = readFileSync(join(folder, 'pagefind', 'pagefind-entry.json'))
  const tag = createHash('sha256').update(entry).digest('hex').slice(0, 12)
  const json = JSON.stringify({ tag, words: uses.sorted() })
  mkdirSync(join(folder, 'search'), { recursive: true })
  writeFileSync(join(folder, 'search', 'near.json'), json)
  return gzipSync(json).length
}

/** Each page as the index reads it, its words counted on the way: to read a page takes longer than all that is done with it. */
function* indexed(pages: OutputPage[], uses: WordUses): Generator<IndexedPage> {
  for (const { path, html } of pages) {
    const tree = treeOf(html)
    uses.addPage(tree)
    yield { path, content: indexedHtml(tree) }
  }
}
