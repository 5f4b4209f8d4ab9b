import { expect, it } from 'vitest'
import { markedStems } from '../../../components/search/group.ts'
import { piecesOfExcerpt, piecesOfText, withoutHeading } from '../../../components/search/pieces.ts'

it('an excerpt is cut at its marks, and its entities become text', () => {
  expect(piecesOfExcerpt('a <mark>filter</mark> &lt;b&gt; <mark>glass.</mark>')).toEqual([
    { text: 'a ', marked: false },
    { text: 'filter', marked: true },
    { text: ' <b> ', marked: false },
    { text: 'glass.', marked: true },
  ])
  expect(piecesOfExcerpt('')).toEqual([])
})

it('a text is marked where its words are those searched for, in whichever form', () => {
  const marked = (text: string, ...words: string[]) =>
    piecesOfText(text, markedStems(words))
      .filter((piece) => piece.marked)
      .map((piece) => piece.text)
  expect(marked('Bubbles in the return glass when priming', 'bubble', 'prime')).toEqual([
    'Bubbles',
    'priming',
  ])
  expect(marked('Changing the spin-on filters', 'spin-on')).toEqual(['spin-on'])
  expect(marked('Changing the spin-on filters', 'spinon', 'filter')).toEqual(['spin-on', 'filters'])
  expect(marked('Nothing of it', 'filter')).toEqual([])
})

it('the pieces are the text again', () => {
  const text = 'Öl – “spin-on” & <b>filters</b>, 310 kPa'
  expect(
    piecesOfText(text, markedStems(['filter']))
      .map((piece) => piece.text)
      .join(''),
  ).toBe(text)
})

it.each([
  ['this <mark>glass</mark> tells it. The pump', 'Why this glass tells it', 'The pump'],
  ['the <mark>glasses.</mark> Put on goggles', 'Read the glasses', 'Put on goggles'],
  ['… the <mark>glasses.</mark> Put on goggles', 'Read the glasses', 'Put on goggles'],
  ['Full. The pump', 'Read the glasses', 'Full. The pump'],
  ['the glasses', 'Read the glasses', 'the glasses'],
  ['', 'Read the glasses', ''],
])('%j under the heading %j is %j', (excerpt, heading, rest) => {
  expect(withoutHeading(excerpt, heading)).toBe(rest)
})
