import type { OperatingState } from '../circuit/types.ts'
import { operatingStates } from '../circuit/types.ts'
import { measureOf } from './items.ts'
import { feltOf, lookOf, meanOf, nodesOf, predictFault, predictHealth, type Prediction } from './predict.ts'
import type { Knowledge, KnownCheck } from './types.ts'

/** Summed squares of deviations below which two sets of readings are not told apart. Common practice. */
const ALIKE = 6

/** Share of a cause's noticeable severities that another must be able to show too. Common practice. */
const MOSTLY = 0.5

interface Row {
  readonly readings: readonly number[]
  readonly variances: readonly number[]
  readonly looks: readonly string[]
}

function rowOf(knowledge: Knowledge, prediction: Prediction): Row {
  const { signatures } = knowledge
  const each = <Value>(of: (state: OperatingState) => Value[]): Value[] => operatingStates.flatMap(of)
  const readings = each((state) =>
    signatures.states[state].readings.map((_, place) => meanOf(prediction, state, place)),
  )
  const measures = each((state) =>
    signatures.states[state].readings.map((_, place) => measureOf(knowledge, state, place)),
  )
  const looks = each((state) => [
    ...signatures.glasses.map((_, place) => lookOf(prediction, state, place)),
    ...signatures.felt.map((_, place) => String(feltOf(prediction, state, place) >= 0.5)),
  ])
  return {
    readings,
    variances: measures.map(
      ({ instrument, spread }, place) => instrument ** 2 + (spread * (readings[place] ?? 0)) ** 2,
    ),
    looks,
  }
}

/** Whether nobody tells one from the other by instruments and eyes. */
function alike(one: Row, other: Row): boolean {
  if (one.looks.some((look, place) => look !== other.looks[place])) return false
  let squares = 0
  for (let place = 0; place < one.readings.length; place++) {
    const off = (one.readings[place] ?? 0) - (other.readings[place] ?? 0)
    squares += (off * off) / (one.variances[place] ?? 1)
    if (squares >= ALIKE) return false
  }
  return true
}

const known = new WeakMap<Knowledge['signatures'], string[][]>()

/**
 * Groups of causes that no reading and no glass in any state tells apart: at most of the severities at which one is
 * noticed, the other can show the same, and the other way round.
 * @param knowledge of the circuit
 * @returns groups of two and more ids of faults
 * @source common practice (what counts as alike)
 */
export function twinsOf(knowledge: Knowledge): string[][] {
  const { signatures } = knowledge
  const before = known.get(signatures)
  if (before) return before
  const health = rowOf(knowledge, predictHealth(signatures))
  const ids = Object.keys(signatures.faults)
  const rows = ids.map((fault) =>
    nodesOf(signatures.severities.length, 2).map((node) =>
      rowOf(knowledge, predictFault(signatures, fault, node)),
    ),
  )
  const noticed = rows.map((all) => all.filter((row) => !alike(row, health)))
  const shows = (one: number, other: number): boolean => {
    const seen = noticed[one] ?? []
    const same = seen.filter((row) => rows[other]?.some((its) => alike(row, its)))
    return seen.length > 0 && same.length >= MOSTLY * seen.length
  }
  const group = ids.map((_, place) => place)
  ids.forEach((_, one) => {
    for (let other = one + 1; other < ids.length; other++)
      if (group[one] !== group[other] && shows(one, other) && shows(other, one)) {
        const from = group[other]
        group.forEach((own, place) => {
          if (own === from) group[place] = group[one] ?? own
        })
      }
  })
  const groups = [...Map.groupBy(ids, (_, place) => group[place]).values()].filter((all) => all.length > 1)
  known.set(signatures, groups)
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
