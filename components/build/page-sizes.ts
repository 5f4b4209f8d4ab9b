import { existsSync, readFileSync } from 'node:fs'
import { join, posix } from 'node:path'
import { gzipSync } from 'node:zlib'
import type { OutputPage } from './output-pages.ts'
import { budgets, frameworkBudgetWithoutIsland, islandScriptBudget } from './budgets.ts'
import type { PageKind } from './budgets.ts'

export interface PageSize {
  path: string
  kind: PageKind
  html: number
  css: number
  /** Scripts that the page fetches at its first view, without its islands. */
  script: number
  /** What its islands fetch on top. */
  island: number
  /** The share of 'script' that is the islands' renderer. */
  framework: number
}

/** The kind of page that stands at an address. */
export function kindOfPage(path: string): PageKind {
  if (path === '/') return 'start'
  const [section = '', name = ''] = path.split('/').filter((part) => part !== '')
  if (name === '') return 'list'
  return section === 'calculators' ? 'calculator' : 'article'
}

/** Compressed sizes of each page of the output in `folder`; `base` is the folder of the host it is built for. */
export function pageSizes(folder: string, base: string, pages: OutputPage[]): PageSize[] {
  const files = new OutputFiles(folder, base)
  const renderers = new Set(
    pages.flatMap((page) => files.scripts(matches(page.html, /renderer-url="([^"]+)"/g))),
  )
  return pages.map((page) => {
    const own = files.scripts(matches(page.html, /<script\b[^>]*\bsrc="([^"]+)"/g))
    const withIslands = files.scripts(
      matches(page.html, /(?:component|renderer|before-hydration)-url="([^"]+)"/g),
    )
    const inline = matches(page.html, /<script\b(?![^>]*\bsrc=)[^>]*>([^]*?)<\/script>/g)
    return {
      path: page.path,
      kind: kindOfPage(page.path),
      html: gzipSync(page.html).length,
      css: files.sum(matches(page.html, /<link\b[^>]*\bhref="([^"]+\.css)"/g)),
      script: files.sum(own) + inline.reduce((sum, code) => sum + gzipSync(code).length, 0),
      island: files.sum(withIslands.filter((file) => !own.includes(file))),
      framework: files.sum(own.filter((file) => renderers.has(file))),
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
      ['JavaScript', size.script, budget.script],
      ['JavaScript of islands', size.island, islandScriptBudget],
      ['framework JavaScript outside an island', size.framework, frameworkBudgetWithoutIsland],
    ] as const
    return limits
      .filter(([, bytes, limit]) => bytes > limit)
      .map(([what, bytes, limit]) => `${size.path}: ${what} is ${bytes} bytes compressed, allowed: ${limit}`)
  })
}

/** The largest page of each kind, as lines of a table. */
export function sizeTable(sizes: PageSize[]): string[] {
  const kinds = Object.keys(budgets) as PageKind[]
  const kilobytes = (bytes: number) => (bytes / 1024).toFixed(1).padStart(7)
  const rows = kinds.flatMap((kind) => {
    const ofKind = sizes.filter((size) => size.kind === kind)
    const largest = (part: 'html' | 'css' | 'script' | 'island') =>
      Math.max(...ofKind.map((size) => size[part]))
    if (ofKind.length === 0) return []
    const parts = [largest('html'), largest('css'), largest('script'), largest('island')]
      .map(kilobytes)
      .join(' ')
    return [`${kind.padEnd(12)}${String(ofKind.length).padStart(5)}  ${parts}`]
  })
  return [
    `${'KB, gzip'.padEnd(12)}pages     HTML     CSS      JS islands   (the largest of each kind)`,
    ...rows,
  ]
}

function matches(text: string, pattern: RegExp): string[] {
  return [...text.matchAll(pattern)].map((match) => match[1] ?? '')
}

/** Files of the output by their address on the host, each compressed once. */
class OutputFiles {
  private readonly sizes = new Map<string, number>()
  private readonly folder: string
  private readonly base: string

  constructor(folder: string, base: string) {
    this.folder = folder
    this.base = base
  }

  sum(addresses: string[]): number {
    return [...new Set(addresses)].reduce((sum, address) => sum + this.size(address), 0)
  }

  /** The given scripts and all that they import before they run. */
  scripts(addresses: string[]): string[] {
    const found = new Set<string>()
    const visit = (address: string): void => {
      if (found.has(address) || !existsSync(this.fileOf(address))) return
      found.add(address)
      const code = readFileSync(this.fileOf(address), 'utf8')
      const imported = matches(code, /(?:^|[;}\s])(?:import|export)\b[^'"();]*?["'](\.[^"']+)["']/g)
      for (const path of imported) visit(posix.join(posix.dirname(address), path))
    }
    for (const address of addresses) visit(address)
    return [...found]
  }

  private size(address: string): number {
    let size = this.sizes.get(address)
    if (size === undefined) {
      const file = this.fileOf(address)
      size = existsSync(file) ? gzipSync(readFileSync(file)).length : 0
      this.sizes.set(address, size)
    }
    return size
  }

  private fileOf(address: string): string {
    const prefix = this.base.endsWith('/') ? this.base : `${this.base}/`
    return join(this.folder, address.startsWith(prefix) ? address.slice(prefix.length) : address)
  }
}
