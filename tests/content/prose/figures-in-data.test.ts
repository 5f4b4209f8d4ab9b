import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { parse } from 'yaml'
import { FIGURE } from './figure-pattern.ts'

/**
 * Where a figure in a text is in its place: a plant's page says of each set point how it was chosen, and is invented as
 * a whole; the entry of a source says what was read in it.
 */
const TELL_OF_FIGURES = /^(plants|sources)\//

/** Figures that are a name. No mark could stand there, and nobody could set them otherwise. */
const NAMES: Readonly<Record<string, string>> = {
  'fuels/residual-180.yaml.summary': 'the grade: its viscosity at the temperature of the grade',
  'fuels/residual-380.yaml.summary': 'as above',
  'fuels/summer-gas-oil.yaml.summary': 'the temperature at which gas oils are compared',
  'glossary/terms.yaml.density-at-reference.forms.1': 'a form of the term',
  'glossary/terms.yaml.density-at-reference.forms.2': 'a form of the term',
  'procedures/fuel-sample-and-field-tests.mdx.acceptance.1.what': 'the temperature of the reference density',
  'procedures/fuel-sample-and-field-tests.mdx.record.2': 'as above',
}

/** A figure that a question gives, with its kind: the question's own supposition, shown in the reader's units. */
const GIVEN = /\{[^{},]+, \w+\}/g

interface Said {
  readonly place: string
  readonly text: string
}

/** Every text of some words, with its place: 'faults/pump-worn.yaml.confirm'. A figure by itself is data and no text. */
function textsIn(value: unknown, place: string): Said[] {
  if (typeof value === 'string')
    return value.trim().split(/\s+/).length > 3 ? [{ place, text: value.trim() }] : []
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => textsIn(inner, `${place}.${key}`))
}

const files = readdirSync('content', { recursive: true, encoding: 'utf8' })
  .map((name) => name.replaceAll('\\', '/'))
  .filter((name) => /\.(yaml|mdx)$/.test(name))
  .sort()

const texts = files.flatMap((name) => {
  const text = readFileSync(join('content', name), 'utf8')
  return textsIn(
    parse(name.endsWith('.mdx') ? (/^---\n([\s\S]*?)\n---\n/.exec(text)?.[1] ?? '') : text),
    name,
  )
})

const withFigure = texts.filter(
  ({ place, text }) => !TELL_OF_FIGURES.test(place) && FIGURE.test(text.replaceAll(GIVEN, '')),
)

test('the texts of data and front matter are read', () => {
  expect(texts.length).toBeGreaterThan(1000)
})

test('a figure with a unit stands in no text of data or front matter, where it could bear no mark of its origin', () => {
  expect(
    withFigure.filter(({ place }) => !(place in NAMES)).map(({ place, text }) => `${place}: ${text}`),
    'allowed: a set point, or a <Quantity> in the text of the page',
  ).toEqual([])
})

test('each name that is let off is still there', () => {
  expect(Object.keys(NAMES).filter((place) => !withFigure.some((said) => said.place === place))).toEqual([])
})
