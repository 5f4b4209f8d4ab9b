import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { CustomRecord } from 'pagefind'
import { parse } from 'yaml'
import type { OutputPage } from './output-pages.ts'

/** A page that lists many entries is about none of them, so each entry is found by itself. */
interface ListPage {
  /** The page, on which each entry's element has the entry's id. */
  path: string
  kind: string
  file: string
  read(entry: Record<string, unknown>): { title: string; summary: string; content: string; aliases: string[] }
}

const texts = (value: unknown): string[] => (Array.isArray(value) ? value.map(String) : [])

const listPages: ListPage[] = [
  {
    path: '/glossary/',
    kind: 'glossary',
    file: join('content', 'glossary', 'terms.yaml'),
    read: ({ term, definition, forms, alsoCalled }) => ({
      title: String(term),
      summary: String(definition),
      content: String(definition),
      aliases: [...texts(forms), ...texts(alsoCalled)].filter((name) => name !== term),
    }),
  },
  {
    path: '/cautions/',
    kind: 'caution',
    file: join('content', 'cautions', 'cautions.yaml'),
    read: ({ signal, title, hazard, consequence, avoid }) => ({
      title: String(title),
      summary: `${signal}. ${hazard}`,
      content: `${signal}. ${hazard} ${consequence} ${texts(avoid).join(' ')}`,
      aliases: [],
    }),
  },
]

/** The entries of the pages that list terms and cautions. An entry that its page does not show fails the build. */
export function listEntries(pages: OutputPage[]): CustomRecord[] {
  return listPages.flatMap(({ path, kind, file, read }) => {
    const page = pages.find((candidate) => candidate.path === path)
    if (!page || !existsSync(file)) return []
    const entries = Object.entries(
      parse(readFileSync(file, 'utf8')) as Record<string, Record<string, unknown>>,
    )
    const missing = entries.map(([id]) => id).filter((id) => !page.html.includes(`id="${id}"`))
    if (missing.length > 0) throw new Error(`${path} has no element with the id of ${missing.join(', ')}`)
    return entries.map(([id, entry]): CustomRecord => {
      const { title, summary, content, aliases } = read(entry)
      const names = [...new Set(aliases)].join('; ')
      return {
        url: `${path}#${id}`,
        language: 'en',
        content: `${title}. ${content}`,
        meta: { title, summary, kind, ...(names === '' ? {} : { aliases: names }) },
        filters: { kind: [kind] },
      }
    })
  })
}
