import { formatNumber, NO_BREAK_SPACE, withoutFinalZeros } from '../quantity/format.ts'
import { kindOf } from '../quantity/kinds.ts'
import { fromSI, unitOf } from '../quantity/units.ts'
import type { QuantityInput, Range, Refusal } from './types.ts'

/** No number can be given, and why. Reason and what is accepted stand as a sentence without its full stop. */
export function refuse(field: string, reason: string, accepted: string): { readonly refusal: Refusal } {
  return { refusal: { field, reason, accepted } }
}

/** Reason where a formula leaves the numbers that a computer holds. */
export const NO_FINITE_RESULT = 'The method gives no finite result for these inputs'

type Field = Pick<QuantityInput, 'label' | 'kind' | 'units'>

function shownUnit(field: Pick<QuantityInput, 'kind' | 'units'>, unit?: string): string {
  return unit ?? field.units?.[0] ?? kindOf(field.kind).units[0] ?? kindOf(field.kind).siUnit
}

const DIGITS = [4, 5, 6, 7, 8, 9, 10, 11, 12]

/** A value with four digits, or with as many as it takes to tell it apart from a limit. */
function show(si: number, field: Field, unit: string, apartFrom?: number): string {
  const number = (value: number, digits: number) => formatNumber(fromSI(value, unit, field.kind), digits)
  const digits =
    apartFrom === undefined ? 4 : DIGITS.find((some) => number(si, some) !== number(apartFrom, some))
  const { symbol } = unitOf(unit)
  const shown = withoutFinalZeros(number(si, digits ?? 12))
  return symbol ? `${shown}${NO_BREAK_SPACE}${symbol}` : shown
}

/** '0.21 mm²/s to 2×10⁷ mm²/s'. */
export function rangeInWords(field: Field, range: Range, unit?: string): string {
  const shown = shownUnit(field, unit)
  return `${show(range.minimum, field, shown)} to ${show(range.maximum, field, shown)}`
}

/** 'Viscosity is 0.1 mm²/s, below 0.21 mm²/s', or undefined inside the range. */
export function outsideInWords(field: Field, value: number, range: Range, unit?: string): string | undefined {
  const below = value < range.minimum
  if (!below && value <= range.maximum) return undefined
  const limit = below ? range.minimum : range.maximum
  const shown = shownUnit(field, unit)
  return `${field.label} is ${show(value, field, shown, limit)}, ${below ? 'below' : 'above'} ${show(limit, field, shown, value)}`
}

/**
 * A refusal when the value is outside the range, undefined inside; the ends belong to it. Not-a-number is outside.
 * @param fieldId id of the input [-]
 * @param field the input: its label, kind and units [-]
 * @param value value to be judged [SI]
 * @param range what is accepted [SI]
 * @param unit unit in which the sentence is worded [-], the field's first one if left out
 */
export function refuseOutside(
  fieldId: string,
  field: Field,
  value: number,
  range: Range,
  unit?: string,
): { readonly refusal: Refusal } | undefined {
  // Words last: most values are inside, and one result with its uncertainty asks thousands of times.
  if (value >= range.minimum && value <= range.maximum) return undefined
  const accepted = rangeInWords(field, range, unit)
  if (!Number.isFinite(value)) return refuse(fieldId, `${field.label} is not a finite number`, accepted)
  const outside = outsideInWords(field, value, range, unit)
  return outside === undefined ? undefined : refuse(fieldId, outside, accepted)
}
