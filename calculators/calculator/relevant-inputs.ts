import type { Calculator, InputValue } from './types.ts'

/** The value given for an input, or its default. */
export function valueOf(
  calculator: Calculator,
  values: Readonly<Record<string, InputValue>>,
  id: string,
): InputValue {
  const given = Object.hasOwn(values, id) ? values[id] : undefined
  const input = calculator.inputs[id]
  if (!input) throw new Error(`Calculator ${calculator.id} has no input ${id}`)
  return given ?? input.default
}

function isRelevant(
  calculator: Calculator,
  values: Readonly<Record<string, InputValue>>,
  id: string,
  seen: readonly string[],
): boolean {
  const condition = calculator.inputs[id]?.when
  if (!condition) return true
  if (seen.includes(id)) return false
  const chosen = valueOf(calculator, values, condition.input)
  return (
    condition.oneOf.some((option) => option === chosen) &&
    isRelevant(calculator, values, condition.input, [...seen, id])
  )
}

/**
 * Ids of the inputs that count with these choices, in the order of the declaration. An input whose condition hangs
 * on a choice that does not count itself does not count either.
 * @param values what was given [SI]; what is missing takes its default
 */
export function relevantInputs(
  calculator: Calculator,
  values: Readonly<Record<string, InputValue>>,
): string[] {
  return Object.keys(calculator.inputs).filter((id) => isRelevant(calculator, values, id, []))
}
