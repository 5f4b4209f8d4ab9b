import type { KindId } from '../quantity/types.ts'
import type { CircuitState, GlassView, Reading } from './types.ts'

/**
 * What a changed look of a glass counts, in accuracies of an instrument: nobody who looks into it overlooks it, but
 * a reading that has gone far from health says more.
 */
const GLASS_WEIGHT = 12

/** A reading that has moved by less than the accuracy of its instrument has told nobody anything. */
const LEAST_WEIGHT = 1

/** Stands in for an accuracy that is nil: so small a share of the reading counts as one. */
const LEAST_ACCURACY_SHARE = 1e-3

export interface ReadingChange {
  readonly of: 'reading'
  readonly id: string
  readonly label: string
  readonly kind: KindId
  /** [SI] */
  readonly before: number
  /** [SI] */
  readonly now: number
  /** What the instrument may be off by. [SI] */
  readonly accuracy: number
  /** How many more of its kind (the other cylinders' exhausts) changed, none of them by more. */
  readonly alike: number
  /** Change over the accuracy of the instrument. */
  readonly weight: number
}

export interface GlassChange {
  readonly of: 'glass'
  /** Id of the glass. */
  readonly id: string
  readonly before: string
  readonly now: string
  readonly weight: number
}

export type Change = ReadingChange | GlassChange

/**
 * What the instruments and the glasses of a circuit show otherwise than in health, largest first. A reading counts
 * by its change over its accuracy; one that moved by less is left out. Of readings that are numbered ('exhaust-1',
 * 'exhaust-2') only the most changed stands, with the number of the others. A reading that one of the two states
 * does not have (the exhausts while the engine stands) is no change.
 * @param health the circuit without faults, under the same conditions
 * @param now the circuit as it is
 */
export function changesAgainst(health: CircuitState, now: CircuitState): Change[] {
  const readings = now.readings.flatMap((reading) => readingChange(health, reading))
  const glasses = now.glasses.flatMap((glass) => glassChange(health, glass))
  return [...mostOfEachFamily(readings), ...glasses].sort((a, b) => b.weight - a.weight)
}

function readingChange(health: CircuitState, now: Reading): ReadingChange[] {
  const before = health.readings.find((reading) => reading.id === now.id)
  if (before === undefined) return []
  const size = Math.max(Math.abs(before.value), Math.abs(now.value))
  const accuracy = Math.max(before.accuracy, LEAST_ACCURACY_SHARE * size)
  const weight = accuracy > 0 ? Math.abs(now.value - before.value) / accuracy : 0
  if (!(weight >= LEAST_WEIGHT)) return []
  const { id, label, kind } = now
  return [
    { of: 'reading', id, label, kind, before: before.value, now: now.value, accuracy, alike: 0, weight },
  ]
}

function glassChange(health: CircuitState, now: GlassView): GlassChange[] {
  const before = health.glasses.find((glass) => glass.part === now.part)
  if (before === undefined || before.words === now.words) return []
  return [{ of: 'glass', id: now.part, before: before.words, now: now.words, weight: GLASS_WEIGHT }]
}

const familyOf = (id: string): string => id.replace(/-\d+$/, '')

function mostOfEachFamily(changes: readonly ReadingChange[]): ReadingChange[] {
  const families = new Map<string, ReadingChange[]>()
  for (const change of changes) {
    const family = familyOf(change.id)
    families.set(family, [...(families.get(family) ?? []), change])
  }
  return [...families.values()].flatMap((members) => {
    const [most] = members.toSorted((a, b) => b.weight - a.weight)
    return most === undefined ? [] : [{ ...most, alike: members.length - 1 }]
  })
}
