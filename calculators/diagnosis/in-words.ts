import type { OperatingState } from '../circuit/types.ts'
import { normalTail } from '../statistics/normal.ts'
import { deviationOf, meanOf, nodesOf, predictFault, predictHealth, type Prediction } from './predict.ts'
import type { Signatures } from './types.ts'

/** What a person says of a gauge without its figure. */
export const readingWords = {
  lower: 'Lower than usual.',
  usual: 'As usual.',
  higher: 'Higher than usual.',
} as const

/** What a person says of the exhausts of all cylinders without their figures. */
export const exhaustWords = {
  alike: 'None stands off more than always.',
  hotter: 'One is hotter than the others.',
  colder: 'One is colder than the others.',
} as const

/** How likely less, the same and more is told. */
type Shares = readonly [less: number, same: number, more: number]

/** How far a change goes and how large the doubt about it is. [SI] */
interface Change {
  readonly down: number
  readonly up: number
  readonly deviation: number
}

/** So many deviations off, a person calls it another value. Common practice. */
const CALLED_OTHER = 2
/** Of many that are compared with each other some are always a little off. */
const ONE_CALLED_OTHER = 3

function sharesOf({ down, up, deviation }: Change, called: number, misread: number): Shares {
  const seen = (change: number): number => normalTail(called - change / deviation)
  const [less, more] = [seen(down), seen(up)]
  const both = less * more
  const plain = [less - both / 2, (1 - less) * (1 - more), more - both / 2] as const
  const slip = (share: number): number => misread + (1 - 3 * misread) * share
  return [slip(plain[0]), slip(plain[1]), slip(plain[2])]
}

/** Two causes: nothing is seen where neither shows anything, and else what either shows. */
function togetherOf(one: Shares, other: Shares, healthy: Shares): Shares {
  const same = Math.min(1, (one[1] * other[1]) / healthy[1])
  const [less, more] = [one[0] + other[0], one[2] + other[2]]
  const rest = (1 - same) / (less + more)
  return [less * rest, same, more * rest]
}

function marginalised(
  signatures: Signatures,
  changeOf: (prediction: Prediction) => Change,
  called: number,
  misread: number,
): (faults: readonly string[]) => Shares {
  const nodes = nodesOf(signatures.severities.length, 1)
  const known = new Map<string, Shares>()
  const healthy = sharesOf(changeOf(predictHealth(signatures)), called, misread)
  const ofOne = (fault: string): Shares => {
    const before = known.get(fault)
    if (before) return before
    const all = nodes.map((node) =>
      sharesOf(changeOf(predictFault(signatures, fault, node)), called, misread),
    )
    const mean = (place: 0 | 1 | 2): number =>
      all.reduce((sum, shares) => sum + shares[place], 0) / all.length
    const made: Shares = [mean(0), mean(1), mean(2)]
    known.set(fault, made)
    return made
  }
  return ([one, other]) => {
    if (one === undefined) return healthy
    return other === undefined ? ofOne(one) : togetherOf(ofOne(one), ofOne(other), healthy)
  }
}

/** Instrument and sound plants. */
type Measure = Parameters<typeof deviationOf>[0]

/**
 * How likely each word for a gauge is, by the model: against what it shows in health in the same state.
 * @param signatures of the circuit
 * @param state in which it was read
 * @param place of the reading among those of the state
 * @param measure of the instrument
 * @param misread share of readings that are told wrongly
 * @returns for causes together, none for health, the shares of lower, usual and higher, each with its severities evenly
 * @source common practice (from where on a reading is called another one)
 */
export function readingInWords(
  signatures: Signatures,
  state: OperatingState,
  place: number,
  measure: Measure,
  misread: number,
): (faults: readonly string[]) => Shares {
  const usual = meanOf(predictHealth(signatures), state, place)
  const deviation = deviationOf(measure, usual)
  const changeOf = (prediction: Prediction): Change => {
    const up = meanOf(prediction, state, place) - usual
    return { down: -up, up, deviation }
  }
  return marginalised(signatures, changeOf, CALLED_OTHER, misread)
}

/**
 * How likely it is that one cylinder's exhaust is told to be off, by the model.
 * @param signatures of the circuit
 * @param state in which they were read
 * @param places of the exhausts among the readings of the state
 * @param measure of one of their thermometers
 * @param misread share of readings that are told wrongly
 * @returns for causes together, none for health, the shares of one colder, all alike and one hotter
 * @source common practice (from where on one is called off)
 */
export function exhaustsInWords(
  signatures: Signatures,
  state: OperatingState,
  places: readonly number[],
  measure: Measure,
  misread: number,
): (faults: readonly string[]) => Shares {
  const health = predictHealth(signatures)
  const usual = places.map((place) => meanOf(health, state, place))
  const deviation = deviationOf(measure, usual[0] ?? 0)
  const changeOf = (prediction: Prediction): Change => {
    const changes = places
      .map((place, index) => meanOf(prediction, state, place) - (usual[index] ?? 0))
      .toSorted((a, b) => a - b)
    const middle = changes[changes.length >> 1] ?? 0
    return { down: middle - (changes[0] ?? 0), up: (changes.at(-1) ?? 0) - middle, deviation }
  }
  return marginalised(signatures, changeOf, ONE_CALLED_OTHER, misread)
}
