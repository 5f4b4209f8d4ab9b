declare namespace App {
  /** What the parts of one page, wherever they stand in it, know of the page. Set by the article's layout. */
  interface Locals {
    article?: {
      /** Address from the site's root: '/circuit/the-two-valves/'. */
      path: string
      /** Ids of its sources in the order of the list at its foot. */
      sources: string[]
    }
  }
}
