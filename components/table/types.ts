import type { KindId } from '../../calculators/quantity/types.ts'

/** What stands in one cell: a figure, which follows the reader's units, or words; '' where there is nothing to say. */
export type Cell = string | { readonly figure: string; readonly kind: KindId }

/** Where the figures of a row come from: a source, common practice, memory, the data of a plant, or our own choice. */
export interface Origin {
  /** Id in content/sources, or several. */
  readonly source?: string | readonly string[] | undefined
  readonly practice?: boolean | undefined
  /** From memory; beside a source: the source has it, and it was not read there. */
  readonly memory?: boolean | undefined
  /** Id in content/plants. */
  readonly plant?: string | undefined
  /** Chosen for this handbook. */
  readonly chosen?: boolean | undefined
}

export interface Row {
  readonly name: string
  /** Temperature for which the row speaks, with its unit. */
  readonly at?: string | undefined
  /** 'at least' and 'at most' where the cells are limits. */
  readonly limit?: string | undefined
  readonly cells: readonly Cell[]
  readonly origin: Origin
  /** Rows of one group stand under its name. */
  readonly group?: string | undefined
}

/** A table of the reference pages: typed in data, or worked out from data when the page is built. */
export interface ReferenceTable {
  readonly id: string
  readonly title: string
  readonly caption: string
  readonly invented?: boolean | undefined
  /** What the first column holds. */
  readonly head: string
  readonly columns: readonly string[]
  readonly rows: readonly Row[]
  /** Its words are found on many pages and are about none, so that the search leaves them out. */
  readonly unsearched?: boolean | undefined
  /** What one must know to read it rightly. */
  readonly notes: readonly string[]
}
