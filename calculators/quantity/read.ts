import { acceptedIn, convert } from './convert.ts'
import { LONGEST, NUMBER_HINT, plainText, quoted, readNumber, refuse } from './number.ts'
import { findUnit } from './spelling.ts'
import type { KindId, QuantityReading } from './types.ts'

/** Signs that make a text worth handing to the expression reader. */
const ARITHMETIC = /[+*/^()×·⋅÷⁄\d²³⁻¹½¼¾⅓⅔⅛⅜⅝⅞-]/

/**
 * Reads a plain number in the field's unit, or a number and a unit, at once and without mathjs. A text that looks
 * like arithmetic gives `{ ok: 'expression' }`: then `readQuantity` knows more. Reasons and what is accepted are
 * worded to stand behind the field's name and carry no full stop. Never throws, never gives a number that is not
 * finite.
 * @param text what was typed [-], up to 100 characters
 * @param kind kind of quantity of the field [-]
 * @param unitId unit of the field, for a number without one [-]
 * @source nist-sp811
 */
export function readPlain(
  text: string,
  kind: KindId,
  unitId: string,
): QuantityReading | { readonly ok: 'expression' } {
  const typed = plainText(text)
  if (typed === '') return refuse('nothing was typed', acceptedIn(kind))
  if (typed.length > LONGEST)
    return refuse(`${quoted(typed)} is ${typed.length} characters long`, `at most ${LONGEST} characters`)
  const number = readNumber(typed)
  if (number.ok === 'none') {
    if (/^[+-]? ?[(½¼¾⅓⅔⅛⅜⅝⅞]/.test(typed)) return { ok: 'expression' }
    return refuse(
      `${quoted(typed)} does not begin with a number`,
      kind === 'ratio' ? `${NUMBER_HINT}, plain or in %` : `${NUMBER_HINT}, then ${acceptedIn(kind)}`,
    )
  }
  if (!number.ok) return number
  if (number.rest === '') {
    const reading = convert(typed, number.value, unitId, kind, unitId)
    return reading.ok && number.grouped ? { ...reading, understood: `${typed} = ${number.value}` } : reading
  }
  const unit = findUnit(number.rest, kind)
  if (unit !== undefined) return convert(typed, number.value, unit, kind, unitId)
  if (ARITHMETIC.test(number.rest)) return { ok: 'expression' }
  return refuse(`${quoted(number.rest)} is not a unit known here`, acceptedIn(kind))
}

/**
 * Reads all that `readPlain` reads, and arithmetic with units: '5/8 in', '2 bar + 30 kPa'. mathjs is loaded only
 * when such a text is met. Never rejects, never gives a number that is not finite.
 * @param text what was typed [-], up to 100 characters
 * @param kind kind of quantity of the field [-]
 * @param unitId unit of the field, for a number without one [-]
 * @source nist-sp811
 */
export async function readQuantity(text: string, kind: KindId, unitId: string): Promise<QuantityReading> {
  const plain = readPlain(text, kind, unitId)
  if (plain.ok !== 'expression') return plain
  const { readExpression } = await import('./expression.ts')
  return readExpression(plainText(text), kind, unitId)
}
