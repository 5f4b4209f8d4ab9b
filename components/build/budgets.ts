/** What kind of page a budget is for, told by its address. */
export type PageKind = 'start' | 'article' | 'calculator' | 'list'

export interface Budget {
  /** Compressed bytes that a first view may fetch. */
  html: number
  css: number
  /** JavaScript that the page runs on its own, without a calculator in it. */
  script: number
}

const KB = 1024

/**
 * Compressed sizes above which the build fails. An article is read on a phone at the engine's side, over a
 * thin connection: at 100 KB/s all of one should be there within half a second.
 */
export const budgets: Record<PageKind, Budget> = {
  start: { html: 16 * KB, css: 16 * KB, script: 16 * KB },
  article: { html: 32 * KB, css: 16 * KB, script: 16 * KB },
  calculator: { html: 40 * KB, css: 16 * KB, script: 16 * KB },
  list: { html: 40 * KB, css: 16 * KB, script: 16 * KB },
}

/** A calculator's island with its framework, its own code and the readings of units, without mathjs. */
export const islandScriptBudget = 64 * KB

/** The island's renderer on a page that holds no island: nothing of it may be there. */
export const frameworkBudgetWithoutIsland = 0

/** The words by which a wrong spelling is mended: fetched once, when somebody first searches. */
export const nearWordsBudget = 60 * KB
