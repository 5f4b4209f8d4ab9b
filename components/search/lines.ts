import type { Answer } from './answer.ts'

const quoted = (word: string) => `“${word}”`

/** What was done to the query before something was found, a sentence each; empty when nothing was. */
export function notesOn(answer: Answer): string[] {
  const notes = answer.mended.map(
    ({ typed, shown }) => `No word ${quoted(typed)} in the handbook; showing ${quoted(shown)}.`,
  )
  if (answer.count > 0 && answer.unknown.length > 0) {
    notes.push(`Nothing for ${answer.unknown.map(quoted).join(', ')}; left out.`)
  }
  if (answer.partial) notes.push('No page has all of these words; these pages have most of them.')
  return notes
}

/** How much was found, in a few words that are also read aloud. */
export function countOf(answer: Answer): string {
  if (answer.count === 0) return 'Nothing found.'
  if (answer.count === 1) return '1 result.'
  return `${answer.count} results.`
}
