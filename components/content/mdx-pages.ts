import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

export interface MdxPage {
  /** From the project's top, with slashes: 'content/circuit/the-circuit.mdx'. */
  readonly path: string
  readonly text: string
}

export interface Tag {
  readonly name: string
  /** Each attribute with its value as written, without its quotes or its outer braces; '' where it has none. */
  readonly attributes: Readonly<Record<string, string>>
  readonly line: number
}

/** What stands in the prose for a tag that says where a figure comes from. */
export const ORIGIN = '⟦origin⟧'

const ORIGIN_TAGS = new Set(['Cite', 'Quantity'])
const QUOTES = '"\'`'
const PAIRS: Readonly<Record<string, string>> = { '{': '}', '[': ']', '(': ')' }

export function mdxPages(): MdxPage[] {
  return readdirSync('content', { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.mdx'))
    .sort()
    .map((name) => join('content', name))
    .map((path) => ({ path: path.replaceAll('\\', '/'), text: readFileSync(path, 'utf8') }))
}

/** Place behind the first `stop` from `start` on that stands outside all quotes and brackets. */
function endOf(text: string, start: number, stop: string): number {
  const open: string[] = []
  for (let at = start; at < text.length; at++) {
    const character = text.charAt(at)
    const inner = open.at(-1)
    if (inner === undefined && character === stop) return at + 1
    if (inner === character) open.pop()
    else if (inner && QUOTES.includes(inner)) continue
    else if (QUOTES.includes(character)) open.push(character)
    else if (PAIRS[character]) open.push(PAIRS[character])
  }
  throw new Error(`«${text.slice(start - 1, start + 40)}» is not closed by ${stop}`)
}

function withoutCode(text: string): string {
  const blank = (found: string) => found.replace(/[^\n]/g, ' ')
  return text.replace(/^---\n[\s\S]*?\n---\n/, blank).replace(/^```[\s\S]*?^```/gm, blank)
}

function tagSpans(text: string): { start: number; end: number; source: string }[] {
  const spans = []
  for (const found of text.matchAll(/<\/?[A-Za-z]/g)) {
    if (found.index < (spans.at(-1)?.end ?? 0)) continue
    const end = endOf(text, found.index + 1, '>')
    spans.push({ start: found.index, end, source: text.slice(found.index, end) })
  }
  return spans
}

/** The words a person reads, line by line as in the file: front matter, code and tags are blanked out. */
export function proseOf(text: string): string {
  let prose = withoutCode(text)
  for (const { start, end, source } of tagSpans(prose).reverse()) {
    const name = /^<\/?([A-Za-z]+)/.exec(source)?.[1] ?? ''
    const lines = source.replace(/[^\n]/g, '')
    prose = prose.slice(0, start) + (ORIGIN_TAGS.has(name) ? ORIGIN : '') + lines + prose.slice(end)
  }
  return prose
}

/** The tags of a page, closing ones left out, with their attributes and lines. */
export function tagsOf(text: string): Tag[] {
  const code = withoutCode(text)
  return tagSpans(code).flatMap(({ start, source }) => {
    const name = /^<([A-Za-z]+)/.exec(source)?.[1]
    if (name === undefined) return []
    const line = code.slice(0, start).split('\n').length
    return [{ name, attributes: attributesOf(source.slice(name.length + 1)), line }]
  })
}

/** What an object written in a tag holds: `{ drop: '60 kPa', 'other-flow': '18 L/min' }`. */
export function pairsOf(written: string | undefined): Record<string, string> {
  const pairs = (written ?? '').matchAll(/(?:'([\w-]+)'|"([\w-]+)"|([\w-]+))\s*:\s*(?:'([^']*)'|"([^"]*)")/g)
  return Object.fromEntries(
    [...pairs].map(([, single, double, bare, text, other]) => [
      single ?? double ?? bare ?? '',
      text ?? other ?? '',
    ]),
  )
}

function attributesOf(source: string): Record<string, string> {
  const attributes: Record<string, string> = {}
  let rest = source
  for (;;) {
    const found = /^\s*([A-Za-z]+)(=)?/.exec(rest)
    if (!found?.[1]) return attributes
    rest = rest.slice(found[0].length)
    const value = found[2] ? valueAtStartOf(rest) : ''
    attributes[found[1]] = value.slice(1, -1)
    rest = rest.slice(value.length)
  }
}

function valueAtStartOf(source: string): string {
  const closing = source.startsWith('{') ? '}' : source.charAt(0)
  return source.slice(0, endOf(source, 1, closing))
}
