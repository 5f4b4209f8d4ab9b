import { acceptedIn } from './convert.ts'
import { plainText, quoted, readNumber, refuse } from './number.ts'
import { readPlain } from './read.ts'
import type { KindId, QuantityReading } from './types.ts'
import { kindOf } from './kinds.ts'

/**
 * Reads a figure of the handbook's data: a number and a unit in one text. A bare number is refused, save for a
 * ratio, which may go without; so is arithmetic.
 * @param text the figure [-], such as '450 kPa'
 * @param kind kind of quantity that is expected [-]
 * @source nist-sp811
 */
export function readFigure(text: string, kind: KindId): QuantityReading {
  const { siUnit } = kindOf(kind)
  const reading = readPlain(text, kind, siUnit)
  if (reading.ok === 'expression')
    return refuse(`${quoted(text)} is not a number and a unit`, acceptedIn(kind))
  const number = readNumber(plainText(text))
  if (reading.ok && number.ok === true && number.rest === '' && kind !== 'ratio')
    return refuse(`${quoted(text)} has no unit`, acceptedIn(kind))
  return reading
}
