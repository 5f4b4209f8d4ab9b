// How hard the handbook's pages are to read: `npm run readability` prints the collections and the ten hardest pages,
// `npm run readability all` every page.
import { pathToFileURL } from 'node:url'
import { parse } from 'yaml'
import { mdxPages, ORIGIN, proseOf } from '../../components/content/mdx-pages.ts'
import { readingEase, type ReadingEase } from './reading-ease.mts'

const HARDEST = 10

/** Sentences of a page's front matter: what is seen, checks, purpose, waste. Names and ids are none. */
function sentencesIn(value: unknown): string[] {
  if (typeof value === 'string') return /[.?!:]$/.test(value.trim()) ? [value.trim()] : []
  if (typeof value !== 'object' || value === null) return []
  return Object.values(value).flatMap(sentencesIn)
}

/** What a person reads of a page as running text: without headings, tables, drawings, sums and marks of origin. */
export function runningText(page: string): string {
  const [, front = '', body = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(page) ?? [page, '', page]
  const prose = proseOf(body.replace(/<Sketch[\s\S]*?<\/Sketch>/g, ''))
    .replaceAll(ORIGIN, '')
    .split('\n')
    .filter((line) => !/^\s*(#|\|)/.test(line))
    .map((line) => line.replace(/^\s*([-*]|\d+\.)\s+/, '').replaceAll(/[*_`]/g, ''))
  return [...sentencesIn(parse(front)), ...prose].join('\n')
}

export interface PageEase extends ReadingEase {
  readonly path: string
}

/** Every page with its figures, the hardest first. */
export function pageEases(): PageEase[] {
  return mdxPages()
    .map(({ path, text }) => ({ path, ...readingEase(runningText(text)) }))
    .toSorted((one, other) => other.grade - one.grade)
}

function table(rows: readonly PageEase[]): string {
  return rows
    .map(
      ({ grade, ease, words, sentences, path }) =>
        `${grade.toFixed(1).padStart(6)} ${ease.toFixed(0).padStart(6)} ${(words / sentences).toFixed(1).padStart(8)}  ${path}`,
    )
    .join('\n')
}

function report(all: boolean): string {
  const pages = pageEases()
  const collections = [...new Set(pages.map(({ path }) => path.split('/')[1] ?? ''))].sort()
  const median = (grades: readonly number[]) =>
    grades.toSorted((one, other) => one - other)[grades.length >> 1] ?? 0
  const lines = collections.map((collection) => {
    const own = pages.filter(({ path }) => path.startsWith(`content/${collection}/`))
    const grades = own.map(({ grade }) => grade)
    return `${collection}: ${own.length} pages, grade ${median(grades).toFixed(1)} in the middle, ${Math.max(...grades).toFixed(1)} at most`
  })
  return [
    'Flesch–Kincaid grade (school years), Flesch reading ease (higher is easier), words a sentence',
    ...lines,
    '',
    all ? 'All pages, the hardest first:' : `The ${HARDEST} hardest of ${pages.length} pages:`,
    ' grade   ease  w/sent.',
    table(all ? pages : pages.slice(0, HARDEST)),
  ].join('\n')
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href)
  console.log(report(process.argv[2] === 'all'))
