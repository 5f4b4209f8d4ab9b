import { describe, expect, it } from 'vitest'
import {
  MAXIMUM_QUERY_LENGTH,
  searchWords,
  stem,
  stemsOf,
  wordsOf,
} from '../../../components/search/query.ts'

describe('the words of a query', () => {
  it.each([
    ['Bubbles in GLASS, when priming?', ['bubbles', 'glass', 'priming']],
    ["why won't the pump's glass clear", ['pump', 'glass', 'clear']],
    ['spin-on', ['spin-on']],
    ['D341 / D1250', ['d341', 'd1250']],
    ['Größe', ['große']],
    ['<img src=x onerror=alert(1)>', ['img', 'src', 'x', 'onerror', 'alert', '1']],
    ['  --  ', []],
  ])('%j are %j', (query, words) => {
    expect(searchWords(query)).toEqual(words)
  })

  it('keep their fillers when there is nothing else', () => {
    expect(searchWords('what is it')).toEqual(['what', 'is', 'it'])
  })

  it('are each taken once, and not without end', () => {
    expect(searchWords('filter Filter filter')).toEqual(['filter'])
    expect(searchWords('word '.repeat(1000))).toEqual(['word'])
    const many = Array.from({ length: 100 }, (_, index) => `w${index}`).join(' ')
    expect(many.length).toBeGreaterThan(MAXIMUM_QUERY_LENGTH)
    expect(searchWords(many).length).toBeLessThanOrEqual(12)
  })
})

describe('stems', () => {
  it.each([
    ['priming', 'prime'],
    ['filters', 'filter'],
    ['viscosities', 'viscosity'],
    ['plugged', 'plugging'],
  ])('%s and %s are one word', (one, other) => {
    expect(stem(one)).toBe(stem(other))
  })

  it.each([['fitler', 'filter'], ['glas', 'glass'], ['booster', 'boost'].toReversed()])(
    '%s and %s are told apart or alike only by their endings',
    (one, other) => {
      expect(stem(one) === stem(other)).toBe(one === 'boost')
    },
  )

  it('of a hyphened word are those of its parts and of the whole', () => {
    expect(stemsOf('back-pressure')).toEqual(new Set(['back', 'pressur', 'backpressur']))
    expect(wordsOf('back-pressure')).toEqual(['back-pressure'])
  })
})
