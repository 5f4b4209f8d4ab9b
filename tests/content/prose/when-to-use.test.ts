import { globSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { expect, test } from 'vitest'
import { catalogue } from '../../../calculators/catalogue/index.ts'

const articles = globSync('content/circuit/*.mdx').map((path) => {
  const text = readFileSync(path, 'utf8')
  const ids = [...text.matchAll(/<Calculator\s[^>]*?\bid="([^"]+)"/g)].map((match) => match[1] ?? '')
  return { name: basename(path), ids, saysWhen: text.match(/When to use it/g)?.length ?? 0 }
})

test.each(articles)('$name says of each calculator when to use it', ({ ids, saysWhen }) => {
  expect(saysWhen).toBeGreaterThanOrEqual(ids.length)
})

test('every calculator stands in an article', () => {
  const held = new Set(articles.flatMap(({ ids }) => ids))
  expect(Object.keys(catalogue).filter((id) => !held.has(id))).toEqual([])
})
