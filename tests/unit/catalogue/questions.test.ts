import { expect, test } from 'vitest'
import { catalogue } from '../../../calculators/catalogue/index.ts'
import { questions } from '../../../calculators/catalogue/questions.ts'

test('every calculator stands under one question', () => {
  const placed = questions.flatMap((question) => question.calculators)
  expect(placed.toSorted()).toEqual(Object.keys(catalogue).toSorted())
})
