import type { OperatingState } from '../circuit/types.ts'
import { nodesOf, predictFault, predictHealth, type Prediction } from './predict.ts'
import type { Signatures } from './types.ts'

/** The rows of one cause, one behind the other; those of each cylinder together, where it is a single cylinder's. */
export interface CauseRows {
  readonly fault: string
  readonly from: number
  readonly count: number
  /** 1 where it is no single cylinder's, or where no cylinder's reading was taken. */
  readonly cylinders: number
}

/** Health, and every cause at every severity and cylinder, a row each. */
export interface Rows {
  /** Health first. */
  readonly predictions: readonly Prediction[]
  readonly causes: readonly CauseRows[]
}

/** A cause of a pair, at each tenth of its severities. */
export interface Partner {
  /** Its own among all causes and cylinders of the circuit. */
  readonly number: number
  readonly fault: string
  readonly predictions: readonly Prediction[]
}

/** Parts of each step between two severities. */
const PARTS = 4
const PARTS_AT_EACH_CYLINDER = 2
const PARTS_OF_PAIR = 1

/** Which place shows what this place would, were the fault at another cylinder than that of the data. */
function swapCylinders({ states }: Signatures, one: number, other: number) {
  const places = new Map<OperatingState, readonly [number, number]>()
  return (state: OperatingState, place: number): number => {
    let pair = places.get(state)
    if (!pair) {
      const find = (cylinder: number) =>
        states[state].readings.findIndex(({ id }) => id === `exhaust-${cylinder}`)
      pair = [find(one), find(other)]
      places.set(state, pair)
    }
    const [first, second] = pair
    return place === first ? second : place === second ? first : place
  }
}

function makeRows(signatures: Signatures, cylindersTold: boolean): Rows {
  const predictions = [predictHealth(signatures)]
  const count = signatures.severities.length
  const causes = Object.keys(signatures.faults).map((fault): CauseRows => {
    const from = predictions.length
    const own = signatures.atCylinder[fault]
    if (own === undefined || !cylindersTold) {
      for (const node of nodesOf(count, PARTS)) predictions.push(predictFault(signatures, fault, node))
      return { fault, from, count: predictions.length - from, cylinders: 1 }
    }
    for (let cylinder = 1; cylinder <= signatures.cylinders; cylinder++) {
      const swap = swapCylinders(signatures, own, cylinder)
      for (const node of nodesOf(count, PARTS_AT_EACH_CYLINDER))
        predictions.push(predictFault(signatures, fault, node, swap))
    }
    return { fault, from, count: predictions.length - from, cylinders: signatures.cylinders }
  })
  return { predictions, causes }
}

function makePartner(signatures: Signatures, fault: string, cylinder: number | undefined): Partner {
  const own = signatures.atCylinder[fault]
  const swap =
    own !== undefined && cylinder !== undefined ? swapCylinders(signatures, own, cylinder) : undefined
  return {
    number: Object.keys(signatures.faults).indexOf(fault) * (signatures.cylinders + 1) + (cylinder ?? 0),
    fault,
    predictions: nodesOf(signatures.severities.length, PARTS_OF_PAIR).map((node) =>
      predictFault(signatures, fault, node, swap),
    ),
  }
}

const rows = new WeakMap<Signatures, Map<boolean, Rows>>()

/**
 * All single causes of a circuit.
 * @param signatures of the circuit
 * @param cylindersTold whether the reading of any cylinder was taken, so that it matters at which one a fault sits
 * @returns the rows; the same object each time
 */
export function rowsOf(signatures: Signatures, cylindersTold: boolean): Rows {
  const known = rows.get(signatures) ?? new Map<boolean, Rows>()
  rows.set(signatures, known)
  const made = known.get(cylindersTold) ?? makeRows(signatures, cylindersTold)
  known.set(cylindersTold, made)
  return made
}

const partners = new WeakMap<Signatures, Map<string, Partner>>()

/**
 * A cause as one of two.
 * @param signatures of the circuit
 * @param fault its id
 * @param cylinder at which it sits most likely
 * @returns the partner; the same object each time
 */
export function partnerOf(signatures: Signatures, fault: string, cylinder: number | undefined): Partner {
  const known = partners.get(signatures) ?? new Map<string, Partner>()
  partners.set(signatures, known)
  const key = `${fault} ${cylinder ?? ''}`
  const made = known.get(key) ?? makePartner(signatures, fault, cylinder)
  known.set(key, made)
  return made
}
