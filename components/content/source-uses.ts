import { catalogue } from '../../calculators/catalogue/index.ts'
import { allPages } from './directory.ts'

export interface SourceUses {
  /** Pages that cite it or whose method it is. */
  readonly pages: readonly SourcePage[]
  /** Calculators that are held against a case that it prints. */
  readonly cases: readonly SourcePage[]
}

interface SourcePage {
  readonly path: string
  readonly title: string
}

/** What each source of content/sources is used for, by its id. */
export async function sourceUses(): Promise<(id: string) => SourceUses> {
  const pages = await allPages()
  const calculators = await Promise.all(Object.values(catalogue).map((load) => load()))
  return (id) => {
    const citing = pages.filter(({ sources }) => sources.includes(id))
    const held = calculators.filter(({ cases }) => cases.some(({ source }) => source === id))
    return {
      pages: citing,
      cases: held.map(({ id: calculator, title }) => ({ path: `/calculators/${calculator}/`, title })),
    }
  }
}
