import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Element, Parents, Root } from 'hast'
import { toString } from 'hast-util-to-string'
import rehypeParse from 'rehype-parse'
import { unified } from 'unified'
import { SKIP, visitParents } from 'unist-util-visit-parents'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { builtPages } from './pages.ts'

const directory = process.env['SITE_DIRECTORY'] ?? 'dist'

const terms = parse(readFileSync('content/glossary/terms.yaml', 'utf8')) as Readonly<
  Record<string, { readonly forms: readonly string[] }>
>
const plain = (words: string) => words.toLowerCase().replaceAll(/\s+/g, ' ')
const termOf = new Map(
  Object.entries(terms).flatMap(([id, { forms }]) => forms.map((form) => [plain(form), id])),
)
/** Any form as whole words, the longest that begins at a place. */
const FORMS = new RegExp(
  `(?<![\\p{L}\\p{N}-])(?:${[...termOf.keys()]
    .toSorted((one, other) => other.length - one.length)
    .map((form) => form.replaceAll(/[.*+?^${}()|[\]\\/]/g, '\\$&').replaceAll(' ', '\\s+'))
    .join('|')})(?![\\p{L}\\p{N}-])`,
  'giu',
)

/** Where no term is marked: links and controls, headings, drawings, formulas, and what says so itself. */
const WITHOUT_MARKS =
  /^(h[1-6]|a|button|summary|label|select|textarea|option|code|pre|kbd|samp|th|caption|figure|svg|math|script|style|template|dialog|noscript|astro-island|calculator-form|circuit-bench)$/
const classesOf = ({ properties }: Element): readonly unknown[] => [properties['className'] ?? []].flat()

const isWithoutMarks = (node: Parents) =>
  node.type === 'element' &&
  !classesOf(node).includes('term') &&
  (WITHOUT_MARKS.test(node.tagName) || 'dataNoTerms' in node.properties || 'popover' in node.properties)

/** What a built article says of its terms. */
function termsOf(html: string) {
  const tree: Root = unified().use(rehypeParse).parse(html)
  const marked: string[] = []
  const notes = new Map<string, string>()
  const used = new Set<string>()
  visitParents(tree, 'element', (prose: Element) => {
    if (!classesOf(prose).includes('prose')) return
    visitParents(prose, (node, ancestors) => {
      if (node.type === 'element' && classesOf(node).includes('term'))
        marked.push(String(node.properties['popoverTarget'] ?? '').replace('term-', ''))
      if (node.type === 'element' && classesOf(node).includes('term-note')) {
        const link = node.children.find((child) => child.type === 'element' && child.tagName === 'a')
        notes.set(
          String(node.properties['id']).replace('term-', ''),
          link?.type === 'element' ? String(link.properties['href']) : toString(node),
        )
      }
      if (node.type === 'text' && !ancestors.some(isWithoutMarks))
        for (const [form] of node.value.matchAll(FORMS)) used.add(termOf.get(plain(form)) ?? form)
    })
    return SKIP
  })
  return { marked, notes, used }
}

/** The instructor's page and the record are no reading: their few words need no glossary. */
const articles = builtPages().filter((path) =>
  /^(circuit|symptoms|procedures|lessons)\/(?!instructor\/|record\/)./.test(path),
)

describe('terms of the glossary', () => {
  it.each(articles)('/%s: each that stands in the text is linked, and once', (path) => {
    const { marked, notes, used } = termsOf(readFileSync(join(directory, path, 'index.html'), 'utf8'))
    expect(marked.length).toBeGreaterThan(0)
    expect(marked.filter((id, place) => marked.indexOf(id) !== place)).toEqual([])
    expect([...used].sort()).toEqual([...marked].sort())
    for (const id of marked) expect(notes.get(id)).toMatch(new RegExp(`/glossary/#${id}$`))
  })
})
