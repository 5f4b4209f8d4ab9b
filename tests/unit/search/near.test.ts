import { describe, expect, it } from 'vitest'
import { Vocabulary } from '../../../components/search/near.ts'

const vocabulary = new Vocabulary({
  back: 20,
  backpressure: 12,
  booster: 3,
  bubbles: 40,
  cavitation: 6,
  clear: 15,
  d341: 9,
  filter: 200,
  filtration: 15,
  fit: 4,
  glass: 120,
  oil: 60,
  pressure: 150,
  priming: 30,
  pump: 90,
  sight: 25,
  strainer: 50,
  viscosity: 80,
})

describe('a word that the handbook has', () => {
  it.each(['filter', 'filters', 'prime', 'strain', 'fil', 'back-pressure', 'backpressure', 'd341'])(
    '%s is left as it is',
    (word) => {
      expect(vocabulary.mend([word])).toEqual({ words: [word], mended: [], unknown: [] })
    },
  )
})

describe('a word with a slip in it', () => {
  it.each([
    ['fitler', 'filter'],
    ['filtr', 'filter'],
    ['flter', 'filter'],
    ['boster', 'booster'],
    ['cavitaton', 'cavitation'],
    ['bubles', 'bubbles'],
    ['primming', 'priming'],
    ['viscocity', 'viscosity'],
    ['starner', 'strainer'],
    ['presure', 'pressure'],
    ['back-presure', 'backpressure'],
    ['sightglass', 'sight glass'],
  ])('%s is taken for %s, and this is told', (typed, shown) => {
    expect(vocabulary.mend([typed])).toEqual({ words: [shown], mended: [{ typed, shown }], unknown: [] })
  })
})

describe('a word that is near to none', () => {
  it.each(['carburettor', 'xyzzy', 'ari', 'd342', '<script>', '1e308'])(
    '%s is left out and told',
    (typed) => {
      expect(vocabulary.mend(['pump', typed])).toEqual({ words: ['pump'], mended: [], unknown: [typed] })
    },
  )

  it('is offered the nearest in spelling', () => {
    expect(vocabulary.nearest('presser', 2)[0]).toBe('pressure')
    expect(vocabulary.nearest('zzzzzzzzzzzz', 3)).toEqual([])
  })
})

it('finds a near spelling among ten thousand words', () => {
  const letters = 'abcdefghijklmnopqrstuvwxyz'
  const uses: Record<string, number> = {}
  let seed = 7
  for (let index = 0; index < 10_000; index += 1) {
    let word = ''
    for (let place = 0; place < 8; place += 1) {
      seed = (seed * 48271) % 2147483647
      word += letters[seed % 26]
    }
    uses[word] = 1
  }
  const large = new Vocabulary({ ...uses, strainer: 5 })
  expect(large.mend(['starner']).words).toEqual(['strainer'])
})
