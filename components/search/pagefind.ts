/** The part of Pagefind's browser interface that this site uses: https://pagefind.app/docs/api/ */
export interface Pagefind {
  options(options: PagefindOptions): Promise<void>
  search(term: string, options?: { filters?: Record<string, string> }): Promise<{ results: PagefindResult[] }>
}

export interface PagefindOptions {
  baseUrl: string
  /** Part of the address of the index's first file: the same as long as the index is. */
  metaCacheTag: string
  excerptLength: number
  excerptEllipsis: string
  ranking: { pageLength?: number; termSimilarity?: number; metaWeights: Record<string, number> }
}

export interface PagefindResult {
  id: string
  score: number
  data(): Promise<PagefindPage>
}

export interface PagefindPage {
  url: string
  excerpt: string
  meta: { title?: string; kind?: string; summary?: string; aliases?: string }
  sub_results: PagefindSection[]
}

export interface PagefindSection {
  title: string
  url: string
  excerpt: string
  /** Absent for what stands before the first heading. */
  anchor?: { element: string; id: string }
  weighted_locations: { balanced_score: number }[]
}
