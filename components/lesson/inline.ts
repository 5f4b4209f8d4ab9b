/** A stretch of a question's text: words, a figure that follows the reader's units, or a way to another page. */
export type Piece =
  | { readonly is: 'words'; readonly words: string }
  | { readonly is: 'set point'; readonly id: string }
  | { readonly is: 'figure'; readonly value: string; readonly kind: string }
  | { readonly is: 'link'; readonly words: string; readonly to: string }

/** '{header-pressure}', '{150 kPa, gaugePressure}' and '[the two valves](circuit/the-two-valves)'. */
const MARK = /\{([^{},]+)(?:,\s*(\w+))?\}|\[([^\]]+)\]\(([^)\s]+)\)/g

/**
 * The text of a question in its pieces. In braces stands the id of a set point, or a figure chosen for the example
 * with its kind; a link is written as in Markdown and names its page as front matter does.
 */
export function piecesOf(text: string): Piece[] {
  const pieces: Piece[] = []
  let from = 0
  const words = (to: number) => {
    if (to > from) pieces.push({ is: 'words', words: text.slice(from, to) })
  }
  for (const found of text.matchAll(MARK)) {
    const [mark, braced = '', kind, label = '', to = ''] = found
    words(found.index)
    from = found.index + mark.length
    if (!mark.startsWith('{')) pieces.push({ is: 'link', words: label, to })
    else if (kind === undefined) pieces.push({ is: 'set point', id: braced.trim() })
    else pieces.push({ is: 'figure', value: braced.trim(), kind })
  }
  words(text.length)
  return pieces
}
