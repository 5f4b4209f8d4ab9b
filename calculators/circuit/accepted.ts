import { formatIn } from '../quantity/format.ts'
import { kindOf } from '../quantity/kinds.ts'
import type { KindId } from '../quantity/types.ts'

/** A figure that may lie between two others; in SI. */
export interface Limits {
  readonly kind: KindId
  readonly minimum: number
  readonly maximum: number
  /** Unit in which people speak of it; the kind's usual one where none is given. */
  readonly unit?: string
}

/** Whether a value lies within limits; what is no number does not. */
export const isWithin = (value: number, { minimum, maximum }: Pick<Limits, 'minimum' | 'maximum'>): boolean =>
  value >= minimum && value <= maximum

/** A value of that kind in the unit in which people speak of it: '−35 °C'. */
export function spoken(value: number, { kind, unit }: Pick<Limits, 'kind' | 'unit'>): string {
  return Number.isFinite(value) ? formatIn(value, kind, unit ?? kindOf(kind).preferred.si) : String(value)
}

/** What is accepted, for messages: '0 °C to 55 °C'. */
export const acceptedRange = (limits: Limits): string =>
  `${spoken(limits.minimum, limits)} to ${spoken(limits.maximum, limits)}`
