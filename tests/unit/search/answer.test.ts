import { describe, expect, it } from 'vitest'
import { answerTo, moreOf } from '../../../components/search/answer.ts'
import { countOf, notesOn } from '../../../components/search/lines.ts'
import { Vocabulary } from '../../../components/search/near.ts'
import type { Pagefind, PagefindPage, PagefindResult } from '../../../components/search/pagefind.ts'

interface Page {
  kind: string
  title: string
  text: string
}

const pages: Page[] = [
  { kind: 'procedure', title: 'Cleaning the strainer', text: 'cleaning strainer basket pump' },
  { kind: 'symptom', title: 'Bubbles when priming', text: 'bubbles priming glass strainer pump' },
  { kind: 'symptom', title: 'Bubbles when running', text: 'bubbles running glass injector pump' },
  ...['a', 'b', 'c', 'd', 'e', 'f', 'g'].map((letter) => ({
    kind: 'glossary',
    title: letter,
    text: `valve ${letter}`,
  })),
]

/** An index that holds the pages above and finds whole words only. */
const index: Pagefind = {
  options: () => Promise.resolve(),
  search: (term, options) => {
    const words = term.split(' ')
    const found = pages.filter(
      ({ kind, text }) =>
        (options?.filters?.['kind'] ?? kind) === kind &&
        words.every((word) => text.split(' ').includes(word)),
    )
    const results = found.map(({ kind, title }): PagefindResult => {
      const page: PagefindPage = { url: `/${title}/`, excerpt: '', meta: { title, kind }, sub_results: [] }
      return { id: title, score: 1, data: () => Promise.resolve(page) }
    })
    return Promise.resolve({ results })
  },
}

const uses: Record<string, number> = {}
for (const word of pages.flatMap(({ text }) => text.split(' '))) uses[word] = (uses[word] ?? 0) + 1
const vocabulary = new Vocabulary(uses)
const ask = (query: string) => answerTo(query, index, vocabulary)

describe('an answer', () => {
  it('stands in groups, symptoms first, whatever the order of the index', async () => {
    const answer = await ask('the pump')
    expect(answer.groups.map(({ heading, count }) => [heading, count])).toEqual([
      ['Symptoms', 2],
      ['Procedures', 1],
    ])
    expect(countOf(answer)).toBe('3 results.')
    expect(notesOn(answer)).toEqual([])
  })

  it('names the page that the query names before the groups', async () => {
    const answer = await ask('strainer')
    expect(answer.named.map(({ title }) => title)).toEqual(['Cleaning the strainer'])
    expect(answer.groups.map(({ heading, count }) => [heading, count])).toEqual([['Symptoms', 1]])
    expect(answer.count).toBe(2)
  })

  it('says for which words it stands when one was misspelt', async () => {
    const answer = await ask('bubles when primming')
    expect(answer.named.map(({ title }) => title)).toEqual(['Bubbles when priming'])
    expect(notesOn(answer)).toEqual([
      'No word “bubles” in the handbook; showing “bubbles”.',
      'No word “primming” in the handbook; showing “priming”.',
    ])
  })

  it('says which words it left out', async () => {
    expect(notesOn(await ask('strainer xyzzy'))).toEqual(['Nothing for “xyzzy”; left out.'])
  })

  it('holds the pages with most of the words when none has all, and says so', async () => {
    const answer = await ask('injector running priming')
    expect(answer.partial).toBe(true)
    expect(answer.groups[0]?.hits.map(({ title }) => title)).toEqual([
      'Bubbles when running',
      'Bubbles when priming',
    ])
    expect(notesOn(answer)).toEqual(['No page has all of these words; these pages have most of them.'])
  })

  it('offers the nearest words when there is nothing', async () => {
    const answer = await ask('injectorate')
    expect(answer).toMatchObject({ count: 0, groups: [] })
    expect(answer.nearest[0]).toBe('injector')
    expect(countOf(answer)).toBe('Nothing found.')
    expect(notesOn(answer)).toEqual([])
  })

  it('is empty for an empty query', async () => {
    expect(await ask('  ')).toMatchObject({ count: 0, groups: [], nearest: [] })
  })

  it('shows the first few of a large group and all of it when asked', async () => {
    const answer = await ask('valve')
    const [group] = answer.groups
    expect(group).toMatchObject({ kind: 'glossary', count: 7 })
    expect(group?.hits).toHaveLength(5)
    expect(group && (await moreOf(group, answer, index))).toHaveLength(7)
  })
})
