import type { Calculator, QuantityInput } from '../../calculators/calculator/types.ts'
import type { KindId, UnitSystem } from '../../calculators/quantity/types.ts'
import { isCustomary, kindOf, unitForSystem } from '../../calculators/quantity/kinds.ts'

/** A text field of the form: an input's value, or how accurately that value is known. */
export interface FieldSpec {
  /** Key in the state and in the address: 'temperature' or 'temperature.accuracy'. */
  readonly id: string
  readonly input: string
  readonly label: string
  readonly symbol: string
  readonly kind: KindId
  /** Unit ids offered. */
  readonly units: readonly string[]
  /** Shown when the unit system has no say. */
  readonly usualUnit: string
  /** An accuracy that is a share of the value unless its text carries a unit. */
  readonly share?: true
  /** The other way to state an accuracy: as a share where it is absolute, absolute where it is a share. */
  readonly other?: { readonly kind: KindId; readonly unit: string }
}

export type FieldSpecs = Readonly<Record<string, FieldSpec>>

/** The kind in which a spread of values is stated: a temperature is known to ± a temperature difference. */
export const spreadOf: Partial<Record<KindId, KindId>> = {
  temperature: 'temperatureDifference',
  gaugePressure: 'pressureDifference',
  absolutePressure: 'pressureDifference',
}

export const isAccuracy = (spec: FieldSpec): boolean => spec.id.endsWith('.accuracy')

export const accuracyField = (input: string): string => `${input}.accuracy`

/** The units a declaration names, or those of its kind. A turn counts an angle: only a declaration can ask for it. */
export function offeredUnits({ kind, units }: Pick<QuantityInput, 'kind' | 'units'>): readonly string[] {
  return units ?? kindOf(kind).units.filter((unit) => unit !== 'turn')
}

/** The field of a quantity: an input, or a column of a table. */
export function quantitySpec(id: string, input: Omit<QuantityInput, 'default' | 'when'>): FieldSpec {
  const units = offeredUnits(input)
  const usualUnit = input.units?.[0] ?? kindOf(input.kind).preferred.si
  return { id, input: id, label: input.label, symbol: input.symbol, kind: input.kind, units, usualUnit }
}

function accuracySpec(id: string, input: QuantityInput): FieldSpec | undefined {
  if (input.accuracy === undefined) return undefined
  const shared = {
    id: accuracyField(id),
    input: id,
    label: `Accuracy of: ${input.label}`,
    symbol: `± ${input.symbol}`,
  }
  const { kind: own, units: ownUnits, usualUnit: ownUnit } = quantitySpec(id, input)
  const kind = spreadOf[own] ?? own
  const units = kind === own ? ownUnits : kindOf(kind).units
  const usualUnit = kind === own ? ownUnit : kindOf(kind).preferred.si
  if ('relative' in input.accuracy) {
    const other = kind === 'ratio' ? {} : { other: { kind, unit: usualUnit } }
    return { ...shared, kind: 'ratio', units: ['%'], usualUnit: '%', share: true, ...other }
  }
  // Where the value itself may be in %, a typed % is a figure of that kind and no share.
  const other = units.includes('%') ? {} : { other: { kind: 'ratio', unit: '%' } as const }
  return { ...shared, kind, units, usualUnit, ...other }
}

/** All text fields of a calculator, by their key. */
export function fieldsOf(calculator: Calculator): FieldSpecs {
  const specs: Record<string, FieldSpec> = {}
  for (const [id, input] of Object.entries(calculator.inputs)) {
    if (input.type !== 'quantity') continue
    specs[id] = quantitySpec(id, input)
    const accuracy = accuracySpec(id, input)
    if (accuracy !== undefined) specs[accuracy.id] = accuracy
  }
  return specs
}

/** The unit shown to a person with this unit system who has not picked one. */
export function unitFor(spec: Pick<FieldSpec, 'kind' | 'units' | 'usualUnit'>, system: UnitSystem): string {
  const unit = unitForSystem(spec.kind, system, spec.usualUnit)
  if (spec.units.includes(unit)) return unit
  // A bore is offered in inches, not in feet; particles are sized in micrometres everywhere.
  const other = isCustomary(unit) && spec.usualUnit !== 'um' ? spec.units.find(isCustomary) : undefined
  return other ?? spec.usualUnit
}
