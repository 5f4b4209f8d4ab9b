import { plainText, quoted, readNumber, refuse } from './number.ts'
import { findUnit } from './spelling.ts'
import type { KindId } from './types.ts'

const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}
const SIGNS: Readonly<Record<string, string>> = {
  '+': '+',
  '-': '-',
  '*': '*',
  '/': '/',
  '^': '^',
  '(': '(',
  ')': ')',
  '×': '*',
  '·': '*',
  '⋅': '*',
  '÷': '/',
  '⁄': '/',
}
const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹'
/** Longest spelling of a unit is 'pounds per square inch'. */
const LONGEST_SPELLING = 30

export type Translation =
  | {
      readonly ok: true
      /** Numbers with points, the signs + - * / ^ ( ), and for each unit a name out of `names`. */
      readonly source: string
      /** Unit ids by the name that stands for them. */
      readonly names: ReadonlyMap<string, string>
    }
  | { readonly ok: false; readonly reason: string; readonly accepted: string }

interface Piece {
  readonly source: string
  readonly length: number
  readonly unit?: string
}

/** The longest unit spelled at the beginning of the text. 'L/min' is one unit, but not where it would be divided. */
function unitPiece(text: string, kind: KindId, before: string): Piece | undefined {
  for (let length = Math.min(LONGEST_SPELLING, text.length); length > 0; length -= 1) {
    const after = text.slice(length)
    const spelling = text.slice(0, length)
    // 'ft3' without a sign is a power, as in writing by hand.
    const power = /\p{L}$/u.test(spelling) ? /^[234](?![\p{L}\d])/u.exec(after)?.[0] : undefined
    const endsWord = power !== undefined || !/^[\p{L}\d₀-₉°]/u.test(after) || !/[\p{L}\d]$/u.test(spelling)
    if (!endsWord || /[ ^/.·⋅*×]$/.test(spelling)) continue
    const compound = /[/.·⋅* ]/.test(spelling)
    if (compound && (/\/ ?$/.test(before) || /^ ?[\^⁻⁰¹²³⁴⁵⁶⁷⁸⁹234]/.test(after))) continue
    const unit = findUnit(spelling, kind)
    if (unit !== undefined)
      return power ? { source: `^${power}`, length: length + 1, unit } : { source: '', length, unit }
  }
  return undefined
}

function numberPiece(text: string): Piece | ReturnType<typeof refuse> {
  const vulgar = FRACTIONS[text[0] ?? '']
  if (vulgar !== undefined) return { source: `(${vulgar})`, length: 1 }
  const number = readNumber(text)
  if (number.ok === 'none')
    return refuse(`${quoted(text)} does not begin with a number`, 'numbers, units and + - * / ^')
  if (!number.ok) return number
  const head = text.length - number.rest.length
  const whole = Number.isInteger(number.value) ? String(number.value) : undefined
  const half = FRACTIONS[number.rest[0] ?? '']
  if (whole !== undefined && half !== undefined) return { source: `(${whole}+${half})`, length: head + 1 }
  const mixed = /^(\d{1,2})[/⁄](\d{1,3})(?![\d.,/])/.exec(number.rest)
  // '3 1/2' is three and a half; '3 5/2' is not a way of writing a number.
  if (mixed && whole !== undefined && text[head - 1] === ' ' && Number(mixed[1]) < Number(mixed[2]))
    return { source: `(${whole}+${mixed[1]}/${mixed[2]})`, length: head + mixed[0].length }
  return { source: String(number.value), length: head }
}

function raisedPiece(text: string): Piece | undefined {
  const raised = /^[⁻⁺]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/u.exec(text)?.[0]
  if (!raised) return undefined
  const digits = [...raised.replace(/[⁻⁺]/, '')].map((digit) => RAISED.indexOf(digit)).join('')
  return { source: `^${raised.startsWith('⁻') ? `(-${digits})` : digits}`, length: raised.length }
}

function nextPiece(text: string, kind: KindId, before: string): Piece | ReturnType<typeof refuse> {
  const first = text[0] ?? ''
  if (first === ' ') return { source: ' ', length: 1 }
  if (/[\d.,]/.test(first) || FRACTIONS[first] !== undefined) return numberPiece(text)
  const sign = SIGNS[first]
  if (sign !== undefined) return { source: sign, length: 1 }
  const piece = raisedPiece(text) ?? unitPiece(text, kind, before)
  if (piece) return piece
  const word = /^[\p{L}_$]+/u.exec(text)?.[0] ?? first
  return refuse(
    `${quoted(word)} is neither a number, a unit known here nor one of + - * / ^ ( )`,
    'numbers with units',
  )
}

/**
 * The text in the few signs that the expression parser is allowed to see, every unit under a name of our own: so
 * `in` and `min`, which mean something else to the parser, are units here, and no word of the person reaches it.
 * @param text what was typed [-]
 * @param kind kind of quantity of the field [-], whose spellings go first
 */
export function translate(text: string, kind: KindId): Translation {
  const names = new Map<string, string>()
  let source = ''
  let rest = plainText(text)
  while (rest !== '') {
    const piece = nextPiece(rest, kind, source)
    if ('ok' in piece) return piece
    if (piece.unit !== undefined) {
      const name = `unit${names.size + 1}`
      names.set(name, piece.unit)
      source += ` ${name} `
    }
    source += piece.source
    rest = rest.slice(piece.length)
  }
  return { ok: true, source, names }
}
