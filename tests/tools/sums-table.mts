// The README's table of sums, made from the catalogue, so that it cannot drift: `npm run sums-table` prints it.
import { readFileSync } from 'node:fs'
import { pathToFileURL } from 'node:url'
import { parse } from 'yaml'
import { catalogue } from '../../calculators/catalogue/index.ts'
import { questions } from '../../calculators/catalogue/questions.ts'
import type { PublishedCase } from '../../calculators/calculator/types.ts'

const sources = parse(readFileSync('content/sources/sources.yaml', 'utf8')) as Record<
  string,
  { title: string }
>

/** 'ASTM D341, Standard Practice …' is known as 'ASTM D341'. */
function shortTitle(id: string): string {
  const title = sources[id]?.title ?? id
  return (title.split(/[,:.] /)[0] ?? title).replaceAll('|', '/')
}

/** What a case shows, where that is less than agreement with a source that was read. */
function standingOf({ plausibilityOnly, fromMemory }: PublishedCase): string {
  if (plausibilityOnly) return ' (plausibility only)'
  return fromMemory ? ' (from memory)' : ''
}

function checksOf(cases: readonly PublishedCase[]): string {
  const published = cases.filter((one) => one.source !== 'common-practice')
  const titles = [...new Set(published.map((one) => shortTitle(one.source) + standingOf(one)))]
  const byHand = published.length < cases.length ? ['common practice, worked by hand'] : []
  return [...titles, ...byHand].join('; ')
}

/** Markdown: one row a calculator, under the question it answers. */
export async function sumsTable(): Promise<string> {
  const rows = ['| sum | sources of the method | worked cases from |', '| --- | --- | --- |']
  for (const question of questions) {
    rows.push(`| **${question.title}** | | |`)
    for (const id of question.calculators) {
      const calculator = await catalogue[id]?.()
      if (!calculator) throw new Error(`${id} is not in the catalogue`)
      const methods = calculator.sources.map(shortTitle).join('; ') || 'common practice, no published source'
      rows.push(`| ${calculator.title} | ${methods} | ${checksOf(calculator.cases)} |`)
    }
  }
  return rows.join('\n')
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.log(await sumsTable())
