import type { OperatingState } from '../circuit/types.ts'
import type { KindId } from '../quantity/types.ts'
import { fromSI, toSI, unitOf } from '../quantity/units.ts'
import { evidenceOf } from './evidence.ts'
import { itemOf, type ReadingItem } from './items.ts'
import { deviationOf, likelihoodOf } from './predict.ts'
import type { Rows } from './rows.ts'
import type { Knowledge, Observation } from './types.ts'

/** Another value that may have been meant, and what would have gone wrong. */
export interface MixUp {
  /** [SI] */
  readonly value: number
  readonly because: string
}

type Reading = Observation & { readonly value: number; readonly state: OperatingState }

const PRESSURES = ['psi', 'kPa', 'bar', 'inHg', 'kgf/cm2']

/** Units of gauges in the trade by what they measure; a reading in one is told in another. */
const UNITS: Readonly<Partial<Record<KindId, readonly string[]>>> = {
  gaugePressure: PRESSURES,
  pressureDifference: PRESSURES,
  volumeFlow: ['L/min', 'gal/min', 'm3/h'],
  power: ['kW', 'hp'],
  ratio: ['%', '1'],
  temperature: ['degC', 'degF'],
}

/** Units that differ by less than this share are not told apart by a wrong value. */
const NEARLY_THE_SAME = 0.1

/** How often a reading in one unit is told in a certain other one: our estimate. */
const HOW_OFTEN = 0.002

/** A reading within so many deviations of health is not doubted. */
const ORDINARY = 4

const symbolOf = (unit: string): string => (unit === '1' ? 'a share of one' : unitOf(unit).symbol)

/**
 * Every value that may have been meant, had it been read in another unit than it was told in.
 * @param told the value [SI]
 * @param kind of quantity
 * @param unit in which it was told; where nobody knows, any of the trade's
 */
export function mixUpsOf(told: number, kind: KindId, unit?: string): MixUp[] {
  const trade = UNITS[kind] ?? []
  const units = unit === undefined ? [...trade, ...(kind === 'temperature' ? ['K'] : [])] : [unit]
  const mixed = units.flatMap((said) =>
    trade
      .filter((read) => apart(read, said))
      .map((read) => ({
        value: toSI(fromSI(told, said, kind), read, kind),
        because: `it was read in ${symbolOf(read)} and told in ${symbolOf(said)}`,
      })),
  )
  if (kind === 'temperature') return mixed
  // No mix-up of units turns a pressure or a flow round.
  if (told <= 0) return []
  return [
    ...mixed,
    { value: told * 1000, because: 'the thousands were left out' },
    { value: told / 1000, because: 'it was told a thousand times too large' },
  ]
}

function apart(one: string, other: string): boolean {
  const [first, second] = [unitOf(one), unitOf(other)]
  return first.offset !== second.offset || Math.abs(Math.log(first.factor / second.factor)) > NEARLY_THE_SAME
}

/** Weights of all single causes at all severities, by how often they are met and by what else was told. */
function weightsBy(knowledge: Knowledge, others: readonly Observation[], rows: Rows): Float64Array {
  const { weights, faults } = knowledge
  const { predictions, causes } = rows
  const logs = new Float64Array(predictions.length)
  logs[0] = Math.log(weights.healthy)
  for (const { fault, from, count } of causes) {
    const frequency = faults.find(({ id }) => id === fault)?.frequency ?? 'rare'
    logs.fill(Math.log(weights.frequency[frequency] / count), from, from + count)
  }
  for (const { ofSingles } of evidenceOf(knowledge, others)) {
    const column = ofSingles(rows)
    column.forEach((log, row) => (logs[row] = (logs[row] ?? 0) + log))
  }
  const best = logs.reduce((largest, log) => Math.max(largest, log), -Infinity)
  return logs.map((log) => Math.exp(log - best))
}

/** How likely a reading is in its order of magnitude, over all causes. */
function weightOf(
  knowledge: Knowledge,
  item: ReadingItem,
  { predictions }: Rows,
  weights: Float64Array,
): number {
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
 * @param rows of the single causes
 * @returns the likeliest other value, where it is likelier than that the reading is right; else nothing
 * @source common practice (how often units are mixed up)
 */
export function mixUpOf(
  knowledge: Knowledge,
  told: Reading,
  others: readonly Observation[],
  rows: Rows,
): MixUp | undefined {
  const item = itemOf(knowledge, told)
  if (item?.from !== 'reading') return undefined
  const { readings, health } = knowledge.signatures.states[told.state]
  const sound = health.readings[item.place] ?? 0
  const deviation = deviationOf(item, sound)
  if (Math.abs(told.value - sound) <= ORDINARY * deviation) return undefined
  const kind = readings[item.place]?.kind
  const [least, largest] = [sound - ORDINARY * deviation, sound + ORDINARY * deviation]
  const meant = kind
    ? mixUpsOf(told.value, kind, told.unit).filter(({ value }) => value >= least && value <= largest)
    : []
  if (meant.length === 0) return undefined
  const weights = weightsBy(knowledge, others, rows)
  const asTold = weightOf(knowledge, item, rows, weights)
  const [best] = meant
    .map((one) => ({
      one,
      weight: HOW_OFTEN * weightOf(knowledge, { ...item, value: one.value }, rows, weights),
    }))
    .toSorted((a, b) => b.weight - a.weight)
  return best && best.weight > asTold ? best.one : undefined
}
