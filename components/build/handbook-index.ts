import { fileURLToPath } from 'node:url'
import type { AstroIntegration } from 'astro'
import { outputPages } from './output-pages.ts'
import { overBudget, pageSizes, sizeTable } from './page-sizes.ts'
import { writeTextIndex } from './text-index.ts'

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
        logger.info(`search index over ${await writeTextIndex(folder, [])} pages`)
        const sizes = pageSizes(folder, base, pages)
        for (const line of sizeTable(sizes)) logger.info(line)
        const excesses = overBudget(sizes)
        if (excesses.length > 0) throw new Error(`Pages over their budget:\n${excesses.join('\n')}`)
      },
    },
  }
}
