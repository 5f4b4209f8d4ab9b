import { acceptedIn } from '../../calculators/quantity/convert.ts'
import type { KindId, QuantityReading } from '../../calculators/quantity/types.ts'
import { readPlain } from '../../calculators/quantity/read.ts'
import { formatIn } from '../../calculators/quantity/format.ts'
import { plainText, readNumber } from '../../calculators/quantity/number.ts'
import { findUnit } from '../../calculators/quantity/spelling.ts'
import { fromSI, unitOf } from '../../calculators/quantity/units.ts'
import { isAccuracy } from './fields.ts'
import type { FieldSpec } from './fields.ts'

/** What the person chose. `text` and `textUnit` hold the quantity; `unit` is only how it is shown. */
export interface QuantityField {
  /** As typed, kept to the letter. */
  readonly text: string
  /** The unit in which a plain number in `text` is meant. */
  readonly textUnit: string
  readonly unit: string
  /** The person picked the unit here, so it no longer follows the unit system. */
  readonly picked: boolean
  /** 'waiting' while an expression is on its way through the unit parser. */
  readonly reading: QuantityReading | 'waiting'
}

/**
 * Enough digits that a converted number hides nothing a gauge or a laboratory can tell, few enough for the cell of a
 * table. They are only shown: the quantity stays the one that was typed.
 */
const CONVERTED_DIGITS = 5
/** How well a value is known is itself hardly known to a tenth. */
const ACCURACY_DIGITS = 3

const PERCENT = /(%|percent|per cent|pct)\s*$/i

/** Whether an accuracy's text states it the other way round than its field is declared: '3 cSt' where % is usual. */
export function statedOtherwise(spec: FieldSpec, text: string): boolean {
  if (spec.other === undefined || text.trim() === '') return false
  return spec.share ? !PERCENT.test(text) && !isBare({ text }) : PERCENT.test(text)
}

/** Whether an accuracy's text is a share of the value. */
export function isShare(spec: FieldSpec, text: string): boolean {
  return statedOtherwise(spec, text) ? spec.share === undefined : spec.share === true
}

/** The kind and unit in which a text in this field is to be read. */
export function meaningOf(spec: FieldSpec, text: string, unit: string): { kind: KindId; unit: string } {
  return spec.other !== undefined && statedOtherwise(spec, text) ? spec.other : { kind: spec.kind, unit }
}

/** The reading with what an accuracy accepts, which is more than its kind. */
export function worded(spec: FieldSpec, reading: QuantityReading): QuantityReading {
  if (reading.ok || !isAccuracy(spec)) return reading
  const kind = spec.share ? spec.other?.kind : spec.kind
  const figure = kind === undefined ? [] : [acceptedIn(kind)]
  const share = spec.share || spec.other !== undefined ? ['a percentage of the value, such as 2 %'] : []
  return { ...reading, accepted: [...share, ...figure].join(', or ') }
}

export function readIn(spec: FieldSpec, text: string, unit: string): QuantityField['reading'] {
  const meaning = meaningOf(spec, text, unit)
  const reading = readPlain(text, meaning.kind, meaning.unit)
  return reading.ok === 'expression' ? 'waiting' : worded(spec, reading)
}

/** A field that holds this text; '15 degC' is taken apart so that its unit stands in the unit picker. */
export function fieldFrom(
  spec: FieldSpec,
  text: string,
  shown: { unit: string; picked: boolean },
): QuantityField {
  const typed = plainText(text)
  const number = readNumber(typed)
  if (number.ok === true && number.rest !== '') {
    // Spelling knows no unit by the name '1', yet an address needs a way to say 'a plain ratio'.
    const unit = spec.units.includes(number.rest) ? number.rest : findUnit(number.rest, spec.kind)
    if (unit !== undefined && spec.units.includes(unit)) {
      const bare = typed.slice(0, typed.length - number.rest.length).trim()
      return { text: bare, textUnit: unit, ...shown, reading: readIn(spec, bare, unit) }
    }
  }
  return { text, textUnit: shown.unit, ...shown, reading: readIn(spec, text, shown.unit) }
}

/** Whether the text is a number without a unit, so that the field's own unit gives it its meaning. */
export function isBare({ text }: Pick<QuantityField, 'text'>): boolean {
  const number = readNumber(plainText(text))
  return number.ok === true && number.rest === ''
}

/**
 * Whether the text says its unit itself and so means the same in any field. A letter that is left when powers of
 * ten are taken out of a text that was understood can only be a unit.
 */
export function carriesUnit({ text, reading }: Pick<QuantityField, 'text' | 'reading'>): boolean {
  if (reading !== 'waiting' && !reading.ok) return false
  const withoutPowers = text.replaceAll(/\d ?[eE][+-]?\d|[x×*] ?10/g, ' ')
  return /[\p{L}%°"'′]/u.test(withoutPowers)
}

/** What the text field shows: what was typed, or the same quantity in the unit picked since. */
export function shownText(field: QuantityField, spec: FieldSpec): string {
  if (field.unit === field.textUnit || field.reading === 'waiting' || !field.reading.ok) return field.text
  if (statedOtherwise(spec, field.text)) return field.text
  const digits = isAccuracy(spec) ? ACCURACY_DIGITS : CONVERTED_DIGITS
  return String(Number(fromSI(field.reading.si, field.unit, spec.kind).toPrecision(digits)))
}

/** What the field shows, with the unit where the text itself has none. */
export function shownQuantity(field: QuantityField, spec: FieldSpec): string {
  const text = shownText(field, spec).trim()
  return isBare(field) || text !== field.text.trim() ? `${text} ${unitOf(field.unit).symbol}`.trim() : text
}

/** What was made of a text that is more than a number: '45 psi = 310.3 kPa'. Empty where there is nothing to say. */
export function understoodText(field: QuantityField, spec: FieldSpec): string {
  if (field.reading === 'waiting' || !field.reading.ok) return ''
  if (field.unit === field.textUnit || statedOtherwise(spec, field.text)) return field.reading.understood
  return isBare(field) ? '' : `${field.text.trim()} = ${formatIn(field.reading.si, spec.kind, field.unit)}`
}

/** A bare number with its unit behind it, so that it means the same everywhere; any other text as typed. */
export function portableText(field: QuantityField): string {
  return isBare(field) ? `${field.text.trim()} ${field.textUnit}` : field.text
}

/** The same quantity in another unit. A text that has not been understood is read again in that unit. */
export function shownAs(spec: FieldSpec, field: QuantityField, unit: string, picked: boolean): QuantityField {
  if (field.reading !== 'waiting' && field.reading.ok) return { ...field, unit, picked }
  return meantIn(spec, { ...field, picked }, unit)
}

/** The field with this unit as the one in which its text is meant. */
export function meantIn(spec: FieldSpec, field: QuantityField, unit: string): QuantityField {
  return { ...field, unit, textUnit: unit, reading: readIn(spec, field.text, unit) }
}
