import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'

const CONTENT = join(process.cwd(), 'content')

/** Ids of a collection that keeps one file an entry: the file names without their ending. */
export function idsOfFolder(collection: string): string[] {
  const folder = join(CONTENT, collection)
  if (!existsSync(folder)) return []
  return readdirSync(folder)
    .filter((name) => /\.(mdx|yaml)$/.test(name))
    .map((name) => name.replace(/\.(mdx|yaml)$/, ''))
    .sort()
}

/** Ids of a collection that keeps all its entries in one YAML file: the keys at its top. */
export function idsOfFile(path: string): string[] {
  return Object.keys(parse(readFileSync(join(CONTENT, path), 'utf8')) as object).sort()
}

/** Keys under a field at the top of one YAML file: the set points of a plant, say. */
export function keysIn(path: string, field: string): string[] {
  const data = parse(readFileSync(join(CONTENT, path), 'utf8')) as Record<string, unknown>
  return Object.keys((data[field] ?? {}) as object)
}

/** Ids of the calculators: their folders' names. */
export function calculatorIds(): string[] {
  return readdirSync(join(process.cwd(), 'calculators', 'catalogue'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
}

/** Paths of the pages, as front matter and links in articles name them: 'circuit/the-two-valves'. */
export function pagePaths(): string[] {
  return [
    ...['circuit', 'symptoms', 'procedures'].flatMap((collection) =>
      idsOfFolder(collection).map((id) => `${collection}/${id}`),
    ),
    ...[...calculatorIds(), 'unit-converter'].map((id) => `calculators/${id}`),
  ]
}
