import { searchWords, stem, stemsOf } from './query.ts'
import type { PagefindPage, PagefindSection } from './pagefind.ts'

/** Kinds of pages in the order in which their results stand: whoever searches mostly has a fault before them. */
export const kinds = [
  { id: 'symptom', one: 'Symptom', heading: 'Symptoms' },
  { id: 'procedure', one: 'Procedure', heading: 'Procedures' },
  { id: 'circuit', one: 'Circuit', heading: 'How the circuit works' },
  { id: 'calculator', one: 'Calculator', heading: 'Calculators' },
  { id: 'glossary', one: 'Glossary', heading: 'Glossary' },
  { id: 'other', one: 'Handbook', heading: 'Other pages' },
] as const

export type KindOfResult = (typeof kinds)[number]['id']

/** One line of the results. */
export interface Hit {
  title: string
  url: string
  kind: KindOfResult
  /** Heading at which it opens, when that is not the top of the page. */
  section?: string
  summary: string
  /** Text around the words found, as Pagefind gives it; absent when the title or the summary has the words. */
  excerpt?: string
  score: number
  /** How well the page's own names fit: see `fitOf`. */
  fit: number
}

/** Results of one kind: those loaded, and how many there are. */
export interface Group {
  kind: KindOfResult
  heading: string
  hits: Hit[]
  count: number
}

/** A page's name is the words asked for, and no others. */
export const SAME_NAME = 2
/** One of a page's names holds all the words asked for. */
export const NAME_HOLDS_ALL = 1

/** How well a title and other names fit the words of a query: the same, holding all of them, or 0. */
export function fitOf(words: string[], title: string, aliases: string): number {
  const wanted = stemsOf(words.join(' '))
  let fit = 0
  for (const name of [title, ...aliases.split(';')]) {
    const held = stemsOf(name)
    if (![...wanted].every((part) => held.has(part))) continue
    const meaningful = stemsOf(searchWords(name).join(' '))
    fit = Math.max(fit, [...meaningful].every((part) => wanted.has(part)) ? SAME_NAME : NAME_HOLDS_ALL)
  }
  return fit
}

/** The line of the results for a page, opening at the heading under which the words stand. */
export function hitOf(page: PagefindPage, score: number, words: string[]): Hit {
  const { title = page.url, summary = '', aliases = '', kind } = page.meta
  const fit = fitOf(words, title, aliases)
  const held = stemsOf(`${title} ${summary} ${aliases}`)
  const base = { title, summary, kind: kindOf(kind), score, fit }
  if ([...stemsOf(words.join(' '))].every((part) => held.has(part))) return { ...base, url: page.url }
  const section = bestSection(page.sub_results)
  if (section === undefined) return { ...base, url: page.url, excerpt: page.excerpt }
  return { ...base, url: section.url, section: section.title, excerpt: section.excerpt }
}

/** Hits of one kind, those first whose names fit, then as Pagefind scored them. */
export function ranked(hits: Hit[]): Hit[] {
  return [...hits].sort((a, b) => b.fit - a.fit || b.score - a.score)
}

/**
 * The page that the query names: the only one with a name that is the query, else the only one with a name that
 * holds all of it. A term of the glossary is left where it stands: its word is in the pages' names too.
 */
export function bestOf(groups: Group[]): Hit | undefined {
  const pages = groups.flatMap((group) => (group.kind === 'glossary' ? [] : group.hits))
  for (const fit of [SAME_NAME, NAME_HOLDS_ALL]) {
    const fitting = pages.filter((hit) => hit.fit >= fit)
    if (fitting.length > 0) return fitting.length === 1 ? fitting[0] : undefined
  }
  return undefined
}

function kindOf(kind: string | undefined): KindOfResult {
  return kinds.find((known) => known.id === kind)?.id ?? 'other'
}

function bestSection(sections: PagefindSection[]): PagefindSection | undefined {
  const weight = (section: PagefindSection) =>
    section.weighted_locations.reduce((sum, location) => sum + location.balanced_score, 0)
  return sections
    .filter((section) => section.anchor !== undefined && section.anchor.element !== 'h1')
    .sort((a, b) => weight(b) - weight(a))[0]
}

/** Stems by which a query's words are marked in titles and summaries; a hyphened word is marked as a whole. */
export function markedStems(words: string[]): Set<string> {
  return new Set(words.map((word) => stem(word.replaceAll('-', ''))))
}
