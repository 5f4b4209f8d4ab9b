import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { parse } from 'yaml'
import { catalogue } from '../../../calculators/catalogue/index.ts'
import { mdxPages } from '../../../components/content/mdx-pages.ts'
import { converterPage } from '../../../components/converter/converter-page.ts'
import { idsOfFolder } from '../../../components/content/ids.ts'
import { yamlFile } from './content.ts'

const sources = yamlFile<{ readonly usedFor?: string }>('sources/sources.yaml')
const listed = (text: string): readonly string[] =>
  (parse(text) as { sources?: readonly string[] }).sources ?? []

const calculators = await Promise.all(Object.values(catalogue).map((load) => load()))
const used = new Set<string>([
  ...converterPage.sources,
  ...mdxPages().flatMap(({ text }) => listed(/^---\n([\s\S]*?)\n---\n/.exec(text)?.[1] ?? '')),
  ...idsOfFolder('tables').flatMap((id) => listed(readFileSync(`content/tables/${id}.yaml`, 'utf8'))),
  ...calculators.flatMap((calculator) => [
    ...calculator.sources,
    ...calculator.cases.map(({ source }) => source),
  ]),
])

test('the page of sources can say of each what it is used for', () => {
  expect(Object.entries(sources).filter(([id, { usedFor }]) => !used.has(id) && !usedFor)).toEqual([])
})

test('what is cited anyway needs no words of its own', () => {
  expect(Object.entries(sources).filter(([id, { usedFor }]) => used.has(id) && usedFor)).toEqual([])
})
