/** Form of what is kept; another form is not read, and never written over. */
export const VERSION = 1

/** How the first answer to a question was: 'shown' where the person had the answer shown before trying. */
export const outcomes = ['right', 'wrong', 'shown'] as const
export type Outcome = (typeof outcomes)[number]

export interface Answered {
  readonly first: Outcome
  /** Day of the first answer: '2026-11-29'. */
  readonly on: string
  /** Day on which it was first answered right. */
  readonly right?: string
}

/** Answers by 'lesson/question'. Those that this edition does not know are kept as they are. */
export type Answers = Readonly<Record<string, Answered>>

export const questionKey = (lesson: string, question: string): string => `${lesson}/${question}`

const KEY = /^[a-z0-9-]+\/[a-z0-9-]+$/
const DAY = /^\d{4}-\d{2}-\d{2}$/
/** Many times what the course has: a file with more is none of ours. */
const MOST_ANSWERS = 2000

export const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string }

const shown = (value: unknown): string => {
  const text = JSON.stringify(value) ?? 'nothing'
  return `«${text.length > 40 ? `${text.slice(0, 40)}…` : text}»`
}

/** The answers out of unknown data, or the field that does not fit with what is accepted. */
export function answersOf(value: unknown): Read<Answers> {
  if (!isRecord(value))
    return { ok: false, reason: `answers is ${shown(value)}; accepted: a list of answers by question` }
  const entries = Object.entries(value)
  if (entries.length > MOST_ANSWERS)
    return { ok: false, reason: `answers has ${entries.length} entries; accepted: at most ${MOST_ANSWERS}` }
  const answers: Record<string, Answered> = {}
  for (const [key, entry] of entries) {
    if (!KEY.test(key)) return { ok: false, reason: `answers has ${shown(key)}; accepted: lesson/question` }
    if (!isRecord(entry))
      return { ok: false, reason: `answers, ${key} is ${shown(entry)}; accepted: first, on and right` }
    const first = outcomes.find((outcome) => outcome === entry['first'])
    if (first === undefined)
      return {
        ok: false,
        reason: `answers, ${key}, first is ${shown(entry['first'])}; accepted: ${outcomes.join(', ')}`,
      }
    const { on, right } = entry
    if (!isDay(on))
      return { ok: false, reason: `answers, ${key}, on is ${shown(on)}; accepted: a day such as 2026-11-29` }
    if (right !== undefined && !isDay(right))
      return {
        ok: false,
        reason: `answers, ${key}, right is ${shown(right)}; accepted: a day such as 2026-11-29, or nothing`,
      }
    answers[key] = { first, on, ...(right === undefined ? {} : { right }) }
  }
  return { ok: true, value: answers }
}

const isDay = (value: unknown): value is string =>
  typeof value === 'string' && DAY.test(value) && !Number.isNaN(Date.parse(value))

/** What was kept of the course on this device. Nothing kept is an empty record, and no error. */
export function readAnswers(text: string | null): Read<Answers> {
  if (text === null) return { ok: true, value: {} }
  let kept: unknown
  try {
    kept = JSON.parse(text)
  } catch {
    return { ok: false, reason: 'it is no JSON' }
  }
  if (!isRecord(kept) || kept['version'] !== VERSION)
    return {
      ok: false,
      reason: `version is ${shown(isRecord(kept) ? kept['version'] : kept)}; accepted: ${VERSION}`,
    }
  return answersOf(kept['answers'])
}

export const writeAnswers = (answers: Answers): string => JSON.stringify({ version: VERSION, answers })

/** The answers with one more. What the first answer was stays as it was. */
export function withAnswer(answers: Answers, key: string, outcome: Outcome, day: string): Answers {
  const before = answers[key]
  const first = before?.first ?? outcome
  const right = before?.right ?? (outcome === 'right' ? day : undefined)
  return { ...answers, [key]: { first, on: before?.on ?? day, ...(right === undefined ? {} : { right }) } }
}

export interface Tally {
  readonly of: number
  readonly answered: number
  readonly atFirst: number
  /** Questions, by their place from 1, of which the first answer was not right. */
  readonly missed: readonly number[]
}

/** How the questions of a lesson stand. */
export function tallyOf(answers: Answers, lesson: string, questions: readonly string[]): Tally {
  const entries = questions.map((question) => answers[questionKey(lesson, question)])
  return {
    of: questions.length,
    answered: entries.filter((entry) => entry !== undefined).length,
    atFirst: entries.filter((entry) => entry?.first === 'right').length,
    missed: entries.flatMap((entry, place) =>
      entry !== undefined && entry.first !== 'right' ? [place + 1] : [],
    ),
  }
}
