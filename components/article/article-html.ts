import type { Element } from 'hast'
import { toString } from 'hast-util-to-string'
import rehypeParse from 'rehype-parse'
import rehypeStringify from 'rehype-stringify'
import { unified } from 'unified'
import { visitParents } from 'unist-util-visit-parents'
import { markTerms, type GlossaryTerm } from './glossary-terms.ts'

export interface Heading {
  readonly id: string
  readonly text: string
  readonly level: 2 | 3
}

const parser = unified().use(rehypeParse, { fragment: true })
const printer = unified().use(rehypeStringify)

/** Markdown says neither what a header cell heads nor that the corner of a table, an empty one, heads nothing. */
function settleHeader(cell: Element): void {
  if (toString(cell).trim() === '') cell.tagName = 'td'
  else cell.properties['scope'] ??= 'col'
}

/**
 * The last hand on an article's HTML: glossary terms marked, header cells settled, and its headings
 * for the list 'on this page'.
 * @param html what the article's parts have rendered
 * @param terms all terms of the glossary
 * @param address gives the address of a term's entry in the glossary
 */
export function finishArticle(
  html: string,
  terms: readonly GlossaryTerm[],
  address: (termId: string) => string,
): { html: string; headings: Heading[] } {
  const tree = parser.parse(html)
  const headings: Heading[] = []
  visitParents(tree, 'element', (node: Element) => {
    const id = node.properties['id']
    if ((node.tagName === 'h2' || node.tagName === 'h3') && typeof id === 'string') {
      headings.push({ id, text: toString(node).trim(), level: node.tagName === 'h2' ? 2 : 3 })
    }
    if (node.tagName === 'th') settleHeader(node)
  })
  markTerms(tree, terms, address)
  return { html: printer.stringify(tree), headings }
}
