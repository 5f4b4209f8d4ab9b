import type { Notice, TableRow } from '../calculator/types.ts'
import type { Crossing, Outlook, Trend } from '../statistics/crossing.ts'

/** Up to so many readings the interval of the slope is wider in truth than computed: common practice. */
const FEW_READINGS = 6
/** Drawn on by more than the readings themselves cover, a straight line is a hope: common practice. */
const FAR_AHEAD = 1

/** Outcomes of every calculator that draws a line on to a limit. */
export const outlooks = {
  passed: { label: 'The line has passed the limit', grade: 'action' },
  within: { label: 'Meets the limit within the look-ahead', grade: 'action' },
  maybe: { label: 'May meet the limit within the look-ahead', grade: 'caution' },
  later: { label: 'Does not meet the limit within the look-ahead', grade: 'good' },
  away: { label: 'Moves away from the limit', grade: 'good' },
  notShown: { label: 'No trend is shown yet: no date can be given', grade: 'information' },
} as const satisfies Record<Outlook, { label: string; grade: Notice['grade'] }>

/** Says of a time at the end of the look-ahead that it is no date. */
function cappedNotice({ earliest, likely, latest }: Crossing, lookAhead: number): Notice[] {
  const times = { earliest, likely, latest }
  const capped = Object.entries(times).flatMap(([name, time]) => (time >= lookAhead ? [name] : []))
  if (capped.length === 0) return []
  const which = capped.join(' and ').replace(' and ', capped.length > 2 ? ', ' : ' and ')
  return [
    {
      grade: 'information',
      text: `No further than ${(lookAhead / HOUR).toFixed(0)} h was looked. The ${which} time stands there because that line meets the limit no sooner, or never: it is no date.`,
    },
  ]
}

/** What every such calculator says about its readings. `lookAhead` and the readings' x in the same unit. */
export function trendNotices(trend: Trend, first: number, count: number, meets: Crossing, lookAhead: number) {
  const notices: Notice[] = [...cappedNotice(meets, lookAhead)]
  if (count <= FEW_READINGS)
    notices.push({
      grade: 'caution',
      text: `${count} readings are few: the band of the slope is wider in truth than it is computed. Read more often.`,
    })
  if (meets.likely > FAR_AHEAD * (trend.last - first) && meets.likely < lookAhead)
    notices.push({
      grade: 'caution',
      text: 'The limit lies further ahead than the readings reach back. Take the earliest date, and read again well before it.',
    })
  return notices
}

/** Seconds in an hour: the tables count running hours. */
export const HOUR = 3600

/** Whole seconds: two readings closer than that are one time, and no slope is made of their distance. */
export function timeOf(row: TableRow): number {
  return Math.round(row['hours'] ?? Number.NaN)
}
