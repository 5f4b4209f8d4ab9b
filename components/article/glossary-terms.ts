import type { Element, ElementContent, Parents, Root, Text } from 'hast'
import { visitParents } from 'unist-util-visit-parents'

export interface GlossaryTerm {
  readonly id: string
  readonly term: string
  /** The forms in which it stands in a text, the term itself included. */
  readonly forms: readonly string[]
  readonly definition: string
}

/** Where a mark would be in the way: text that is already a link or a control, a title, code, a drawing, a formula. */
const untouched = new Set(
  `h1 h2 h3 h4 h5 h6 a button summary label select textarea option
   code pre kbd samp th caption figure svg math script style template
   dialog noscript astro-island calculator-form circuit-bench`.split(/\s+/),
)

/**
 * Turns the first use of each glossary term in a piece of HTML into a button that opens its definition, and puts
 * the definitions at the end. Whole words only, in any of the term's forms; inside a longer term ('bypass valve')
 * a shorter one ('valve') is not marked.
 * @param tree the HTML, changed in place
 * @param terms all terms of the glossary
 * @param address gives the address of a term's entry in the glossary
 */
export function markTerms(
  tree: Root,
  terms: readonly GlossaryTerm[],
  address: (termId: string) => string,
): void {
  const termByForm = new Map(terms.flatMap((term) => term.forms.map((form) => [normal(form), term] as const)))
  if (termByForm.size === 0) return
  const pattern = anyOf([...termByForm.keys()])
  const marked = new Map<string, GlossaryTerm>()
  const replacements: { text: Text; parent: Parents; parts: ElementContent[] }[] = []

  visitParents(tree, 'text', (text: Text, ancestors) => {
    if (ancestors.some(isUntouched)) return
    const parts: ElementContent[] = []
    let end = 0
    for (const match of text.value.matchAll(pattern)) {
      const term = termByForm.get(normal(match[0]))
      if (!term || marked.has(term.id)) continue
      marked.set(term.id, term)
      parts.push({ type: 'text', value: text.value.slice(end, match.index) }, termButton(term, match[0]))
      end = match.index + match[0].length
    }
    const parent = ancestors.at(-1)
    if (parts.length === 0 || !parent) return
    replacements.push({ text, parent, parts: [...parts, { type: 'text', value: text.value.slice(end) }] })
  })

  for (const { text, parent, parts } of replacements) {
    const siblings = parent.children as ElementContent[]
    siblings.splice(
      siblings.indexOf(text),
      1,
      ...parts.filter((part) => part.type !== 'text' || part.value !== ''),
    )
  }
  for (const term of marked.values()) tree.children.push(definition(term, address(term.id)))
}

function isUntouched(node: Parents): boolean {
  return (
    node.type === 'element' &&
    (untouched.has(node.tagName) || 'dataNoTerms' in node.properties || 'popover' in node.properties)
  )
}

const normal = (form: string) => form.toLowerCase().replaceAll(/\s+/g, ' ')

/** Longest form first, so that a longer term wins where a shorter one begins at the same letter. */
function anyOf(forms: string[]): RegExp {
  const alternatives = forms
    .sort((a, b) => b.length - a.length)
    .map((form) => form.replaceAll(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`).replaceAll(' ', String.raw`\s+`))
  const word = String.raw`[\p{L}\p{N}-]`
  return new RegExp(`(?<!${word})(?:${alternatives.join('|')})(?!${word})`, 'giu')
}

function termButton(term: GlossaryTerm, words: string): Element {
  return {
    type: 'element',
    tagName: 'button',
    properties: { type: 'button', className: ['term'], popoverTarget: noteId(term) },
    children: [{ type: 'text', value: words }],
  }
}

function definition(term: GlossaryTerm, address: string): Element {
  const element = (tagName: string, properties: Element['properties'], text: string): Element => ({
    type: 'element',
    tagName,
    properties,
    children: [{ type: 'text', value: text }],
  })
  return {
    type: 'element',
    tagName: 'div',
    properties: { id: noteId(term), className: ['term-note'], popover: 'auto', dataPagefindIgnore: '' },
    children: [
      element('p', { className: ['term-note-title'] }, term.term),
      element('p', {}, term.definition),
      element('a', { href: address }, 'In the glossary'),
    ],
  }
}

const noteId = (term: GlossaryTerm) => `term-${term.id}`
