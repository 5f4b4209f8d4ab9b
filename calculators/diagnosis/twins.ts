import { operatingStates } from '../circuit/types.ts'
import { measureOf } from './items.ts'
import { feltOf, lookOf, meanOf, nodesOf, predictFault, predictHealth, type Prediction } from './predict.ts'
import type { Knowledge, KnownCheck } from './types.ts'

/** Summed squares of deviations below which two sets of readings are not told apart. Common practice. */
const ALIKE = 6

/** Share of a cause's noticeable severities that another must be able to show too. Common practice. */
const MOSTLY = 0.5

/** What one shows in all states. */
interface Row {
  readonly readings: Float64Array
  /** Of instruments and among sound plants. */
  readonly variances: Float64Array
  /** A number for all that eyes and hands tell together; the same for the same. */
  readonly looks: number
}

/** The measures of all readings of all states. */
const measuresOf = (knowledge: Knowledge) =>
  operatingStates.flatMap((state) =>
    knowledge.signatures.states[state].readings.map((_, place) => ({
      state,
      place,
      ...measureOf(knowledge, state, place),
    })),
  )

function rowOf(
  { glasses, felt }: Knowledge['signatures'],
  measures: ReturnType<typeof measuresOf>,
  prediction: Prediction,
  numbers: Map<string, number>,
): Row {
  const readings = Float64Array.from(measures, ({ state, place }) => meanOf(prediction, state, place))
  const looks = operatingStates
    .flatMap((state) => [
      ...glasses.map((_, place) => lookOf(prediction, state, place)),
      ...felt.map((_, place) => (feltOf(prediction, state, place) >= 0.5 ? 'passes' : 'still')),
    ])
    .join(' ')
  const number = numbers.get(looks) ?? numbers.size
  numbers.set(looks, number)
  return {
    readings,
    variances: readings.map((value, place) => {
      const { instrument = 0, spread = 0 } = measures[place] ?? {}
      return instrument * instrument + (spread * value) ** 2
    }),
    looks: number,
  }
}

/** Whether nobody tells one from the other by instruments and eyes. */
function alike(one: Row, other: Row): boolean {
  if (one.looks !== other.looks) return false
  let squares = 0
  for (let place = 0; place < one.readings.length; place++) {
    const off = (one.readings[place] as number) - (other.readings[place] as number)
    squares += (off * off) / (one.variances[place] as number)
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
  const measures = measuresOf(knowledge)
  const numbers = new Map<string, number>()
  const health = rowOf(signatures, measures, predictHealth(signatures), numbers)
  const ids = Object.keys(signatures.faults)
  const rows = ids.map((fault) =>
    nodesOf(signatures.severities.length, 2).map((node) =>
      rowOf(signatures, measures, predictFault(signatures, fault, node), numbers),
    ),
  )
  const noticed = rows.map((all) => all.filter((row) => !alike(row, health)))
  const shows = (one: number, other: number): boolean => {
    const seen = noticed[one] ?? []
    const same = seen.filter((row) => rows[other]?.some((its) => alike(row, its)))
    return seen.length > 0 && same.length >= MOSTLY * seen.length
  }
  const mutual = ids.map((_, one) => ids.map((__, other) => one !== other && shows(one, other)))
  const alikes = (one: number, other: number) =>
    mutual[one]?.[other] === true && mutual[other]?.[one] === true
  // Each joins the first group of which it is like every one: that it is like one of them is not enough.
  const places: number[][] = []
  ids.forEach((_, place) => {
    const group = places.find((all) => all.every((other) => alikes(place, other)))
    if (group) group.push(place)
    else places.push([place])
  })
  const groups = places.filter((all) => all.length > 1).map((all) => all.map((place) => ids[place] ?? ''))
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
