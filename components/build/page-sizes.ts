import { gzipSync } from 'node:zlib'
import { benchBudget, budgets, modelBudget, onDemandBudget, rankingBudget } from './budgets.ts'
import type { PageKind } from './budgets.ts'
import { OutputFiles } from './output-files.ts'
import type { OutputPage } from './output-pages.ts'

export interface PageSize {
  path: string
  kind: PageKind
  html: number
  css: number
  /** Scripts that the page fetches at its first view. */
  script: number
  /** What it fetches when somebody searches or comes to a calculator or a bench; mathjs, which few need, is not in it. */
  onDemand: number
  /** Of that the model of a circuit and its solver, where a bench stands. */
  model: number
  /** What the finder of causes fetches for the circuit that it shows first, its worker included. */
  ranking: number
  /** The files of the framework that the page can fetch where it has no calculator, or fetches at its first view. */
  framework: string[]
}

/** The kind of page that stands at an address. */
export function kindOfPage(path: string): PageKind {
  if (path === '/') return 'start'
  if (path === '/causes/') return 'finder'
  const [section = '', name = ''] = path.split('/').filter((part) => part !== '')
  if (name === '') return 'list'
  if (section === 'bench') return 'bench'
  return section === 'calculators' ? 'calculator' : 'article'
}

/** Compressed sizes of each page of the output in `folder`; `base` is the folder of the host it is built for. */
export function pageSizes(folder: string, base: string, pages: OutputPage[]): PageSize[] {
  const files = new OutputFiles(folder, base)
  return pages.map(({ path, html }) => {
    const script = files.withImports(matches(html, /<script\b[^>]*\bsrc="([^"]+)"/g))
    const inline = matches(html, /<script\b(?![^>]*\bsrc=)[^>]*>([^]*?)<\/script>/g)
    const calculators = matches(html, /<calculator-form\b[^>]*\bdata-calculator="([^"]+)"/g)
    const converters = matches(html, /<(unit-converter|hidden-fault|fault-finder)\b/g)
    const benches = matches(html, /<circuit-bench\b[^>]*?\bdata-name="[^"]+"([^>]*)>/g)
    const model = files.withImports(benches.length > 0 ? files.named(['solver']) : [])
    const forms = benches.map((rest) => (rest.includes('data-preset') ? 'SmallBench' : 'Bench'))
    const data = matches(html, /<circuit-bench\b[^>]*\bdata-source="([^"]+)"/g)
    const ranking = matches(html, /<fault-finder\b[^>]*?\bdata-circuits="([^"]+)"/g).flatMap((circuits) => [
      ...matches(circuits, /(?:offer|knowledge)&(?:quot|#34);:&(?:quot|#34);([^&]+)&/g).slice(0, 2),
      ...files.named(['worker']),
    ])
    const islands = matches(html, /<astro-island\b[^>]*\b(?:component|renderer)-url="([^"]+)"/g)
    const onDemand = files
      .withImports([
        ...files.fetchedLaterBy(script),
        ...files.named(calculators),
        ...islands,
        ...files.named(forms),
      ])
      .concat(model)
      .filter((file) => !script.includes(file))
    const framework =
      calculators.length + converters.length + benches.length + islands.length > 0
        ? script
        : [...script, ...onDemand]
    return {
      path,
      kind: kindOfPage(path),
      html: gzipSync(html).length,
      css: files.size(matches(html, /<link\b[^>]*\bhref="([^"]+\.css)"/g)),
      script: files.size(script) + inline.reduce((sum, code) => sum + gzipSync(code).length, 0),
      onDemand: files.size([...onDemand, ...data]),
      model: files.size(model),
      ranking: files.size(ranking),
      framework: framework.filter((file) => files.isFramework(file)),
    }
  })
}

/** One sentence for each budget that a page exceeds. */
export function overBudget(sizes: PageSize[]): string[] {
  return sizes.flatMap((size) => {
    const budget = budgets[size.kind]
    const limits = [
      ['HTML', size.html, budget.html],
      ['CSS', size.css, budget.css],
      ['JavaScript at the first view', size.script, budget.script],
      ['what is fetched on demand', size.onDemand, onDemandBudget + (size.model > 0 ? benchBudget : 0)],
      ['the model of the circuit', size.model, modelBudget],
      ['the ranking of causes', size.ranking, rankingBudget],
    ] as const
    const excesses = limits
      .filter(([, bytes, limit]) => bytes > limit)
      .map(([what, bytes, limit]) => `${size.path}: ${what} is ${bytes} bytes compressed, allowed: ${limit}`)
    if (size.framework.length > 0) {
      excesses.push(
        `${size.path}: framework code where no calculator needs it: ${size.framework.join(', ')}; allowed: none`,
      )
    }
    return excesses
  })
}

/** The largest page of each kind, as lines of a table. */
export function sizeTable(sizes: PageSize[]): string[] {
  const kinds = Object.keys(budgets) as PageKind[]
  const kilobytes = (bytes: number) => (bytes / 1024).toFixed(1).padStart(7)
  const rows = kinds.flatMap((kind) => {
    const ofKind = sizes.filter((size) => size.kind === kind)
    const largest = (part: 'html' | 'css' | 'script' | 'onDemand' | 'model' | 'ranking') =>
      Math.max(...ofKind.map((size) => size[part]))
    if (ofKind.length === 0) return []
    const parts = (['html', 'css', 'script', 'onDemand', 'model', 'ranking'] as const)
      .map(largest)
      .map(kilobytes)
      .join(' ')
    return [`${kind.padEnd(12)}${String(ofKind.length).padStart(5)}  ${parts}`]
  })
  return [
    `${'KB, gzip'.padEnd(12)}pages     HTML     CSS      JS  later   model ranking   (the largest of each kind)`,
    ...rows,
  ]
}

function matches(text: string, pattern: RegExp): string[] {
  return [...text.matchAll(pattern)].map((match) => match[1] ?? '')
}
