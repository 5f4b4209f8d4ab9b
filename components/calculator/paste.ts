/** What was pasted, cut into rows and cells, and what was left out of it. */
export interface Pasted {
  readonly cells: readonly (readonly string[])[]
  readonly headingLeftOut: boolean
}

const BEGINS_LIKE_A_NUMBER = /^["'\s]*[-+−–.,]?\s*[\d½¼¾⅓⅔(]/

const withoutQuotes = (cell: string): string =>
  cell
    .trim()
    .replace(/^"(.*)"$/, '$1')
    .trim()

/**
 * The sign that parts the cells of a line. A comma alone parts only where it gives each line as many cells as the
 * table has left: elsewhere it is the decimal sign of half the world.
 */
function separatorOf(lines: readonly string[], columns: number): RegExp | undefined {
  for (const sign of [/\t/, /;/, /\|/, /,\s/]) if (lines.some((line) => sign.test(line))) return sign
  const commas = (line: string): number => line.split(',').length - 1
  return columns > 1 && lines.every((line) => commas(line) === columns - 1) ? /,/ : undefined
}

/** Numbers in one line with nothing but spaces or commas between them: a column that was written across. */
function acrossOneLine(text: string): string[] | undefined {
  const parts = text.trim().split(/[\s;|]+|,\s+/)
  return parts.length > 1 && parts.every((part) => /^[-+−]?\d+([.,]\d+)?$/.test(part)) ? parts : undefined
}

/**
 * Cuts a text from a spreadsheet, a log or a file into rows and cells. Tabs part cells, or semicolons, strokes, or
 * commas; a first line without numbers is a heading and is left out.
 * @param columns how many columns there are from the cell on into which it is pasted
 */
export function cutPasted(text: string, columns: number): Pasted {
  const lines = text
    .replaceAll(/\r\n?/g, '\n')
    .split('\n')
    .map((line) => line.replace(/^\|(.*)\|$/, '$1'))
    .filter((line) => line.trim() !== '' && !/^[\s|:-]+$/.test(line))
  const across = lines.length === 1 && columns === 1 ? acrossOneLine(lines[0] ?? '') : undefined
  if (across) return { cells: across.map((cell) => [cell]), headingLeftOut: false }
  const separator = separatorOf(lines, columns)
  const rows = lines.map((line) =>
    separator === undefined ? [line.trim()] : line.split(separator).map(withoutQuotes),
  )
  const headingLeftOut = rows.length > 1 && !rows[0]?.some((cell) => BEGINS_LIKE_A_NUMBER.test(cell))
  return { cells: headingLeftOut ? rows.slice(1) : rows, headingLeftOut }
}

/** Whether a pasted text is more than the content of one cell. */
export function isTable(text: string): boolean {
  return /[\t\n\r;|]/.test(text.trim()) || acrossOneLine(text) !== undefined
}

/** What became of a paste, for the person to read: nothing is left out silently. */
export function pasteInWords(
  pasted: Pasted,
  room: { readonly rows: number; readonly columns: number },
): string {
  const { cells } = pasted
  const rows = Math.min(cells.length, room.rows)
  const widest = Math.max(0, ...cells.map((row) => row.length))
  return [
    `${rows} ${rows === 1 ? 'row' : 'rows'} pasted.`,
    pasted.headingLeftOut ? 'The first line holds no number and was taken as a heading.' : '',
    cells.length > rows ? `${cells.length - rows} more had no room and were left out.` : '',
    widest > room.columns
      ? `What stood to the right of ${room.columns} ${room.columns === 1 ? 'column' : 'columns'} was left out.`
      : '',
  ]
    .filter(Boolean)
    .join(' ')
}
