import type { Element, Root, RootContent } from 'hast'
import { toString } from 'hast-util-to-string'
import type { CustomRecord } from 'pagefind'
import { formsOf, wordsOf } from '../search/query.ts'

/** A word in a title, a heading or another name weighs as much as this many in running text. */
const WEIGHT_OF_NAMES = 5

const names = /^h[1-6]$/

/** How often each word stands in the pages that can be found and in the entries of lists. */
export class WordUses {
  private readonly uses = new Map<string, number>()

  addPage(tree: Root): void {
    this.visit(tree, false)
  }

  addRecord({ content, meta }: CustomRecord): void {
    this.add(content, 1)
    this.add(`${meta?.['title']} ${meta?.['aliases'] ?? ''}`, WEIGHT_OF_NAMES)
  }

  /** The words in the order of the alphabet. */
  sorted(): Record<string, number> {
    return Object.fromEntries([...this.uses].sort(([a], [b]) => a.localeCompare(b)))
  }

  private add(text: string, weight: number): void {
    for (const word of wordsOf(text).flatMap(formsOf))
      this.uses.set(word, (this.uses.get(word) ?? 0) + weight)
  }

  private visit(node: Root | RootContent, found: boolean): void {
    if (node.type === 'text' && found) this.add(node.value, 1)
    if (node.type !== 'element' && node.type !== 'root') return
    const inBody = found || (node.type === 'element' && has(node, 'dataPagefindBody'))
    if (node.type === 'element' && inBody) {
      if (node.properties['dataPagefindMeta'] === 'aliases') return this.add(toString(node), WEIGHT_OF_NAMES)
      if (has(node, 'dataPagefindIgnore')) return
      if (names.test(node.tagName)) return this.add(toString(node), WEIGHT_OF_NAMES)
    }
    for (const child of node.children) this.visit(child, inBody)
  }
}

function has(element: Element, property: string): boolean {
  return element.properties[property] !== undefined
}
