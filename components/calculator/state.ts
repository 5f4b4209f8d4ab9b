import type { Calculator } from '../../calculators/calculator/types.ts'
import type { QuantityReading, UnitSystem } from '../../calculators/quantity/types.ts'
import { readPlain } from '../../calculators/quantity/read.ts'
import { formatIn } from '../../calculators/quantity/format.ts'
import { plainText, readNumber } from '../../calculators/quantity/number.ts'
import { findUnit } from '../../calculators/quantity/spelling.ts'
import { fromSI, unitOf } from '../../calculators/quantity/units.ts'
import { fieldsOf, unitFor } from './fields.ts'
import type { FieldSpec, FieldSpecs } from './fields.ts'

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

export interface FormState {
  readonly system: UnitSystem
  readonly fields: Readonly<Record<string, QuantityField>>
  readonly choices: Readonly<Record<string, string>>
  /** Only the units that the person picked for results. */
  readonly outputUnits: Readonly<Record<string, string>>
}

/** Value of each field and choice as a text with its unit: the form before anybody touches it. */
export type Starting = Readonly<Record<string, string>>

export type Action =
  | { readonly type: 'type'; readonly field: string; readonly text: string }
  | {
      readonly type: 'read'
      readonly field: string
      readonly of: QuantityField
      readonly reading: QuantityReading
    }
  | { readonly type: 'pickUnit'; readonly field: string; readonly unit: string }
  | { readonly type: 'choose'; readonly input: string; readonly value: string }
  | { readonly type: 'pickOutputUnit'; readonly output: string; readonly unit: string }
  | { readonly type: 'follow'; readonly system: UnitSystem }
  | { readonly type: 'restore'; readonly state: FormState }

/** Enough digits that a converted number hides nothing a gauge or a laboratory can tell. */
const CONVERTED_DIGITS = 6

function read(spec: FieldSpec, text: string, unit: string): QuantityField['reading'] {
  const reading = readPlain(text, spec.kind, unit)
  return reading.ok === 'expression' ? 'waiting' : reading
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
      return { text: bare, textUnit: unit, ...shown, reading: read(spec, bare, unit) }
    }
  }
  return { text, textUnit: shown.unit, ...shown, reading: read(spec, text, shown.unit) }
}

/** Whether the text is a number without a unit, so that the field's own unit gives it its meaning. */
export function isBare({ text }: Pick<QuantityField, 'text'>): boolean {
  const number = readNumber(plainText(text))
  return number.ok === true && number.rest === ''
}

export function startState(calculator: Calculator, starting: Starting, system: UnitSystem): FormState {
  const specs = fieldsOf(calculator)
  const fields = Object.fromEntries(
    Object.values(specs).map((spec) => [
      spec.id,
      fieldFrom(spec, starting[spec.id] ?? '', { unit: unitFor(spec, system), picked: false }),
    ]),
  )
  const choices = Object.fromEntries(
    Object.entries(calculator.inputs).flatMap(([id, input]) =>
      input.type === 'choice' ? [[id, starting[id] ?? input.default]] : [],
    ),
  )
  return { system, fields, choices, outputUnits: {} }
}

/** What the text field shows: what was typed, or the same quantity in the unit picked since. */
export function shownText(field: QuantityField, spec: FieldSpec): string {
  if (field.unit === field.textUnit || field.reading === 'waiting' || !field.reading.ok) return field.text
  return String(Number(fromSI(field.reading.si, field.unit, spec.kind).toPrecision(CONVERTED_DIGITS)))
}

/** What the field shows, with the unit where the text itself has none. */
export function shownQuantity(field: QuantityField, spec: FieldSpec): string {
  const text = shownText(field, spec).trim()
  return isBare(field) || text !== field.text.trim() ? `${text} ${unitOf(field.unit).symbol}`.trim() : text
}

/** What was made of a text that is more than a number: '45 psi = 310.3 kPa'. Empty where there is nothing to say. */
export function understoodText(field: QuantityField, spec: FieldSpec): string {
  if (field.reading === 'waiting' || !field.reading.ok) return ''
  if (field.unit === field.textUnit) return field.reading.understood
  return isBare(field) ? '' : `${field.text.trim()} = ${formatIn(field.reading.si, spec.kind, field.unit)}`
}

/** A bare number with its unit behind it, so that it means the same everywhere; any other text as typed. */
export function portableText(field: QuantityField): string {
  return isBare(field) ? `${field.text.trim()} ${field.textUnit}` : field.text
}

/** The same quantity in another unit. A text that has not been understood is read again in that unit. */
function show(spec: FieldSpec, field: QuantityField, unit: string, picked: boolean): QuantityField {
  if (field.reading !== 'waiting' && field.reading.ok) return { ...field, unit, picked }
  return meantIn(spec, { ...field, picked }, unit)
}

/** The field with this unit as the one in which its text is meant. */
export function meantIn(spec: FieldSpec, field: QuantityField, unit: string): QuantityField {
  return { ...field, unit, textUnit: unit, reading: read(spec, field.text, unit) }
}

function withField(state: FormState, id: string, change: (field: QuantityField) => QuantityField): FormState {
  const field = state.fields[id]
  return field === undefined ? state : { ...state, fields: { ...state.fields, [id]: change(field) } }
}

export function apply(specs: FieldSpecs, state: FormState, action: Action): FormState {
  const specOf = (id: string): FieldSpec => {
    const spec = specs[id]
    if (spec === undefined) throw new Error(`No field '${id}' in this calculator`)
    return spec
  }
  switch (action.type) {
    case 'type':
      return withField(state, action.field, (field) => ({
        ...field,
        text: action.text,
        textUnit: field.unit,
        reading: read(specOf(action.field), action.text, field.unit),
      }))
    case 'read':
      // An answer to a text that has been overtyped since is dropped.
      return withField(state, action.field, (field) =>
        field.text === action.of.text && field.textUnit === action.of.textUnit
          ? { ...field, reading: action.reading }
          : field,
      )
    case 'pickUnit':
      return withField(state, action.field, (field) => show(specOf(action.field), field, action.unit, true))
    case 'choose':
      return { ...state, choices: { ...state.choices, [action.input]: action.value } }
    case 'pickOutputUnit':
      return { ...state, outputUnits: { ...state.outputUnits, [action.output]: action.unit } }
    case 'follow':
      return follow(specs, state, action.system)
    case 'restore':
      return follow(specs, action.state, state.system)
  }
}

function follow(specs: FieldSpecs, state: FormState, system: UnitSystem): FormState {
  const fields = Object.fromEntries(
    Object.values(specs).flatMap((spec) => {
      const field = state.fields[spec.id]
      if (field === undefined) return []
      return [[spec.id, field.picked ? field : show(spec, field, unitFor(spec, system), false)]]
    }),
  )
  return { ...state, system, fields }
}
