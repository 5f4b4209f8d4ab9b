import { neighboursOf, pagesAt, type PageEntry, type PageKind } from '../content/directory.ts'

/** What the front matter of every page of a collection holds. */
interface Entry {
  readonly id: string
  readonly data: {
    readonly title: string
    readonly summary: string
    readonly alsoCalled: readonly string[]
    readonly reviewed: Date
    readonly sources: readonly string[]
    readonly related: readonly string[]
  }
}

/** The list that a page stands in, its path with slashes: '/circuit/'. */
interface Section {
  readonly title: string
  readonly path: string
}

/**
 * What Article.astro is told of a page of a collection.
 * @param pages all pages of the section, in their order
 */
export async function entryProps(
  kind: PageKind,
  { id, data }: Entry,
  section: Section,
  pages: readonly PageEntry[],
) {
  const { title, summary, alsoCalled, reviewed, sources, related } = data
  const path = `${section.path}${id}/`
  return {
    path,
    kind,
    title,
    summary,
    alsoCalled,
    reviewed,
    sources,
    related: await pagesAt(related),
    ...neighboursOf(path, pages),
    section,
  }
}
