import type { QuantityResult } from '../../calculators/calculator/run.ts'
import type { QuantityOutput, Step } from '../../calculators/calculator/types.ts'
import { formatIn, formatWithUncertainty } from '../../calculators/quantity/format.ts'
import { isCustomary, kindOf } from '../../calculators/quantity/kinds.ts'
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

/** Below or from these, in SI, the usual unit of a kind leaves a clumsy number: 0.0064 m of travel, 12000 cm² of tank. */
const SHORT = 0.1
const WIDE = 0.1

function unitBySize({ kind, value }: Step, customary: boolean): string | undefined {
  const size = Math.abs(value)
  if (kind === 'length' && size > 0 && size < SHORT) return customary ? 'in' : 'mm'
  if (kind === 'area' && size >= WIDE) return customary ? 'ft2' : 'm2'
  return undefined
}

export function stepUnit(step: Step, system: UnitSystem): string {
  const { units, preferred } = kindOf(step.kind)
  const usual = unitFor({ kind: step.kind, units, usualUnit: preferred.si }, system)
  return step.unit ?? unitBySize(step, isCustomary(usual)) ?? usual
}

export function stepText(step: Step, system: UnitSystem): string {
  return formatIn(step.value, step.kind, stepUnit(step, system), { digits: STEP_DIGITS })
}
