import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { expect, test } from 'vitest'
import { catalogue } from '../../../calculators/catalogue/index.ts'
import { kinds } from '../../../calculators/quantity/kinds.ts'
import { calculatorIds, idsOfFile, idsOfFolder } from '../../../components/content/ids.ts'
import { mdxPages, pairsOf, tagsOf, type Tag } from './mdx-pages.ts'

const plant = parse(readFileSync('content/plants/pq-12.yaml', 'utf8')) as { setPoints: object }
const setPoints = Object.keys(plant.setPoints)
const fuels = idsOfFolder('fuels')
const sources = idsOfFile('sources/sources.yaml')
const circuits = idsOfFolder('circuits')
const pages = [
  ...['circuit', 'symptoms', 'procedures'].flatMap((folder) =>
    idsOfFolder(folder).map((id) => `${folder}/${id}`),
  ),
  ...[...calculatorIds(), 'unit-converter'].map((id) => `calculators/${id}`),
]

type Reader = (written: string) => string[]
const asItStands: Reader = (written) => [written]
const withoutAnchor: Reader = (written) => [written.replace(/#.*$/, '')]
const quotedTexts: Reader = (written) =>
  [...written.matchAll(/'([^']*)'|"([^"]*)"/g)].map((m) => m[1] ?? m[2] ?? '')
const valuesOfObject: Reader = (written) => Object.values(pairsOf(written))

/** For each attribute that names an id: what may stand there, and how the ids are read from it. */
const idAttributes: Readonly<Record<string, readonly [readonly string[], Reader]>> = {
  'Setpoint of': [setPoints, asItStands],
  'SetPointTable of': [setPoints, quotedTexts],
  'Caution id': [idsOfFile('cautions/cautions.yaml'), asItStands],
  'Cite of': [sources, asItStands],
  'Quantity source': [sources, asItStands],
  'Quantity kind': [Object.keys(kinds), asItStands],
  'Calculator id': [calculatorIds(), asItStands],
  'Calculator fuel': [fuels, asItStands],
  'Calculator setPoints': [setPoints, valuesOfObject],
  'CircuitDrawing circuit': [circuits, asItStands],
  'CircuitParts circuit': [circuits, asItStands],
  'PageLink to': [pages, withoutAnchor],
}

function unknownIds(path: string, tags: readonly Tag[]): string[] {
  return tags.flatMap(({ name, attributes, line }) =>
    Object.entries(attributes).flatMap(([attribute, written]) => {
      const [allowed, read] = idAttributes[`${name} ${attribute}`] ?? [[], () => []]
      return read(written)
        .filter((id) => !allowed.includes(id))
        .map((id) => `${path}:${line}: <${name} ${attribute}> «${id}»; allowed: ${allowed.join(', ')}`)
    }),
  )
}

test('a wrong id is named with its file, line and what is allowed', () => {
  const text =
    "Words.\n<Setpoint of=\"no-such-point\" />\n<Calculator id=\"no-such-sum\" setPoints={{ a: 'header-pressure', 'b': 'nor-this' }} />"
  const found = unknownIds('page.mdx', tagsOf(text))
  expect(found).toHaveLength(3)
  expect(found[0]).toMatch(/^page\.mdx:2: <Setpoint of> «no-such-point»; allowed: .*header-pressure/)
  expect(found[2]).toContain('«nor-this»')
})

test('an anchor does not hide a wrong page, nor make a right one wrong', () => {
  const tags = tagsOf(
    '<PageLink to="circuit/the-circuit#the-return-side">a</PageLink> <PageLink to="circuit/none#x">b</PageLink>',
  )
  expect(unknownIds('page.mdx', tags)).toHaveLength(1)
})

test.each(mdxPages())('$path: every id is one that exists', ({ path, text }) => {
  expect(unknownIds(path, tagsOf(text))).toEqual([])
})

test.each(mdxPages())('$path: what a calculator is given are inputs that it has', async ({ path, text }) => {
  const found: string[] = []
  for (const { name, attributes, line } of tagsOf(text)) {
    const load = name === 'Calculator' ? catalogue[attributes['id'] ?? ''] : undefined
    if (!load) continue
    const inputs = Object.keys((await load()).inputs)
    const given = Object.keys({ ...pairsOf(attributes['preset']), ...pairsOf(attributes['setPoints']) })
    for (const key of given.filter((candidate) => !inputs.includes(candidate)))
      found.push(
        `${path}:${line}: «${key}» is no input of ${attributes['id']}; allowed: ${inputs.join(', ')}`,
      )
  }
  expect(found).toEqual([])
})
