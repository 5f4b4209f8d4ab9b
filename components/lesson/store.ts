import { readAnswers, withAnswer, writeAnswers, type Answers, type Outcome } from './progress.ts'

/** Key under which the answers of the course are kept on the device. */
export const LESSONS_KEY = 'clear-return:lessons'

/** Where records lie: the part of localStorage that is needed. */
export type Shelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>

export type Kept =
  | { readonly ok: true; readonly answers: Answers }
  /** Something lies there that this edition cannot read: it is left as it is. */
  | { readonly ok: false; readonly reason: string }

/** What this device has kept of the course. */
export function keptAnswers(shelf: Shelf | undefined): Kept {
  const read = readAnswers(textAt(shelf, LESSONS_KEY))
  return read.ok ? { ok: true, answers: read.value } : read
}

/** The text under a key; null where there is none, and where the browser keeps nothing. */
export function textAt(shelf: Shelf | undefined, key: string): string | null {
  try {
    return shelf?.getItem(key) ?? null
  } catch {
    return null
  }
}

/**
 * Keeps one more answer beside those that lie there now, which another page may just have written.
 * @returns what to tell the person where it could not be kept
 */
export function keepAnswer(shelf: Shelf | undefined, key: string, outcome: Outcome, day: string): string {
  const kept = keptAnswers(shelf)
  if (!kept.ok)
    return `Not kept: this device holds a record of the course that cannot be read (${kept.reason}).`
  const text = writeAnswers(withAnswer(kept.answers, key, outcome, day))
  return writeAll(shelf, [[LESSONS_KEY, text]])
    ? ''
    : 'Not kept: this browser has no room or keeps nothing. What was kept before is untouched.'
}

/**
 * Writes all of these, or none: what could not be finished is taken back. A text of null removes its key.
 * @returns whether all is written
 */
export function writeAll(
  shelf: Shelf | undefined,
  entries: readonly (readonly [string, string | null])[],
): boolean {
  if (shelf === undefined) return false
  const written: [string, string | null][] = []
  try {
    for (const [key, text] of entries) {
      const before = textAt(shelf, key)
      put(shelf, key, text)
      written.push([key, before])
    }
    return true
  } catch {
    takeBack(shelf, written)
    return false
  }
}

/** Room first: what has grown is taken away before what was there is put back. */
function takeBack(shelf: Shelf, written: readonly (readonly [string, string | null])[]): void {
  try {
    for (const [key] of written) shelf.removeItem(key)
    for (const [key, before] of written) put(shelf, key, before)
  } catch {
    // A shelf that refuses what it has just held refuses everything.
  }
}

function put(shelf: Shelf, key: string, text: string | null): void {
  if (text === null) shelf.removeItem(key)
  else shelf.setItem(key, text)
}

/** The browser's shelf; nothing where it gives none. */
export function deviceShelf(): Shelf | undefined {
  try {
    return window.localStorage
  } catch {
    return undefined
  }
}

/** Today as the device's clock has it: '2026-11-29'. */
export function today(now = new Date()): string {
  const two = (number: number) => String(number).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
