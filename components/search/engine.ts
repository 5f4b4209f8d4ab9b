import { href } from '../layout/href.ts'
import { answerTo, moreOf } from './answer.ts'
import type { Answer, Asked } from './answer.ts'
import type { Group, Hit } from './group.ts'
import { Vocabulary } from './near.ts'
import type { Pagefind } from './pagefind.ts'

export interface Engine {
  answer(query: string): Promise<Answer>
  /** All the pages of a group of which the answer holds the first. */
  more(group: Group, asked: Asked): Promise<Hit[]>
}

/** Words of context that stand around those found. */
const EXCERPT_WORDS = 24

/** A page's own names count above its text: they are what it is about. */
const metaWeights = { title: 6, aliases: 4, summary: 2, kind: 0 }

/** Loads the index and the words of the handbook; rejects when either cannot be had. */
export async function loadEngine(): Promise<Engine> {
  const [near, pagefind] = await Promise.all([
    loadNear(),
    import(/* @vite-ignore */ href('/pagefind/pagefind.js')) as Promise<Pagefind>,
  ])
  await pagefind.options({
    baseUrl: import.meta.env.BASE_URL,
    metaCacheTag: near.tag,
    excerptLength: EXCERPT_WORDS,
    excerptEllipsis: '…',
    ranking: { metaWeights },
  })
  const vocabulary = new Vocabulary(near.words)
  return {
    answer: (query) => answerTo(query, pagefind, vocabulary),
    more: (group, asked) => moreOf(group, asked, pagefind),
  }
}

/** Asked for anew each time, since its tag tells whether the rest of the index has changed. */
async function loadNear(): Promise<{ tag: string; words: Record<string, number> }> {
  const response = await fetch(href('/search/near.json'), { cache: 'no-cache' })
  if (!response.ok) throw new Error(`search/near.json: ${response.status}`)
  return (await response.json()) as { tag: string; words: Record<string, number> }
}
