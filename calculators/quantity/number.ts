export type NumberReading =
  | { readonly ok: true; readonly value: number; readonly rest: string; readonly grouped: boolean }
  | { readonly ok: false; readonly reason: string; readonly accepted: string }
  /** The text does not begin with a number. */
  | { readonly ok: 'none' }

export const NUMBER_HINT = 'a number such as 12.5 or 12,5'

/** Longest text that is looked at. A sum of four quantities with long unit names stays below it. */
export const LONGEST = 100

const MINUS = /[\u2012\u2013\u2212\ufe63\uff0d]/g
const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹'

/** The same text with one kind of minus, of space and of digits (wide ones come from some keyboards). */
export function plainText(text: string): string {
  return text
    .replace(MINUS, '-')
    .replace(/[０-９]/g, (wide) => wide.normalize('NFKC'))
    .replace(/\s+/g, ' ')
    .trim()
}

/** What was read, in guillemets, cut short where it is long. */
export function quoted(text: string): string {
  const shown = text.trim()
  return `«${shown.length > 40 ? `${shown.slice(0, 40)}…` : shown}»`
}

export function refuse(reason: string, accepted: string) {
  return { ok: false, reason, accepted } as const
}

const HEAD =
  /^(?<sign>[+-]? ?)(?<digits>(?:[\d.,]|(?<=\d)['’](?=\d{3}(?!\d))|(?<=\d) (?=\d{3}(?![\d/])))*\d[.,]*)(?<power>[eE][+-]?\d+| ?[×x*] ?10(?:\^ ?[+-]?\d+|[⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+))?/u

function exponent(power: string | undefined): string {
  if (!power) return ''
  if (/^[eE]/.test(power)) return power
  const digits = power
    .replace(/^.*10\^? ?/, '')
    .replace('⁻', '-')
    .replace('⁺', '')
    .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]/g, (digit) => String(SUPERSCRIPTS.indexOf(digit)))
  return `e${digits}`
}

/** Digits with at most one decimal mark, brought to a point; or why that cannot be told. */
function decimal(typed: string): string | ReturnType<typeof refuse> {
  const groups = (typed.match(/^[\d ]*/)?.[0] ?? '').split(' ')
  const digits = typed.replaceAll(' ', '')
  const marks = digits.replace(/\d/g, '')
  const bare = digits.replace(/\D/g, '')
  if (/['’]/.test(marks)) return refuse(`${quoted(typed)} has a mark between its digits`, bare)
  if (marks.includes(',') && marks.includes('.')) {
    const last = Math.max(digits.lastIndexOf(','), digits.lastIndexOf('.'))
    const meant = `${digits.slice(0, last).replace(/\D/g, '')}.${digits.slice(last + 1)}`
    return refuse(`${quoted(typed)} has both a comma and a point`, `one decimal mark and no other: ${meant}`)
  }
  if (marks.length > 1)
    return refuse(`${quoted(typed)} has more than one ${marks[0] === ',' ? 'comma' : 'point'}`, bare)
  if (groups.length > 1 && (groups[0]?.length ?? 0) > 3)
    return refuse(`${quoted(typed)} has a space in an odd place`, bare)
  if (groups.length === 1 && /^[1-9]\d{0,2},\d{3}$/.test(digits)) {
    const point = digits.replace(',', '.')
    return refuse(`${quoted(typed)} can be read two ways, as ${bare} and as ${point}`, `${bare} or ${point}`)
  }
  return digits.replace(',', '.')
}

/**
 * The number at the beginning of a typed text, and the text behind it. A comma is a decimal mark like the point;
 * spaces (thin and no-break ones too) may group thousands; what can be read in two ways is asked about.
 * @param text what was typed [-], already through `plainText`
 */
export function readNumber(text: string): NumberReading {
  const head = HEAD.exec(text)
  if (!head?.groups) return { ok: 'none' }
  const { sign = '', digits = '', power } = head.groups
  const mantissa = decimal(digits)
  if (typeof mantissa !== 'string') return mantissa
  const value = Number(`${sign.trim()}${mantissa}${exponent(power)}`)
  const shown = quoted(head[0])
  if (!Number.isFinite(value)) return refuse(`${shown} is too large to compute with`, 'numbers up to 1e308')
  if (value === 0 && /[1-9]/.test(mantissa))
    return refuse(`${shown} is too small to compute with`, '0, or 1e-307 and up')
  return { ok: true, value, rest: text.slice(head[0].length).trim(), grouped: digits.includes(' ') }
}
