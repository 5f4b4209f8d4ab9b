import type { CheckResult, SeenGlass, SeenReading } from '../../calculators/checks/types.ts'
import type { CheckOffer, Labels } from './types.ts'

/** A reading: id, value, accuracy, and the stop it rests at. */
type PackedReading = readonly [string, number, number, SeenReading['atStop']?]

/** What a check told, without the labels and sentences that every exercise on the circuit shares. */
export type PackedResult = readonly [
  readings: readonly PackedReading[],
  glasses: readonly Omit<SeenGlass, 'label'>[],
  felt: readonly (readonly [string, boolean])[],
  /** Left out where the inspection found nothing. */
  says?: readonly string[],
]

/** More digits than any instrument of the plant bears. */
const DIGITS = 6

const shortened = (value: number): number => Number(value.toPrecision(DIGITS))

/** A result in few characters. */
export function packResult(
  { readings, glasses, felt, says }: CheckResult,
  otherwise: string | undefined,
): PackedResult {
  const packed = [
    readings.map(({ id, value, accuracy, atStop }): PackedReading => {
      const numbers = [id, shortened(value), shortened(accuracy)] as const
      return atStop === undefined ? numbers : [...numbers, atStop]
    }),
    glasses.map(({ label: _, ...glass }) => ({
      ...glass,
      fill: shortened(glass.fill),
      gas: shortened(glass.gas),
    })),
    felt.map(({ part, passes }) => [part, passes] as const),
  ] as const
  return says.length === 0 || (says.length === 1 && says[0] === otherwise) ? packed : [...packed, says]
}

/** The result again, with the labels of its circuit and the sentences of its check. */
export function unpackResult(
  packed: PackedResult,
  labels: Labels,
  check: CheckOffer | undefined,
): CheckResult {
  const [readings, glasses, felt, says] = packed
  const labelOf = (id: string): string => labels[id]?.label ?? id
  return {
    readings: readings.map(([id, value, accuracy, atStop]) => ({
      id,
      label: labelOf(id),
      kind: labels[id]?.kind ?? 'ratio',
      value,
      accuracy,
      ...(atStop === undefined ? {} : { atStop }),
    })),
    glasses: glasses.map((glass) => ({ ...glass, label: labelOf(glass.part) })),
    felt: felt.map(([part, passes]) => ({ part, label: labelOf(part), passes })),
    says: says ?? (check?.otherwise === undefined ? [] : [check.otherwise]),
  }
}
