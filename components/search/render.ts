import { href } from '../layout/href.ts'
import type { Answer, Asked } from './answer.ts'
import { kinds, markedStems } from './group.ts'
import type { Group, Hit } from './group.ts'
import { countOf, notesOn } from './lines.ts'
import { piecesOfExcerpt, piecesOfText } from './pieces.ts'
import type { Piece } from './pieces.ts'

export interface Actions {
  /** All the hits of a group that is shown in part. */
  more(group: Group, asked: Asked): Promise<Hit[]>
  /** Searches for another word in place of the one typed. */
  search(word: string): void
}

/** How much was found and what was done to the query on the way, to be shown and read aloud. */
export function statusOf(answer: Answer): HTMLElement[] {
  return [
    element('p', undefined, countOf(answer)),
    ...notesOn(answer).map((note) => element('p', 'search-note', note)),
  ]
}

/** The answer as elements. Texts go in as text nodes: neither a query nor a page can bring markup. */
export function resultsOf(answer: Answer, idPrefix: string, actions: Actions): HTMLElement[] {
  if (answer.count === 0) return [nothingFound(answer, actions)]
  const stems = markedStems(answer.words)
  const named = answer.named.length > 0 ? [bestMatches(answer.named, stems, idPrefix)] : []
  return [...named, ...answer.groups.map((group) => groupOf(group, answer, stems, idPrefix, actions))]
}

function bestMatches(hits: Hit[], stems: ReadonlySet<string>, idPrefix: string): HTMLElement {
  const section = sectionOf(hits.length === 1 ? 'Best match' : 'Best matches', `${idPrefix}-named`)
  const list = element('ul', 'search-list')
  list.append(...hits.map((hit) => lineOf(hit, stems, kinds.find(({ id }) => id === hit.kind)?.one)))
  section.append(list)
  return section
}

function groupOf(
  group: Group,
  answer: Answer,
  stems: ReadonlySet<string>,
  idPrefix: string,
  actions: Actions,
): HTMLElement {
  const section = sectionOf(group.heading, `${idPrefix}-${group.kind}`, group.count)
  const list = element('ul', 'search-list')
  list.append(...group.hits.map((hit) => lineOf(hit, stems)))
  section.append(list)
  if (group.count > group.hits.length) {
    const button = element('button', 'search-more', `Show all ${group.count}`)
    button.type = 'button'
    button.setAttribute('aria-describedby', `${idPrefix}-${group.kind}`)
    button.addEventListener('click', async () => {
      const shown = new Set([...answer.named, ...group.hits].map((hit) => hit.url))
      const others = (await actions.more(group, answer)).filter((hit) => !shown.has(hit.url))
      // Pressed twice before the first answer came, or gone with the results that it belonged to.
      if (!button.isConnected) return
      const lines = others.map((hit) => lineOf(hit, stems))
      list.append(...lines)
      // Whoever has walked on meanwhile stays there.
      if (document.activeElement === button) lines[0]?.querySelector('a')?.focus()
      button.remove()
    })
    section.append(button)
  }
  return section
}

function sectionOf(heading: string, id: string, count?: number): HTMLElement {
  const section = element('section', 'search-group')
  section.setAttribute('aria-labelledby', id)
  const title = element('h2', 'search-heading', heading)
  title.id = id
  if (count !== undefined) title.append(' ', element('span', 'search-count', String(count)))
  section.append(title)
  return section
}

function lineOf(hit: Hit, stems: ReadonlySet<string>, kind?: string): HTMLElement {
  const link = element('a', 'search-hit')
  link.href = hit.url
  link.dataset['page'] = hit.page
  const title = element('span', 'search-title')
  title.append(...nodesOf(piecesOfText(hit.title, stems)))
  link.append(title)
  if (kind !== undefined) link.append(' ', element('span', 'search-kind', kind))
  if (hit.section !== undefined) {
    const section = element('span', 'search-section')
    section.append(...nodesOf(piecesOfText(hit.section, stems)))
    link.append(' ', section)
  }
  const text = element('span', 'search-text')
  text.append(...nodesOf(hit.excerpt ? piecesOfExcerpt(hit.excerpt) : piecesOfText(hit.summary, stems)))
  link.append(' ', text)
  const line = element('li')
  line.append(link)
  return line
}

function nothingFound(answer: Answer, actions: Actions): HTMLElement {
  const box = element('div', 'search-nothing')
  if (answer.nearest.length > 0) {
    box.append(element('p', undefined, 'The words nearest in spelling:'))
    const list = element('ul', 'search-words')
    for (const word of answer.nearest) {
      const button = element('button', 'search-word', word)
      button.type = 'button'
      button.addEventListener('click', () => actions.search(word))
      const line = element('li')
      line.append(button)
      list.append(line)
    }
    box.append(list)
  }
  box.append(allPages())
  return box
}

/** The way on when the search gives nothing or is not there. */
export function allPages(): HTMLElement {
  const line = element('p')
  const link = element('a', 'search-all', 'All pages from A to Z')
  link.href = href('/all/')
  line.append(link)
  return line
}

function nodesOf(pieces: Piece[]): Node[] {
  return pieces.map(({ text, marked }) =>
    marked ? element('mark', undefined, text) : document.createTextNode(text),
  )
}

export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  className?: string,
  text?: string,
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag)
  if (className !== undefined) made.className = className
  if (text !== undefined) made.textContent = text
  return made
}
