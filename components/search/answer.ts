import { hitOf, kinds, namedBy, ranked } from './group.ts'
import type { Group, Hit, KindOfResult } from './group.ts'
import type { Mended, Vocabulary } from './near.ts'
import type { Pagefind, PagefindResult } from './pagefind.ts'
import { searchWords } from './query.ts'

/** What a search found, and what was done to the query on the way. */
export interface Answer {
  query: string
  /** The words that were searched for in the end. */
  words: string[]
  /** The pages that the query names: they stand before the groups. */
  named: Hit[]
  groups: Group[]
  /** Pages found, shown or not. */
  count: number
  mended: Mended[]
  /** Words that the handbook does not have and that were left out. */
  unknown: string[]
  /** No page has all the words; those shown have most of them. */
  partial: boolean
  /** Words near to the ones that nothing was found for. */
  nearest: string[]
}

/** What somebody asked: as it was typed, and the words it came to. */
export type Asked = Pick<Answer, 'query' | 'words'>

/** Lines of one kind that are loaded and shown before somebody asks for more. */
const SHOWN_OF_A_KIND = 5

/** Lines shown when no page has all the words. */
const SHOWN_OF_PARTIAL = 8

const NEAREST_OFFERED = 5

/**
 * Searches the handbook: first for all the words, then, when no page has them all, for the pages with most of
 * them. A word that the handbook does not have is replaced by the nearest in spelling, and the answer says so.
 */
export async function answerTo(query: string, pagefind: Pagefind, vocabulary: Vocabulary): Promise<Answer> {
  const typed = searchWords(query)
  const { words, mended, unknown } = vocabulary.mend(typed)
  const common = { query, words: words.flatMap((word) => word.split(' ')), mended, unknown, nearest: [] }
  if (words.length > 0) {
    const groups = await withAllWords(common, pagefind)
    if (groups.length > 0) return { ...common, ...arranged(groups, common.words), partial: false }
    const some = await withMostWords(common, pagefind)
    if (some.length > 0) return { ...common, ...arranged(some, common.words), partial: true }
  }
  const nearest = [...new Set(typed.flatMap((word) => vocabulary.nearest(word, NEAREST_OFFERED)))]
  return {
    ...common,
    named: [],
    groups: [],
    count: 0,
    partial: false,
    nearest: nearest.slice(0, NEAREST_OFFERED),
  }
}

/** All the pages of one kind for a query that has been answered. */
export async function moreOf(group: Group, asked: Asked, pagefind: Pagefind): Promise<Hit[]> {
  return ranked(await loaded((await ofKind(group.kind, asked, pagefind)).results, asked))
}

async function withAllWords(asked: Asked, pagefind: Pagefind): Promise<Group[]> {
  const groups = await Promise.all(
    kinds.map(async ({ id, heading }): Promise<Group> => {
      const { results } = await ofKind(id, asked, pagefind)
      const hits = ranked(await loaded(results.slice(0, SHOWN_OF_A_KIND), asked))
      return { kind: id, heading, hits, count: results.length }
    }),
  )
  return groups.filter((group) => group.count > 0)
}

async function withMostWords(asked: Asked, pagefind: Pagefind): Promise<Group[]> {
  const byId = new Map<string, { result: PagefindResult; words: number; score: number }>()
  for (const word of asked.words) {
    for (const result of (await pagefind.search(word)).results) {
      const entry = byId.get(result.id) ?? { result, words: 0, score: 0 }
      byId.set(result.id, { result, words: entry.words + 1, score: entry.score + result.score })
    }
  }
  const entries = [...byId.values()].sort((a, b) => b.words - a.words || b.score - a.score)
  const hits = await Promise.all(
    entries
      .slice(0, SHOWN_OF_PARTIAL)
      .map(async ({ result, score }) => hitOf(await result.data(), score, asked.query, asked.words)),
  )
  return kinds
    .map(({ id, heading }): Group => {
      const ofKind = hits.filter((hit) => hit.kind === id)
      return { kind: id, heading, hits: ofKind, count: ofKind.length }
    })
    .filter((group) => group.count > 0)
}

function ofKind(
  kind: KindOfResult,
  { words }: Asked,
  pagefind: Pagefind,
): Promise<{ results: PagefindResult[] }> {
  return pagefind.search(words.join(' '), { filters: { kind } })
}

function loaded(results: PagefindResult[], { query, words }: Asked): Promise<Hit[]> {
  return Promise.all(results.map(async (result) => hitOf(await result.data(), result.score, query, words)))
}

/** The pages named before the groups, and the groups without them. */
function arranged(groups: Group[], words: string[]): Pick<Answer, 'named' | 'groups' | 'count'> {
  const named = namedBy(groups, words)
  const others = groups.map((group) => {
    const hits = group.hits.filter((hit) => !named.includes(hit))
    return { ...group, hits, count: group.count - (group.hits.length - hits.length) }
  })
  return {
    named,
    groups: others.filter((group) => group.count > 0),
    count: groups.reduce((sum, group) => sum + group.count, 0),
  }
}
