import { formatIn } from './format.ts'
import { kinds, kindOf, understoodUnits } from './kinds.ts'
import { quoted, refuse } from './number.ts'
import type { KindId, QuantityReading } from './types.ts'
import { toSI, unitOf } from './units.ts'

/** Standard atmosphere [Pa], exact: between gauge and absolute pressure where nothing better is known. @source nist-sp811 */
export const STANDARD_ATMOSPHERE = 101325

/** What a field of this kind takes, for messages: 'a gauge pressure in kPa, bar, psi'. */
export function acceptedIn(kind: KindId): string {
  // Turns count an angle, which only a field made for them asks for.
  if (kind === 'ratio') return 'a plain number, or one in %'
  const symbols = kindOf(kind).units.map((id) => unitOf(id).symbol)
  return `${withArticle(kindOf(kind).label)} in ${symbols.join(', ')}`
}

const withArticle = (label: string): string => `${/^[aeiou]/.test(label) ? 'an' : 'a'} ${label}`

/** Lowest value that can exist at all [SI], by kind; gauge pressure: a perfect vacuum under a standard atmosphere. */
const lowest: Partial<Record<KindId, { si: number; what: string }>> = {
  temperature: { si: 0, what: 'absolute zero' },
  absolutePressure: { si: 0, what: 'a perfect vacuum' },
  gaugePressure: { si: -STANDARD_ATMOSPHERE, what: 'a perfect vacuum' },
}

/** What another kind's unit means in a field of this kind, or why it means nothing there. */
function referenceShift(unitId: string, kind: KindId): number | undefined {
  const { onlyKind } = unitOf(unitId)
  if (onlyKind === undefined || onlyKind === kind) return 0
  if (onlyKind === 'absolutePressure' && kind === 'gaugePressure') return -STANDARD_ATMOSPHERE
  if (onlyKind === 'gaugePressure' && kind === 'absolutePressure') return STANDARD_ATMOSPHERE
  return undefined
}

/** Why this unit cannot stand in a field of this kind; undefined when it can. */
export function refuseUnit(text: string, unitId: string, kind: KindId) {
  if (understoodUnits(kind).includes(unitId)) return undefined
  const { onlyKind } = unitOf(unitId)
  const belongs = onlyKind
    ? [kinds[onlyKind]]
    : Object.values(kinds).filter((other) => other.units.includes(unitId))
  const labels = belongs.map((other) => other.label)
  // '5 kPa' alone does not say which of the pressures it is.
  const common =
    labels.length > 1 &&
    ['pressure', 'temperature', 'length'].find((word) => labels.some((label) => label.includes(word)))
  const what = common ? withArticle(common) : labels.map(withArticle).join(' or ')
  return refuse(`${quoted(text)} is ${what}`, acceptedIn(kind))
}

/** A conversion's rounding below a limit; far under anything that can be measured. [SI] */
const ROUNDING = 1e-6

/** The value, or the lowest possible one where only rounding puts it below: −459.67 °F is absolute zero. */
export function settled(si: number, kind: KindId): number {
  const limit = lowest[kind]?.si
  return limit !== undefined && si < limit && si >= limit - ROUNDING ? limit : si
}

/** The last checks of any reading, typed as one number or as an expression: finite, and possible at all. */
export function checkSI(text: string, si: number, kind: KindId) {
  if (!Number.isFinite(si)) return refuse(`${quoted(text)} is too large to compute with`, acceptedIn(kind))
  const limit = lowest[kind]
  if (limit && si < limit.si) return refuse(`${quoted(text)} is below ${limit.what}`, acceptedIn(kind))
  return undefined
}

/**
 * Reading of a number with the unit that was written beside it, or with the field's unit.
 * @param text what was typed, for messages [-]
 * @param value the number in it [unitId]
 * @param unitId unit of the number [-]
 * @param kind kind of quantity of the field [-]
 * @param fieldUnit unit in which the field shows its value [-]
 */
export function convert(
  text: string,
  value: number,
  unitId: string,
  kind: KindId,
  fieldUnit: string,
): QuantityReading {
  const wrong = refuseUnit(text, unitId, kind)
  if (wrong) return wrong
  const shift = referenceShift(unitId, kind) ?? 0
  const si = settled(toSI(value, unitId, kind) + shift, kind)
  const refusal = checkSI(text, si, kind)
  if (refusal) return refusal
  if (si === 0 && value !== 0 && unitOf(unitId).offset === 0 && shift === 0)
    return refuse(`${quoted(text)} is too small to compute with`, acceptedIn(kind))
  const sameUnit = unitId === fieldUnit
  const reference = shift === 0 ? '' : `, ${kindOf(kind).label} under a standard atmosphere of 101.325 kPa`
  const understood = sameUnit ? '' : `${text} = ${formatIn(si, kind, fieldUnit)}${reference}`
  return { ok: true, si, unit: unitId, understood }
}
