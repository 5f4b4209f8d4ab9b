import type { FieldSpecs } from '../calculator/fields.ts'
import type { FinderState } from './finder-state.ts'
import { percentText } from './shares.ts'
import { rowInWords, shownRows } from './rows.ts'
import type { FinderOffer, FoundCauses, FoundNext } from './types.ts'
import { answerLines, foundInWords, type AnswerLine } from './words.ts'

/** What a work order says. */
export interface WorkOrder {
  readonly circuit: string
  readonly day: string
  readonly from: string
  readonly seen: readonly AnswerLine[]
  readonly checks: readonly AnswerLine[]
  readonly verdict: string
  /** That the engine is not to be run to learn more, and why; empty where it may. */
  readonly doNotRun: string
  /** What cannot be right or goes with no cause. */
  readonly lookAgain: readonly AnswerLine[]
  readonly causes: readonly { readonly words: string; readonly share: string }[]
  readonly found: string
  readonly note: string
  readonly address: string
}

export const ADVICE =
  'Ranked by a model and by estimates, as advice to a qualified person. The engine maker’s manual, local codes and licensed practice come first.'

export const SIGNED = 'Name and signature'

export const dayInWords = (date: Date): string =>
  new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' }).format(date)

export function workOrderOf(
  offer: FinderOffer,
  specs: FieldSpecs,
  state: FinderState,
  {
    causes: ranked,
    next,
  }: { readonly causes: FoundCauses | undefined; readonly next: FoundNext | undefined },
  date: Date,
  address: string,
): WorkOrder {
  const lines = answerLines(offer, specs, state)
  const again = new Set([...(ranked?.doubts.map(({ key }) => key) ?? []), ...(ranked?.unexplained ?? [])])
  return {
    circuit: offer.invented ? `${offer.title} (invented)` : offer.title,
    day: dayInWords(date),
    from: offer.starts[state.from]?.title ?? '',
    seen: lines.filter(({ byCheck }) => !byCheck),
    checks: lines.filter(({ byCheck }) => byCheck),
    verdict: ranked?.verdict ?? '',
    doNotRun: next?.doNotRun ?? '',
    lookAgain: lines.filter(({ key }) => again.has(key)),
    causes: ranked
      ? shownRows(offer, ranked).map((row) => ({ words: rowInWords(row), share: percentText(row.percent) }))
      : [],
    found: foundInWords(offer, state.found),
    note: state.note.trim(),
    address,
  }
}

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', title, ...lines]

const answered = (lines: readonly AnswerLine[]): string[] =>
  lines.map(({ label, answer }) => `- ${label}: ${answer}`)

/** The work order as plain text, for a mail or another form. */
export function workOrderText(order: WorkOrder): string {
  const { circuit, day, from, seen, checks, verdict, doNotRun, lookAgain, causes, found, note, address } =
    order
  return [
    'Causes of what was seen (Clear Return)',
    `Circuit: ${circuit}`,
    `Date: ${day}`,
    ...(from === '' ? [] : [`Symptom: ${from}`]),
    ...(doNotRun === '' ? [] : ['', doNotRun]),
    ...section('What was seen and read', answered(seen)),
    ...section('Checks made', answered(checks)),
    ...section('To be looked at again', answered(lookAgain)),
    ...section(
      'Causes in order',
      verdict === ''
        ? []
        : [verdict, ...causes.map(({ words, share }, place) => `${place + 1}. ${words}: ${share}`)],
    ),
    ...section('What was found', [found === '' ? 'Open.' : found, ...(note === '' ? [] : [note])]),
    '',
    `${SIGNED}: ______________________________`,
    '',
    ADVICE,
    address,
    '',
  ].join('\n')
}
