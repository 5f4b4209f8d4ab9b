import { getCollection } from 'astro:content'
import { catalogue } from '../../calculators/catalogue/index.ts'
import { converterPage } from '../converter/converter-page.ts'
import { defaultPlant } from './load.ts'

export type PageKind = 'symptom' | 'procedure' | 'circuit' | 'bench' | 'lesson' | 'calculator' | 'table'

/** What lists, links and neighbours need to know of a page. */
export interface PageEntry {
  /** From the site's root: '/circuit/the-two-valves/'. */
  readonly path: string
  readonly kind: PageKind
  readonly title: string
  readonly summary: string
  readonly alsoCalled: readonly string[]
  /** Ids in content/sources. */
  readonly sources: readonly string[]
  /** Ids of the calculators that stand in its text. */
  readonly calculators: readonly string[]
}

type Prose = Awaited<
  ReturnType<typeof getCollection<'circuit' | 'symptoms' | 'procedures' | 'lessons'>>
>[number]

const byTitle = (a: PageEntry, b: PageEntry) => a.title.localeCompare(b.title, 'en')

function pageOfProse(entry: Prose, kind: PageKind): PageEntry {
  const { title, summary, alsoCalled, sources } = entry.data
  const calculators = [...(entry.body ?? '').matchAll(/<Calculator\s[^>]*?\bid="([^"]+)"/g)].map(
    (match) => match[1] ?? '',
  )
  return { path: `/${entry.collection}/${entry.id}/`, kind, title, summary, alsoCalled, sources, calculators }
}

/** The articles on the circuit, in their order of reading. */
export async function circuitPages(): Promise<PageEntry[]> {
  const entries = await getCollection('circuit')
  return entries.sort((a, b) => a.data.order - b.data.order).map((entry) => pageOfProse(entry, 'circuit'))
}

/** The symptoms, by title. */
export async function symptomPages(): Promise<PageEntry[]> {
  return (await getCollection('symptoms')).map((entry) => pageOfProse(entry, 'symptom')).sort(byTitle)
}

/** The procedures, by title. */
export async function procedurePages(): Promise<PageEntry[]> {
  return (await getCollection('procedures')).map((entry) => pageOfProse(entry, 'procedure')).sort(byTitle)
}

/** 'Lesson 3: Pump and pressure' */
export const lessonTitle = ({ order, title }: { order: number; title: string }) => `Lesson ${order}: ${title}`

/** The lessons, in the order of the course. */
export async function lessonPages(): Promise<PageEntry[]> {
  const entries = await getCollection('lessons')
  return entries
    .sort((a, b) => a.data.order - b.data.order)
    .map((entry) => ({ ...pageOfProse(entry, 'lesson'), title: lessonTitle(entry.data) }))
}

/** The page that ranks the causes of what was seen. */
export const causesPage: PageEntry = {
  path: '/causes/',
  kind: 'symptom',
  title: 'Find the cause from what you see',
  summary:
    'Say what the glasses, gauges, ears and nose tell; get the causes in order, and the check to make next.',
  alsoCalled: [
    'fault finder',
    'fault finding',
    'troubleshooting',
    'troubleshooter',
    'diagnosis',
    'what is wrong',
    'ranking of causes',
    'next check',
  ],
  sources: [],
  calculators: [],
}

/** The benches, one for each circuit; that of the plant shown first. */
export async function benchPages(): Promise<PageEntry[]> {
  const shown = (await defaultPlant()).data.circuit
  const circuits = await getCollection('circuits')
  return circuits
    .sort((a, b) => Number(b.id === shown) - Number(a.id === shown) || a.id.localeCompare(b.id, 'en'))
    .map(({ id, data }): PageEntry => ({
      path: `/bench/${id}/`,
      kind: 'bench',
      title: `Bench: ${data.title}`,
      summary: data.summary,
      alsoCalled: ['circuit simulator', 'fault simulator', 'live circuit', 'what if'],
      sources: [],
      calculators: [],
    }))
}

/** The calculators, by title. */
export async function calculatorPages(): Promise<PageEntry[]> {
  const calculators = await Promise.all(Object.values(catalogue).map((load) => load()))
  const pages = calculators.map(({ id, title, purpose, alsoCalled, sources }): PageEntry => ({
    path: `/calculators/${id}/`,
    kind: 'calculator',
    title,
    summary: purpose,
    alsoCalled: [...(alsoCalled ?? [])],
    sources,
    calculators: [],
  }))
  const converter: PageEntry = { ...converterPage, kind: 'calculator', calculators: [] }
  return [...pages, converter].sort(byTitle)
}

/** The pages of tables, in their order. */
export async function tablePages(): Promise<PageEntry[]> {
  return (await getCollection('tables'))
    .sort((a, b) => a.data.order - b.data.order)
    .map(({ id, data: { title, summary, alsoCalled, sources } }): PageEntry => ({
      path: `/tables/${id}/`,
      kind: 'table',
      title,
      summary,
      alsoCalled,
      sources,
      calculators: [],
    }))
}

/** Every page with a title of its own, symptoms first. */
export async function allPages(): Promise<PageEntry[]> {
  return [
    ...(await symptomPages()),
    causesPage,
    ...(await procedurePages()),
    ...(await circuitPages()),
    ...(await benchPages()),
    ...(await lessonPages()),
    ...(await calculatorPages()),
    ...(await tablePages()),
  ]
}

/** The pages of these paths as front matter writes them: 'circuit/the-two-valves'. */
export async function pagesAt(paths: readonly string[]): Promise<PageEntry[]> {
  const all = await allPages()
  return paths.flatMap((path) => all.filter((page) => page.path === `/${path}/`))
}

/** The pages before and after this one in its list. */
export function neighboursOf(path: string, list: readonly PageEntry[]) {
  const place = list.findIndex((page) => page.path === path)
  return { previous: list[place - 1], next: list[place + 1] }
}
