import { readdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { close, createIndex } from 'pagefind'
import type { CustomRecord } from 'pagefind'

/** Pagefind writes its own faces beside the index; this site has its own. */
const unusedFaces = /^pagefind-(component-ui|modular-ui|ui|highlight)\./

/** A page as the index reads it. */
export interface IndexedPage {
  readonly path: string
  readonly content: string
}

/** Indexes pages and further records, and writes the index to the output's folder 'pagefind'. */
export async function writeTextIndex(
  folder: string,
  pages: Iterable<IndexedPage>,
  records: CustomRecord[],
): Promise<void> {
  const { index, errors } = await createIndex({})
  refuse(errors)
  if (!index) throw new Error('Pagefind gave neither an index nor an error')
  try {
    for (const { path, content } of pages) refuse((await index.addHTMLFile({ url: path, content })).errors)
    for (const record of records) refuse((await index.addCustomRecord(record)).errors)
    const outputPath = join(folder, 'pagefind')
    rmSync(outputPath, { recursive: true, force: true })
    refuse((await index.writeFiles({ outputPath })).errors)
    for (const name of readdirSync(outputPath)) if (unusedFaces.test(name)) rmSync(join(outputPath, name))
  } finally {
    await close()
  }
}

function refuse(errors: string[]): void {
  if (errors.length > 0) throw new Error(`Pagefind: ${errors.join('; ')}`)
}
