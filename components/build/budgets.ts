/** What kind of page a budget is for, told by its address. */
export type PageKind = 'start' | 'article' | 'calculator' | 'bench' | 'finder' | 'list'

export interface Budget {
  /** Compressed bytes that a first view may fetch. */
  html: number
  css: number
  /** JavaScript that runs before anybody has touched the page. */
  script: number
}

const KB = 1024

/**
 * Compressed sizes above which the build fails. An article is read on a phone at the engine's side, over a
 * thin connection: at 100 KB/s its text should be there within half a second. The largest carry three calculators
 * with their worked results, a bench and a drawing with its figures in every system of units.
 */
export const budgets: Record<PageKind, Budget> = {
  start: { html: 16 * KB, css: 16 * KB, script: 16 * KB },
  article: { html: 44 * KB, css: 16 * KB, script: 16 * KB },
  calculator: { html: 40 * KB, css: 16 * KB, script: 16 * KB },
  bench: { html: 40 * KB, css: 20 * KB, script: 16 * KB },
  finder: { html: 16 * KB, css: 20 * KB, script: 16 * KB },
  list: { html: 40 * KB, css: 16 * KB, script: 16 * KB },
}

/**
 * What a page fetches when somebody searches or a calculator comes into view: framework, form, the calculation and
 * the search. Where no calculator stands, nothing of the framework may be fetched, now or later.
 */
export const onDemandBudget = 80 * KB

/** What a bench fetches besides when it comes into view: its form, the model with its solver, and the data. */
export const benchBudget = 64 * KB

/** Model and solver of a bench: a fifth of what the usual engine for water networks weighs in a browser. */
export const modelBudget = 45 * KB

/** What the finder of causes fetches besides for one circuit: its questions, the worker, and what the ranking rests on. */
export const rankingBudget = 64 * KB

/** The words by which a wrong spelling is mended: fetched once, when somebody first searches. */
export const nearWordsBudget = 60 * KB
