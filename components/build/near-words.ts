import type { Element, Root, RootContent } from 'hast'
import { toString } from 'hast-util-to-string'
import type { CustomRecord } from 'pagefind'
import { formsOf, wordsOf } from '../search/query.ts'
import { treeOf } from './indexed-html.ts'
import type { OutputPage } from './output-pages.ts'

/** A word in a title, a heading or another name weighs as much as this many in running text. */
const WEIGHT_OF_NAMES = 5

const names = /^h[1-6]$/

/** How often each word stands in the pages that can be found and in the given records. */
export function nearWords(pages: OutputPage[], records: CustomRecord[]): Record<string, number> {
  const uses = new Map<string, number>()
  const add = (text: string, weight: number) => {
    for (const word of wordsOf(text).flatMap(formsOf)) uses.set(word, (uses.get(word) ?? 0) + weight)
  }
  const visit = (node: Root | RootContent, found: boolean): void => {
    if (node.type === 'text' && found) add(node.value, 1)
    if (node.type !== 'element' && node.type !== 'root') return
    const inBody = found || (node.type === 'element' && has(node, 'dataPagefindBody'))
    if (node.type === 'element' && inBody) {
      if (node.properties['dataPagefindMeta'] === 'aliases') return add(toString(node), WEIGHT_OF_NAMES)
      if (has(node, 'dataPagefindIgnore')) return
      if (names.test(node.tagName)) return add(toString(node), WEIGHT_OF_NAMES)
    }
    for (const child of node.children) visit(child, inBody)
  }
  for (const page of pages) visit(treeOf(page.html), false)
  for (const { content, meta } of records) {
    add(content, 1)
    add(`${meta?.['title']} ${meta?.['aliases'] ?? ''}`, WEIGHT_OF_NAMES)
  }
  return Object.fromEntries([...uses].sort(([a], [b]) => a.localeCompare(b)))
}

function has(element: Element, property: string): boolean {
  return element.properties[property] !== undefined
}
