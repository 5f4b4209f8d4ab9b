import { describe, expect, it } from 'vitest'
import { bestOf, fitOf, hitOf, NAME_HOLDS_ALL, ranked, SAME_NAME } from '../../../components/search/group.ts'
import type { Group, Hit, KindOfResult } from '../../../components/search/group.ts'
import type { PagefindPage, PagefindSection } from '../../../components/search/pagefind.ts'

const section = (title: string, id: string, element: string, score: number): PagefindSection => ({
  title,
  url: `/page/#${id}`,
  excerpt: `about ${title}`,
  anchor: { element, id },
  weighted_locations: [{ balanced_score: score }],
})

const page: PagefindPage = {
  url: '/page/',
  excerpt: 'the whole',
  meta: {
    title: 'Cleaning the suction strainer',
    kind: 'procedure',
    summary: 'Take out, wash and refit the basket.',
    aliases: 'rock catcher; coarse filter',
  },
  sub_results: [
    section('Cleaning', 'top', 'h1', 900),
    section('Tools', 'tools', 'h2', 2),
    section('Steps', 'steps', 'h2', 5),
  ],
}

describe('how well names fit', () => {
  it.each([
    [['rock', 'catcher'], SAME_NAME],
    [['clean', 'suction', 'strainers'], SAME_NAME],
    [['strainer'], NAME_HOLDS_ALL],
    [['suction', 'catcher'], 0],
    [['torque'], 0],
  ])('%j: %i', (words, fit) => {
    expect(fitOf(words, 'Cleaning the suction strainer', 'rock catcher; coarse filter')).toBe(fit)
  })
})

describe('a result opens', () => {
  it('at the top of the page when its names or its summary have the words', () => {
    expect(hitOf(page, 1, ['strainer', 'basket'])).toMatchObject({ url: '/page/', kind: 'procedure' })
    expect(hitOf(page, 1, ['strainer', 'basket']).section).toBeUndefined()
  })

  it('else at the heading under which the words weigh most', () => {
    expect(hitOf(page, 1, ['strainer', 'torque'])).toMatchObject({
      url: '/page/#steps',
      section: 'Steps',
      excerpt: 'about Steps',
    })
  })

  it('at the top when no heading stands before the words', () => {
    expect(hitOf({ ...page, sub_results: [] }, 1, ['torque'])).toMatchObject({
      url: '/page/',
      excerpt: 'the whole',
    })
  })

  it('and a page of an unknown kind stands among the others', () => {
    expect(hitOf({ ...page, meta: {} }, 1, ['torque'])).toMatchObject({ kind: 'other', title: '/page/' })
  })
})

describe('order', () => {
  const hit = (title: string, fit: number, score: number, kind: KindOfResult = 'symptom'): Hit => ({
    title,
    url: `/${title}/`,
    kind,
    summary: '',
    score,
    fit,
  })
  const group = (kind: KindOfResult, ...hits: Hit[]): Group => ({
    kind,
    heading: kind,
    hits,
    count: hits.length,
  })

  it('puts fitting names first, then the score', () => {
    const hits = [hit('c', 0, 9), hit('b', 1, 1), hit('a', 1, 3)]
    expect(ranked(hits).map(({ title }) => title)).toEqual(['a', 'b', 'c'])
  })

  it('names the one page that the query names', () => {
    const named = hit('x', SAME_NAME, 1, 'calculator')
    expect(bestOf([group('symptom', hit('a', 1, 9)), group('calculator', named)])).toBe(named)
    expect(
      bestOf([group('symptom', hit('a', 0, 9)), group('procedure', hit('b', 1, 1, 'procedure'))])?.title,
    ).toBe('b')
  })

  it('names none when several fit alike, when none does, or when it is a term of the glossary', () => {
    expect(bestOf([group('symptom', hit('a', 1, 9), hit('b', 1, 3))])).toBeUndefined()
    expect(bestOf([group('symptom', hit('a', 0, 9))])).toBeUndefined()
    expect(bestOf([group('glossary', hit('a', 2, 9, 'glossary'))])).toBeUndefined()
    expect(bestOf([])).toBeUndefined()
  })
})
