import type { OperatingState } from '../circuit/types.ts'
import type { KindId } from '../quantity/types.ts'
import { evidenceOf } from './evidence.ts'
import { itemOf, type ReadingItem } from './items.ts'
import { likelihoodOf } from './predict.ts'
import { rowsOf } from './rows.ts'
import type { Knowledge, Observation } from './types.ts'

/** Another value that may have been meant, and what would have gone wrong. */
export interface MixUp {
  /** [SI] */
  readonly value: number
  readonly because: string
}

type Reading = Observation & { readonly value: number; readonly state: OperatingState }

const PRESSURES = { psi: 6894.757, kPa: 1000, bar: 100_000, inHg: 3386.389, 'kgf/cm²': 98_066.5 }

/** Units of gauges in the trade by what they measure, each in SI; a reading in one is told in another. */
const UNITS: Readonly<Partial<Record<KindId, Readonly<Record<string, number>>>>> = {
  gaugePressure: PRESSURES,
  pressureDifference: PRESSURES,
  volumeFlow: { 'L/min': 1 / 60_000, 'US gal/min': 6.309_02e-5, 'm³/h': 1 / 3600 },
  power: { kW: 1000, hp: 745.7 },
  ratio: { '%': 0.01, 'a share of one': 1 },
}

/** Units that differ by less than this share are not told apart by a wrong value. */
const NEARLY_THE_SAME = 0.1

/** How often a reading in one unit is told in a certain other one: our estimate. */
const HOW_OFTEN = 0.002

/** A reading within so many deviations of health is not doubted. */
const ORDINARY = 4

const FREEZING = 273.15
const FAHRENHEIT_ZERO = 459.67

const TEMPERATURES: readonly { readonly because: string; readonly meant: (told: number) => number }[] = [
  {
    because: 'it was read in °F and told in °C',
    meant: (told) => ((told - FREEZING + FAHRENHEIT_ZERO) * 5) / 9,
  },
  {
    because: 'it was read in °C and told in °F',
    meant: (told) => (told * 9) / 5 - FAHRENHEIT_ZERO + FREEZING,
  },
  { because: 'it was read in °C and told in K', meant: (told) => told + FREEZING },
]

/**
 * Every value that may have been meant, had it been read in another unit than it was told in.
 * @param told the value [SI]
 * @param kind of quantity
 */
export function mixUpsOf(told: number, kind: KindId): MixUp[] {
  if (kind === 'temperature')
    return TEMPERATURES.map(({ because, meant }) => ({ because, value: meant(told) }))
  // No mix-up of units turns a pressure or a flow round.
  if (told <= 0) return []
  const all = Object.entries(UNITS[kind] ?? {})
  const thousands = [
    { value: told * 1000, because: 'the thousands were left out' },
    { value: told / 1000, because: 'it was told a thousand times too large' },
  ]
  const mixed = all.flatMap(([read, size]) =>
    all
      .filter(([, other]) => Math.abs(Math.log(size / other)) > NEARLY_THE_SAME)
      .map(([said, other]) => ({
        value: (told * size) / other,
        because: `it was read in ${read} and told in ${said}`,
      })),
  )
  return [...mixed, ...thousands]
}

/** Weights of all single causes at all severities, by how often they are met and by what else was told. */
function weightsBy(knowledge: Knowledge, others: readonly Observation[]): Float64Array {
  const { signatures, weights, faults } = knowledge
  const { predictions, causes } = rowsOf(signatures, true)
  const logs = new Float64Array(predictions.length)
  logs[0] = Math.log(weights.healthy)
  for (const { fault, from, count } of causes) {
    const frequency = faults.find(({ id }) => id === fault)?.frequency ?? 'rare'
    logs.fill(Math.log(weights.frequency[frequency] / count), from, from + count)
  }
  for (const { ofSingles } of evidenceOf(knowledge, others)) {
    const column = ofSingles(rowsOf(signatures, true))
    column.forEach((log, row) => (logs[row] = (logs[row] ?? 0) + log))
  }
  const best = logs.reduce((largest, log) => Math.max(largest, log), -Infinity)
  return logs.map((log) => Math.exp(log - best))
}

/** How likely a reading is in its order of magnitude, over all causes. */
function weightOf(knowledge: Knowledge, item: ReadingItem, weights: Float64Array): number {
  const { predictions } = rowsOf(knowledge.signatures, true)
  let sum = 0
  weights.forEach((weight, row) => {
    const prediction = predictions[row]
    if (weight > 1e-9 && prediction) sum += weight * likelihoodOf(item, prediction, knowledge.weights.misread)
  })
  // A factor of two up or down is as far at every value: so values of any size can be held against one another.
  return sum * Math.abs(item.value)
}

/**
 * What may have been meant by a reading that is unusual as it was told, and usual in another unit.
 * @param knowledge of the circuit
 * @param told the reading [SI]
 * @param others all else that was told
 * @returns the likeliest other value, where it is likelier than that the reading is right; else nothing
 * @source common practice (how often units are mixed up)
 */
export function mixUpOf(
  knowledge: Knowledge,
  told: Reading,
  others: readonly Observation[],
): MixUp | undefined {
  const item = itemOf(knowledge, told)
  if (item?.from !== 'reading') return undefined
  const { readings, health } = knowledge.signatures.states[told.state]
  const sound = health.readings[item.place] ?? 0
  const deviation = Math.hypot(item.instrument, item.spread * sound)
  if (Math.abs(told.value - sound) <= ORDINARY * deviation) return undefined
  const kind = readings[item.place]?.kind
  const [least, largest] = [sound - ORDINARY * deviation, sound + ORDINARY * deviation]
  const meant = kind
    ? mixUpsOf(told.value, kind).filter(({ value }) => value >= least && value <= largest)
    : []
  if (meant.length === 0) return undefined
  const weights = weightsBy(knowledge, others)
  const asTold = weightOf(knowledge, item, weights)
  const [best] = meant
    .map((one) => ({ one, weight: HOW_OFTEN * weightOf(knowledge, { ...item, value: one.value }, weights) }))
    .toSorted((a, b) => b.weight - a.weight)
  return best && best.weight > asTold ? best.one : undefined
}
