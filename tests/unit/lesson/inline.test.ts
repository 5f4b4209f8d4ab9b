import { expect, test } from 'vitest'
import { piecesOf } from '../../../components/lesson/inline.ts'

test('a question is read in its pieces', () => {
  expect(
    piecesOf('From {pump-delivery} to {150 kPa, gaugePressure}: see [the sum](calculators/x#y).'),
  ).toEqual([
    { is: 'words', words: 'From ' },
    { is: 'set point', id: 'pump-delivery' },
    { is: 'words', words: ' to ' },
    { is: 'figure', value: '150 kPa', kind: 'gaugePressure' },
    { is: 'words', words: ': see ' },
    { is: 'link', words: 'the sum', to: 'calculators/x#y' },
    { is: 'words', words: '.' },
  ])
})

test('words without marks stay one piece, and nothing gives nothing', () => {
  expect(piecesOf('Plain (words), [not a link].')).toEqual([
    { is: 'words', words: 'Plain (words), [not a link].' },
  ])
  expect(piecesOf('')).toEqual([])
})
