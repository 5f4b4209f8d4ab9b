import { formsOf, plain, searchWords, stem, stemsOf } from './query.ts'
import { withoutHeading } from './pieces.ts'
import type { PagefindPage, PagefindSection } from './pagefind.ts'

/** Kinds of pages in the order in which their results stand: whoever searches mostly has a fault before them. */
export const kinds = [
  { id: 'symptom', one: 'Symptom', heading: 'Symptoms' },
  { id: 'procedure', one: 'Procedure', heading: 'Procedures' },
  { id: 'circuit', one: 'Circuit', heading: 'How the circuit works' },
  { id: 'bench', one: 'Bench', heading: 'Benches' },
  { id: 'lesson', one: 'Lesson', heading: 'Lessons' },
  { id: 'calculator', one: 'Calculator', heading: 'Calculators' },
  { id: 'table', one: 'Table', heading: 'Tables' },
  { id: 'caution', one: 'Caution', heading: 'Cautions' },
  { id: 'glossary', one: 'Glossary', heading: 'Glossary' },
  { id: 'other', one: 'Handbook', heading: 'Other pages' },
] as const

export type KindOfResult = (typeof kinds)[number]['id']

/** Kinds whose results are entries of one page that lists them. */
const entryKinds: ReadonlySet<KindOfResult> = new Set(['caution', 'glossary'])

/** One line of the results. */
export interface Hit {
  title: string
  /** Address of the page or entry, whatever heading of it the line opens. */
  page: string
  url: string
  kind: KindOfResult
  /** Heading at which it opens, when that is not the top of the page. */
  section?: string
  summary: string
  /** Text around the words found, as Pagefind gives it; absent when the title or the summary has the words. */
  excerpt?: string
  score: number
  /** How well the page's own names fit: see `fits`. */
  fit: number
}

/** Results of one kind: those loaded, and how many there are. */
export interface Group {
  kind: KindOfResult
  heading: string
  hits: Hit[]
  count: number
}

/** How well a page's names fit the words asked for, the better the higher; 0 when none fits. */
export const fits = {
  /** The title was typed as it stands. */
  title: 5,
  /** The title is made of the words asked for and fillers. */
  wordsOfTitle: 4,
  /** Another name is made of the words asked for and fillers. */
  wordsOfAlias: 3,
  /** The title has all the words asked for, and more. */
  inTitle: 2,
  /** Another name has all the words asked for, and more. */
  inAlias: 1,
} as const

/** Most pages that are put before the groups because a query names them; more are not told apart by it. */
const MOST_NAMED = 6

/** Length from which a word fits a longer one that begins with it, as it does in Pagefind's index. */
const SHORTEST_BEGINNING = 3

/** How well the names of a page fit the words of a query: one of `fits`, or 0. */
export function fitOf(words: string[], title: string, aliases: string): number {
  const asked = [...stemsOf(words.join(' '))]
  const fit = (name: string, same: number, more: number): number => {
    if (!holdsAll(stemsOf(name), asked)) return 0
    return searchWords(name).every((word) => isAsked(word, asked)) ? same : more
  }
  return Math.max(
    fit(title, fits.wordsOfTitle, fits.inTitle),
    ...aliases.split(';').map((alias) => fit(alias, fits.wordsOfAlias, fits.inAlias)),
  )
}

/** Whether a word of a name was asked for: as a whole, or in all the parts that its hyphens join. */
function isAsked(word: string, asked: readonly string[]): boolean {
  const forms = formsOf(word).map(stem)
  const parts = forms.length > 1 ? forms.slice(0, -1) : forms
  const fits = (part: string) => asked.some((typed) => fitsWord(part, typed))
  return parts.every(fits) || forms.slice(-1).every(fits)
}

function holdsAll(held: ReadonlySet<string>, asked: readonly string[]): boolean {
  return asked.every((word) => held.has(word) || [...held].some((part) => fitsWord(part, word)))
}

function fitsWord(part: string, word: string): boolean {
  return part === word || (word.length >= SHORTEST_BEGINNING && part.startsWith(word))
}

/** The line of the results for a page, opening at the heading under which the words stand. */
export function hitOf(page: PagefindPage, score: number, query: string, words: string[]): Hit {
  const { title = page.url, summary = '', aliases = '', kind } = page.meta
  const fit = plain(title) === plain(query.trim()) ? fits.title : fitOf(words, title, aliases)
  const named = holdsAll(stemsOf(`${title} ${summary} ${aliases}`), [...stemsOf(words.join(' '))])
  const base = { title, page: page.url, summary, kind: kindOf(kind), score, fit }
  if (named) return { ...base, url: page.url }
  const section = bestSection(page.sub_results)
  if (section === undefined) return { ...base, url: page.url, excerpt: page.excerpt }
  return {
    ...base,
    url: section.url,
    section: section.title,
    excerpt: withoutHeading(section.excerpt, section.title),
  }
}

/** Hits of one kind, those first whose names fit, then as Pagefind scored them. */
export function ranked(hits: Hit[]): Hit[] {
  return [...hits].sort((a, b) => b.fit - a.fit || b.score - a.score)
}

/**
 * The few pages that the query names, in the order of the groups: those with the best fitting names. Where these are
 * many, only those whose title begins with the query's first word; where these are many too, none. An entry of a list, such as a term of the glossary, comes in only where it is
 * the query and no page has that in its title.
 */
export function namedBy(groups: Group[], words: string[]): Hit[] {
  const hits = groups.flatMap((group) => group.hits)
  const pages = hits.filter((hit) => !entryKinds.has(hit.kind))
  const best = Math.max(0, ...pages.map(levelOf))
  let named = pages.filter((hit) => levelOf(hit) === best && best > 0)
  if (best < fits.inTitle) {
    const entries = hits.filter((hit) => entryKinds.has(hit.kind) && hit.fit >= fits.wordsOfAlias)
    if (entries.length > 0) named = entries
  }
  if (named.length > MOST_NAMED) named = named.filter((hit) => beginsWith(hit.title, words))
  return named.length <= MOST_NAMED ? named : []
}

function beginsWith(title: string, [first]: string[]): boolean {
  const [opening] = searchWords(title)
  return first !== undefined && opening !== undefined && stem(opening) === stem(first)
}

/** A page that has the words in its title is named as well as one that goes by them. */
function levelOf({ fit }: Hit): number {
  return fit === fits.wordsOfAlias ? fits.inTitle : fit
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
