import { unitForSystem } from '../../calculators/quantity/kinds.ts'
import { readQuantity } from '../../calculators/quantity/read.ts'
import type { KindId, QuantityReading, UnitSystem } from '../../calculators/quantity/types.ts'
import { unitOf } from '../../calculators/quantity/units.ts'

/** The unit in which a plain number is meant, by the person's unit system and the unit of the answer. */
export function unitFor(
  kind: KindId,
  system: UnitSystem,
  answerUnit: string,
): { id: string; symbol: string } | undefined {
  const id = unitForSystem(kind, system, answerUnit)
  const { symbol } = unitOf(id)
  return symbol === '' ? undefined : { id, symbol }
}

/** A figure that a person typed as the answer to a question. */
export function enteredFigure(
  text: string,
  kind: KindId,
  system: UnitSystem,
  answerUnit: string,
): Promise<QuantityReading> {
  return readQuantity(text, kind, unitForSystem(kind, system, answerUnit))
}
