import { stemsOf } from './query.ts'

/** A stretch of text, marked when it is one of the words searched for. */
export interface Piece {
  text: string
  marked: boolean
}

/** The pieces of an excerpt by Pagefind, which comes with `<mark>` around the words and `<` and `>` as entities. */
export function piecesOfExcerpt(excerpt: string): Piece[] {
  return excerpt
    .split(/<mark>(.*?)<\/mark>/s)
    .map((text, index) => ({
      text: text.replaceAll('&lt;', '<').replaceAll('&gt;', '>'),
      marked: index % 2 === 1,
    }))
    .filter((piece) => piece.text !== '')
}

/** An excerpt that begins in its section's heading, without that: the heading stands above it already. */
export function withoutHeading(excerpt: string, heading: string): string {
  const [beginning = '', first = ''] = /^(?:…\s)?(.*?)\.(?:<\/mark>)?\s+/s.exec(excerpt) ?? []
  return first !== '' && heading.endsWith(first.replace(/<\/?mark>/g, ''))
    ? excerpt.slice(beginning.length)
    : excerpt
}

/** The pieces of a plain text in which the words of these stems are marked. */
export function piecesOfText(text: string, stems: ReadonlySet<string>): Piece[] {
  return text
    .split(/([\p{L}\p{N}][\p{L}\p{N}’'-]*)/u)
    .map((part) => ({
      text: part,
      marked: [...stemsOf(part)].some((part) => stems.has(part)),
    }))
    .filter((piece) => piece.text !== '')
}
