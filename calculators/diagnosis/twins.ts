import { operatingStates, type OperatingState } from '../circuit/types.ts'
import { alike, cliquesOf, mutuallyShown, rowsIn, type Showing } from './alike.ts'
import { nodesOf, predictFault, predictHealth } from './predict.ts'
import type { Knowledge, KnownCheck } from './types.ts'

const known = new WeakMap<Knowledge['signatures'], Map<string, readonly string[][]>>()

/**
 * Groups of causes that no reading and no glass tells apart: at most of the severities at which one is noticed, the
 * other can show the same, and the other way round.
 * @param knowledge of the circuit
 * @param states in which somebody looks; all of them where none are given
 * @returns groups of two and more ids of faults
 * @source common practice (what counts as alike)
 */
export function twinsOf(
  knowledge: Knowledge,
  states: readonly OperatingState[] = operatingStates,
): readonly string[][] {
  const { signatures } = knowledge
  const all = known.get(signatures) ?? new Map<string, readonly string[][]>()
  known.set(signatures, all)
  const key = operatingStates.filter((state) => states.includes(state)).join(' ')
  const before = all.get(key)
  if (before) return before
  const rowOf = rowsIn(knowledge, states)
  const health = rowOf(predictHealth(signatures))
  const ids = Object.keys(signatures.faults)
  const nodes = nodesOf(signatures.severities.length, 2)
  const showings = ids.map((fault): Showing => {
    const rows = nodes.map((node) => rowOf(predictFault(signatures, fault, node)))
    return {
      compared: rows.filter((row) => !alike(row, health)).map((row) => ({ row, weight: 1 })),
      all: rows,
    }
  })
  const groups = cliquesOf([...ids.keys()], (one, other) =>
    mutuallyShown(showings[one] as Showing, showings[other] as Showing),
  )
    .filter((group) => group.length > 1)
    .map((group) => group.map((place) => ids[place] ?? ''))
  all.set(key, groups)
  return groups
}

/**
 * Checks that tell the causes of a group apart, because they find one and not another.
 * @param knowledge of the circuit
 * @param group ids of faults
 */
export function separating({ checks, signatures }: Knowledge, group: readonly string[]): KnownCheck[] {
  return checks.filter(({ circuits, finds }) => {
    if (!circuits.includes(signatures.circuit)) return false
    const marks = group.map((fault) => finds.findIndex(({ faults }) => faults.includes(fault)))
    return new Set(marks).size > 1
  })
}
