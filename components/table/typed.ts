import type { CollectionEntry } from 'astro:content'
import { computedTable } from './computed.ts'
import type { ReferenceTable } from './types.ts'

type Entry = CollectionEntry<'tables'>['data']['tables'][number]
type Typed = Exclude<Entry, string>

function typedTable({ rows, ...table }: Typed): ReferenceTable {
  return {
    ...table,
    rows: rows.map(({ name, at, limit, kind, cells, source, practice, memory }) => ({
      name,
      at,
      limit,
      cells: cells.map((cell) => (kind === undefined || cell === '' ? cell : { figure: cell, kind })),
      origin: { source, practice, memory },
    })),
  }
}

/** The tables of a page in their order, typed ones and those worked out. */
export function tablesOf(entries: readonly Entry[]): Promise<ReferenceTable[]> {
  return Promise.all(
    entries.map(async (entry) => (typeof entry === 'string' ? computedTable(entry) : typedTable(entry))),
  )
}
