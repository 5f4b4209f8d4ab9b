import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { CustomRecord } from 'pagefind'
import { parse } from 'yaml'
import type { OutputPage } from './output-pages.ts'

const TERMS = join('content', 'glossary', 'terms.yaml')
const GLOSSARY = '/glossary/'

interface Term {
  term: string
  definition: string
  forms?: string[]
  alsoCalled?: string[]
}

/** A result of its own for each term of the glossary, since the page that lists them all is about none of them. */
export function glossaryRecords(pages: OutputPage[]): CustomRecord[] {
  const glossary = pages.find((page) => page.path === GLOSSARY)
  if (!glossary || !existsSync(TERMS)) return []
  const terms = Object.entries(parse(readFileSync(TERMS, 'utf8')) as Record<string, Term>)
  const missing = terms.map(([id]) => id).filter((id) => !glossary.html.includes(`id="${id}"`))
  if (missing.length > 0) throw new Error(`${GLOSSARY} has no element with the id of ${missing.join(', ')}`)
  return terms.map(([id, { term, definition, forms = [], alsoCalled = [] }]) => {
    const aliases = [...new Set([...forms, ...alsoCalled])].filter((name) => name !== term).join('; ')
    return {
      url: `${GLOSSARY}#${id}`,
      language: 'en',
      content: `${term}. ${definition}`,
      meta: { title: term, summary: definition, kind: 'glossary', ...(aliases === '' ? {} : { aliases }) },
      filters: { kind: ['glossary'] },
    }
  })
}
