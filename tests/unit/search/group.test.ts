import { describe, expect, it } from 'vitest'
import { fitOf, fits, hitOf, namedBy, ranked } from '../../../components/search/group.ts'
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
    [['rock', 'catcher'], fits.wordsOfAlias],
    [['clean', 'suction', 'strainers'], fits.wordsOfTitle],
    [['strainer'], fits.inTitle],
    [['catcher'], fits.inAlias],
    [['suct', 'strain'], fits.inTitle],
    [['suction', 'catcher'], 0],
    [['torque'], 0],
  ])('%j: %i', (words, fit) => {
    expect(fitOf(words, 'Cleaning the suction strainer', 'rock catcher; coarse filter')).toBe(fit)
  })
})

const open = (from: PagefindPage, ...words: string[]) => hitOf(from, 1, words.join(' '), words)

it.each(['back-pressure valve', 'back pressure valve', 'backpressure valve'])(
  '%s is a back-pressure valve',
  (typed) => {
    expect(fitOf(typed.split(' '), 'Back-pressure valve', '')).toBe(fits.wordsOfTitle)
  },
)

describe('a result opens', () => {
  it('at the top of the page when its names or its summary have the words', () => {
    expect(open(page, 'strainer', 'basket')).toMatchObject({ url: '/page/', kind: 'procedure' })
    expect(open(page, 'strainer', 'basket').section).toBeUndefined()
  })

  it('else at the heading under which the words weigh most', () => {
    expect(open(page, 'strainer', 'torque')).toMatchObject({
      url: '/page/#steps',
      section: 'Steps',
      excerpt: 'about Steps',
    })
  })

  it('at the top when no heading stands before the words', () => {
    expect(open({ ...page, sub_results: [] }, 'torque')).toMatchObject({
      url: '/page/',
      excerpt: 'the whole',
    })
  })

  it('and a page of an unknown kind stands among the others', () => {
    expect(open({ ...page, meta: {} }, 'torque')).toMatchObject({ kind: 'other', title: '/page/' })
  })
})

describe('order', () => {
  const hit = (title: string, fit: number, score: number, kind: KindOfResult = 'symptom'): Hit => ({
    title,
    page: `/${title}/`,
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

  it('names the pages with the best fitting names, a typed title before all', () => {
    const titled = hit('titled', fits.title, 1, 'calculator')
    const same = hit('same', fits.wordsOfTitle, 9, 'circuit')
    const holding = hit('holding', fits.inTitle, 50)
    const groups = [group('symptom', holding), group('circuit', same), group('calculator', titled)]
    expect(namedBy(groups, ['strainer'])).toEqual([titled])
    expect(namedBy(groups.slice(0, 2), ['strainer'])).toEqual([same])
    expect(namedBy(groups.slice(0, 1), ['strainer'])).toEqual([holding])
  })

  it('names several that fit alike, but not so many that they are not told apart', () => {
    const alike = ['a', 'b', 'c', 'd', 'e', 'f', 'g'].map((title) => hit(title, fits.inAlias, 1))
    const [first, second] = [alike.slice(0, 1), alike.slice(1, 3)]
    expect(namedBy([group('symptom', ...second), group('circuit', ...first)], ['strainer'])).toEqual([
      ...second,
      ...first,
    ])
    expect(namedBy([group('symptom', ...alike)], ['strainer'])).toEqual([])
    const opening = hit('Strainers and their mesh', fits.inTitle, 1, 'circuit')
    const many = [...alike.map((one) => ({ ...one, fit: fits.inTitle })), opening]
    expect(namedBy([group('circuit', ...many)], ['strainer'])).toEqual([opening])
  })

  it('names a page that goes by the words beside one that has them in its title', () => {
    const goesBy = hit('goes by', fits.wordsOfAlias, 1)
    const inTitle = hit('in title', fits.inTitle, 1, 'procedure')
    expect(namedBy([group('symptom', goesBy), group('procedure', inTitle)], ['strainer'])).toEqual([
      goesBy,
      inTitle,
    ])
  })

  it('names a term of the glossary only where it is the query and no page has it in its title', () => {
    const term = group('glossary', hit('term', fits.title, 9, 'glossary'))
    const inAlias = hit('in alias', fits.inAlias, 9)
    const inTitle = hit('in title', fits.inTitle, 9)
    expect(namedBy([group('symptom', inAlias), term], ['strainer'])).toEqual(term.hits)
    expect(namedBy([group('symptom', inTitle), term], ['strainer'])).toEqual([inTitle])
    expect(namedBy([group('glossary', hit('term', fits.inTitle, 9, 'glossary'))], ['strainer'])).toEqual([])
  })

  it('names none when no name fits', () => {
    expect(namedBy([group('symptom', hit('a', 0, 9))], ['strainer'])).toEqual([])
    expect(namedBy([], ['strainer'])).toEqual([])
  })
})
