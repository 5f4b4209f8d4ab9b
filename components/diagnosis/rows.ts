import { wholePercents } from './shares.ts'
import type { FinderOffer, Findings, FoundGroup } from './types.ts'
import { groupInWords } from './words.ts'

/** So many groups stand in the list; the rest is one row. */
const MOST_GROUPS = 6
const SHOWN_FROM = 0.01

/** A row of the list: a group of causes, or one of the ends that no cause is. */
export interface Row {
  readonly id: string
  readonly words: string
  readonly share: number
  readonly percent: number
  readonly group?: FoundGroup
}

/** The list as it is shown: shares and percentages are those of everything there is, and sum to one and to 100. */
export function shownRows(offer: FinderOffer, { groups, healthy, unknown }: Findings): Row[] {
  const shown = groups.filter(({ share }, place) => place < MOST_GROUPS && (share >= SHOWN_FROM || place < 1))
  const others = groups.slice(shown.length)
  const rest = others.reduce((sum, { share }) => sum + share, 0)
  const count = others.reduce((sum, { causes }) => sum + causes.length, 0)
  const rows: Omit<Row, 'percent'>[] = [
    ...shown.map((group) => ({
      id: group.causes[0]?.fault ?? '',
      words: groupInWords(offer, group),
      share: group.share,
      group,
    })),
    ...(count > 0 ? [{ id: 'others', words: `The other ${count} causes together`, share: rest }] : []),
    { id: 'healthy', words: 'Nothing is wrong: a sound plant shows this', share: healthy },
    { id: 'unknown', words: 'None of these', share: unknown },
  ]
  const percents = wholePercents(rows.map(({ share }) => share))
  return rows.map((row, place) => ({ ...row, percent: percents[place] ?? 0 }))
}
