import { wholePercents } from './shares.ts'
import type { FinderOffer, FoundCauses, FoundGroup } from './types.ts'
import { causeInWords } from './words.ts'

/** So many groups stand in the list; the rest is one row. */
const MOST_GROUPS = 5
const SHOWN_FROM = 0.02

/** A row of the list: a group of causes, or one of the ends that no cause is. */
export interface Row {
  readonly id: string
  readonly words: string
  /** The others of its group, where no reading tells them from it. */
  readonly alike: readonly string[]
  readonly share: number
  readonly percent: number
  /** Whether it has its place in the order; the ends stand behind it unless they lead. */
  readonly ranked: boolean
  readonly group?: FoundGroup
}

const end = (id: string, words: string, share: number) => ({
  id,
  words,
  alike: [],
  share,
  ranked: false,
})

/** The cause of a row with all that no reading tells from it. */
export const rowInWords = ({ words, alike }: Pick<Row, 'words' | 'alike'>): string =>
  [words, ...alike].join(', or ')

/** The list as it is shown: shares and percentages are those of everything there is, and sum to one and to 100. */
export function shownRows(offer: FinderOffer, { groups, healthy, unknown }: FoundCauses): Row[] {
  const shown = groups.filter(({ share }, place) => place < MOST_GROUPS && (share >= SHOWN_FROM || place < 1))
  const others = groups.slice(shown.length)
  const rest = others.reduce((sum, { share }) => sum + share, 0)
  const count = others.reduce((sum, { causes }) => sum + causes.length, 0)
  const rows: Omit<Row, 'percent'>[] = [
    ...shown.map((group) => {
      const [words = '', ...alike] = group.causes.map((cause) => causeInWords(offer, cause))
      return { id: group.causes[0]?.fault ?? '', words, alike, share: group.share, group, ranked: true }
    }),
    ...(count > 0 ? [end('others', `The other ${count} causes together`, rest)] : []),
    end('healthy', 'Nothing is wrong', healthy),
    end('unknown', 'A cause that is not in this list', unknown),
  ]
  const percents = wholePercents(rows.map(({ share }) => share))
  const all = rows.map((row, place) => ({ ...row, percent: percents[place] ?? 0 }))
  const leading = all.filter(
    ({ id, share }) => (id === 'healthy' || id === 'unknown') && share >= (shown[0]?.share ?? 0),
  )
  return [
    ...leading.map((row) => ({ ...row, ranked: true })).toSorted((a, b) => b.share - a.share),
    ...all.filter((row) => !leading.includes(row)),
  ]
}
