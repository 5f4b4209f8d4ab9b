import { STANDARD_ATMOSPHERE } from '../../calculators/quantity/convert.ts'
import { formatNumber, NO_BREAK_SPACE, withoutFinalZeros } from '../../calculators/quantity/format.ts'
import { kindOf, kinds } from '../../calculators/quantity/kinds.ts'
import type { KindId } from '../../calculators/quantity/types.ts'
import { fromSI, unitOf } from '../../calculators/quantity/units.ts'

/** Digits shown: a conversion loses nothing that anybody can measure, and rounding errors stay out of sight. */
const DIGITS = 10

/** One quantity in one unit. */
export interface Conversion {
  readonly unit: string
  readonly symbol: string
  /** The number alone, as it is shown and copied. */
  readonly number: string
}

/** Units offered for a kind. A turn counts an angle and has no place among shares and percentages. */
export function unitsOffered(kind: KindId): readonly string[] {
  return kindOf(kind).units.filter((unit) => unit !== 'turn')
}

/** The quantity in every unit of its kind, in the kind's own order. */
export function conversionsOf(si: number, kind: KindId): readonly Conversion[] {
  return unitsOffered(kind).map((unit) => ({
    unit,
    symbol: unitOf(unit).symbol,
    number: withoutFinalZeros(formatNumber(fromSI(si, unit, kind), DIGITS)),
  }))
}

/** '310.2640782 kPa'. */
export const inOneLine = ({ number, symbol }: Conversion): string =>
  symbol === '' ? number : `${number}${NO_BREAK_SPACE}${symbol}`

/** The kind that counts from the other reference, and how far away that is. */
export interface OtherReference {
  readonly kind: KindId
  /** [Pa], to be added. */
  readonly shift: number
}

/** For a gauge or an absolute pressure, the same pressure counted from the other zero. */
export function otherReference(
  kind: KindId,
  barometer: number = STANDARD_ATMOSPHERE,
): OtherReference | undefined {
  if (kind === 'gaugePressure') return { kind: 'absolutePressure', shift: barometer }
  if (kind === 'absolutePressure') return { kind: 'gaugePressure', shift: -barometer }
  return undefined
}

/** Names of the kinds as a list shows them, in the order of the alphabet. */
export function kindChoices(): readonly { readonly id: KindId; readonly label: string }[] {
  return Object.values(kinds)
    .map(({ id, label }) => ({ id, label: label.slice(0, 1).toUpperCase() + label.slice(1) }))
    .sort((a, b) => a.label.localeCompare(b.label, 'en'))
}
