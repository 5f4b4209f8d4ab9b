import type { OperatingState } from '../circuit/types.ts'
import { measureOf } from './items.ts'
import { feltOf, lookOf, meanOf, type Prediction } from './predict.ts'
import type { Knowledge } from './types.ts'

/** Summed squares of deviations below which two sets of readings are not told apart. Common practice. */
const ALIKE = 6

/** Share of a cause's noticeable severities that another must be able to show too. Common practice. */
const MOSTLY = 0.5

/** What one shows in the states that are compared. */
export interface Row {
  readonly readings: Float64Array
  /** Of instruments and among sound plants. */
  readonly variances: Float64Array
  /** A number for all that eyes and hands tell together; the same for the same. */
  readonly looks: number
}

/** The measures of all readings of the states. */
const measuresOf = (knowledge: Knowledge, states: readonly OperatingState[]) =>
  states.flatMap((state) =>
    knowledge.signatures.states[state].readings.map((_, place) => ({
      state,
      place,
      ...measureOf(knowledge, state, place),
    })),
  )

const known = new WeakMap<Knowledge['signatures'], Map<string, (prediction: Prediction) => Row>>()

/**
 * Makes rows of what causes let one expect in some states; the same row for the same prediction.
 * @param knowledge of the circuit
 * @param states that are compared
 */
export function rowsIn(
  knowledge: Knowledge,
  states: readonly OperatingState[],
): (prediction: Prediction) => Row {
  const ofSignatures = known.get(knowledge.signatures) ?? new Map<string, (prediction: Prediction) => Row>()
  known.set(knowledge.signatures, ofSignatures)
  const key = states.join(' ')
  const rowOf = ofSignatures.get(key) ?? makeRowsIn(knowledge, states)
  ofSignatures.set(key, rowOf)
  return rowOf
}

function makeRowsIn(
  knowledge: Knowledge,
  states: readonly OperatingState[],
): (prediction: Prediction) => Row {
  const { glasses, felt } = knowledge.signatures
  const measures = measuresOf(knowledge, states)
  const numbers = new Map<string, number>()
  const made = new WeakMap<Prediction, Row>()
  const looksOf = (prediction: Prediction): number => {
    const looks = states
      .flatMap((state) => [
        ...glasses.map((_, place) => lookOf(prediction, state, place)),
        ...felt.map((_, place) => (feltOf(prediction, state, place) >= 0.5 ? 'passes' : 'still')),
      ])
      .join(' ')
    const number = numbers.get(looks) ?? numbers.size
    numbers.set(looks, number)
    return number
  }
  return (prediction) => {
    const before = made.get(prediction)
    if (before) return before
    const readings = Float64Array.from(measures, ({ state, place }) => meanOf(prediction, state, place))
    const variances = readings.map((value, place) => {
      const { instrument = 0, spread = 0 } = measures[place] ?? {}
      return instrument * instrument + (spread * value) ** 2
    })
    const row = { readings, variances, looks: looksOf(prediction) }
    made.set(prediction, row)
    return row
  }
}

/** Whether nobody tells one from the other by instruments and eyes. */
export function alike(one: Row, other: Row): boolean {
  if (one.looks !== other.looks) return false
  let squares = 0
  for (let place = 0; place < one.readings.length; place++) {
    const off = (one.readings[place] as number) - (other.readings[place] as number)
    squares += (off * off) / (one.variances[place] as number)
    if (squares >= ALIKE) return false
  }
  return true
}

/** What a cause may show, and how much each of it weighs; of what is compared, only what stands for it or is noticed. */
export interface Showing {
  readonly compared: readonly { readonly row: Row; readonly weight: number }[]
  readonly all: readonly Row[]
}

/** Whether the other can show most of what is compared of one. */
export function mostlyShown({ compared }: Showing, other: Showing): boolean {
  let [same, whole] = [0, 0]
  for (const { row, weight } of compared) {
    whole += weight
    if (other.all.some((its) => alike(row, its))) same += weight
  }
  return whole > 0 && same >= MOSTLY * whole
}

/** Whether each can show most of what is compared of the other. */
export const mutuallyShown = (one: Showing, other: Showing): boolean =>
  mostlyShown(one, other) && mostlyShown(other, one)

/** Each joins the first group of which it is like every one: that it is like one of them is not enough. */
export function cliquesOf<Cause>(
  causes: readonly Cause[],
  alikes: (one: Cause, other: Cause) => boolean,
): readonly (readonly Cause[])[] {
  const groups: Cause[][] = []
  for (const cause of causes) {
    const group = groups.find((all) => all.every((other) => alikes(cause, other)))
    if (group) group.push(cause)
    else groups.push([cause])
  }
  return groups
}
