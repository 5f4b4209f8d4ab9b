import type { Element, Nodes, Root } from 'hast'
import rehypeParse from 'rehype-parse'
import rehypeStringify from 'rehype-stringify'
import { unified } from 'unified'

const html = unified().use(rehypeParse).use(rehypeStringify)

const heading = /^h[2-6]$/

/** Elements that stand within a word or a formula. */
const withinWords = new Set(['sub', 'sup', 'math', 'wbr', 'em', 'strong', 'b', 'i', 'mark'])

/** Reads a page of the output. */
export function treeOf(page: string): Root {
  return html.parse(page)
}

/**
 * A page as the index reads it, from its tree, which is changed. Cells and labels whose words would run into each other, since only the style sheet
 * keeps them apart, get a space between them; a heading without an id takes the id of the box that it heads, so that
 * a result can open there.
 */
export function indexedHtml(tree: Root): string {
  prepare(tree)
  return html.stringify(tree)
}

function prepare(node: Nodes): void {
  if (!('children' in node)) return
  if (node.type === 'element') handIdToHeading(node)
  for (const child of node.children) prepare(child)
  node.children = node.children.flatMap((child) =>
    child.type === 'element' && !withinWords.has(child.tagName)
      ? [child, { type: 'text' as const, value: ' ' }]
      : [child],
  ) as typeof node.children
}

function handIdToHeading(box: Element): void {
  const first = box.children.find((child) => child.type === 'element')
  const id = box.properties['id']
  if (id === undefined || first?.type !== 'element' || !heading.test(first.tagName)) return
  if (first.properties['id'] !== undefined) return
  first.properties['id'] = id
  delete box.properties['id']
}
