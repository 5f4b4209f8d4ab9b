import type { QuantityResult } from '../../calculators/calculator/run.ts'
import type { QuantityOutput, Step } from '../../calculators/calculator/types.ts'
import { formatIn, formatWithUncertainty } from '../../calculators/quantity/format.ts'
import { kindOf } from '../../calculators/quantity/kinds.ts'
import type { KindId, UnitSystem } from '../../calculators/quantity/types.ts'
import { offeredUnits, unitFor } from './fields.ts'
import type { FormState } from './state.ts'

/** Steps are there to be recomputed by hand, which four digits would not allow. */
const STEP_DIGITS = 6

/** The unit in which a result is shown: the one picked, or the one of the person's unit system. */
export function outputUnit(id: string, output: QuantityOutput, state: FormState): string {
  const units = offeredUnits(output)
  const usualUnit = output.units?.[0] ?? kindOf(output.kind).preferred.si
  return state.outputUnits[id] ?? unitFor({ kind: output.kind, units, usualUnit }, state.system)
}

/** A quantity with its ±, or with '± …' while that is still being worked out. */
export function valueText(
  {
    value,
    uncertainty,
    uncertaintyPending,
  }: Pick<QuantityResult, 'value' | 'uncertainty' | 'uncertaintyPending'>,
  kind: KindId,
  unit: string,
): string {
  if (uncertaintyPending !== undefined)
    return `${formatIn(value, kind, unit, { uncertainty: uncertaintyPending })} ± …`
  return formatWithUncertainty(value, uncertainty, kind, unit)
}

export function stepUnit(step: Step, system: UnitSystem): string {
  const { units, preferred } = kindOf(step.kind)
  return step.unit ?? unitFor({ kind: step.kind, units, usualUnit: preferred.si }, system)
}

export function stepText(step: Step, system: UnitSystem): string {
  return formatIn(step.value, step.kind, stepUnit(step, system), { digits: STEP_DIGITS })
}
