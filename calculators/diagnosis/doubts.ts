import type { OperatingState } from '../circuit/types.ts'
import { STANDARD_ATMOSPHERE } from '../quantity/convert.ts'
import type { KindId } from '../quantity/types.ts'
import { evidenceOf } from './evidence.ts'
import { measureOf, observableId, spanOf } from './items.ts'
import { mixUpOf, mixUpsOf, type MixUp } from './mix-up.ts'
import { deviationOf } from './predict.ts'
import { rowsOf, type Rows } from './rows.ts'
import type { Knowledge, Observation } from './types.ts'

/** Something that was told and cannot be right; it is left out of the ranking until the person has answered. */
export interface Doubt {
  readonly observation: Observation
  readonly says: string
  /** Whether it is settled by the person saying that it is right as it stands. */
  readonly mayStand: boolean
  /** What no such reading goes beyond, to be told in the person's unit. [SI] */
  readonly limit?: number
  /** What the value would be, had it been read in another unit. [SI] */
  readonly perhaps?: MixUp
}

/** So much of the span of all causes, and so many accuracies, a value may lie beyond what any of them shows. */
const BEYOND = { share: 0.15, accuracies: 5 }

/** An air pressure that no weather reaches. [Pa] */
const HIGHEST_AIR = 108_000

/** So many deviations off, the figure of an exhaust is what a word for all of them means. */
const STANDS_OFF = 3

/** Gauges whose needle rests on a stop where it shows nothing, whatever there is. */
const HAS_A_STOP: ReadonlySet<KindId> = new Set(['gaugePressure', 'pressureDifference'])

/** A reading is explained where some cause makes it so many times likelier than a slip of the eye does. */
const MORE_THAN_A_SLIP = 3

/** What no instrument can show, wherever it is read. */
function impossible(id: string, kind: KindId, value: number): Pick<Doubt, 'says' | 'limit'> | undefined {
  if (!Number.isFinite(value)) return { says: 'that is no number.' }
  if (kind === 'temperature' && value < 0) return { says: 'nothing is colder than absolute zero.' }
  if (kind === 'gaugePressure' && value < -HIGHEST_AIR)
    return { says: 'that is less than a perfect vacuum.', limit: -STANDARD_ATMOSPHERE }
  if (id.includes('vacuum') && value > HIGHEST_AIR)
    return { says: 'no vacuum is deeper than the pressure of the air.', limit: STANDARD_ATMOSPHERE }
  return undefined
}

/** What may have been meant is of the size of what is read in health: within this factor, or for a temperature [K]. */
const OF_THE_SIZE = 2
const AS_WARM = 60

const isUsual = (value: number, sound: number, kind: KindId): boolean =>
  kind === 'temperature'
    ? Math.abs(value - sound) < AS_WARM
    : value < OF_THE_SIZE * sound && value > sound / OF_THE_SIZE

type Reading = Observation & { readonly value: number; readonly state: OperatingState }

const isReading = (observation: Observation): observation is Reading =>
  typeof observation.value === 'number' && observation.state !== undefined

/** Whether health or some cause alone, at any severity, shows such a reading. */
function isExplained(knowledge: Knowledge, observation: Reading, rows: Rows): boolean {
  const [evidence] = evidenceOf(knowledge, [observation])
  if (evidence?.item.from !== 'reading') return true
  const { item, ofSingles } = evidence
  const best = ofSingles(rows).reduce((most, log) => Math.max(most, log), -Infinity)
  return best > Math.log((MORE_THAN_A_SLIP * knowledge.weights.misread) / item.span)
}

function doubtOfReading(
  knowledge: Knowledge,
  observation: Reading,
  others: readonly Observation[],
  rows: Rows,
): Doubt | undefined {
  const { state, value, id, unit, sure } = observation
  const { readings, health } = knowledge.signatures.states[state]
  const place = readings.findIndex((one) => one.id === id)
  const key = readings[place]
  if (!key) return undefined
  const [least, largest] = spanOf(knowledge, state, place)
  const room = BEYOND.share * (largest - least) + BEYOND.accuracies * key.accuracy
  const near = (one: number): boolean => one >= least - room && one <= largest + room
  const never = impossible(id, key.kind, value)
  const sound = health.readings[place] ?? 0
  if (never === undefined && near(value)) {
    if (sure === true) return undefined
    if (value === 0 && HAS_A_STOP.has(key.kind) && sound > BEYOND.accuracies * key.accuracy)
      return {
        observation,
        says: `${key.label}: the gauge stands at its stop. See that its cock is open and that its needle moves.`,
        mayStand: true,
      }
    if (isExplained(knowledge, observation, rows)) {
      const perhaps = mixUpOf(knowledge, observation, others, rows)
      return perhaps
        ? {
            observation,
            says: `${key.label}: unusual as it was told, and usual in another unit.`,
            mayStand: true,
            perhaps,
          }
        : undefined
    }
  }
  const [perhaps] = mixUpsOf(value, key.kind, unit)
    .filter(({ value: meant }) => isUsual(meant, sound, key.kind))
    .toSorted((a, b) => Math.abs(a.value - sound) - Math.abs(b.value - sound))
  const { says, limit } = never ?? {
    says: near(value)
      ? 'no cause in the list shows such a value in this state. Look at the gauge again, and at its unit.'
      : 'no state and no fault of this circuit shows such a value.',
  }
  return {
    observation,
    says: `${key.label}: ${says}`,
    mayStand: never === undefined && near(value),
    ...(limit === undefined ? {} : { limit }),
    ...(perhaps ? { perhaps } : {}),
  }
}

const same = (one: Observation, other: Observation): boolean =>
  one.id === other.id && one.state === other.state

/** Two figures that differ by less than this share are one figure in two units. */
const ROUNDED = 1e-4

function differs(one: Observation['value'], other: Observation['value']): boolean {
  if (typeof one !== 'number' || typeof other !== 'number') return one !== other
  return !(Math.abs(one - other) <= ROUNDED * Math.abs(one)) && !Object.is(one, other)
}

/** What a person reads for what was told. */
const labelOf = ({ observables, checks, signatures }: Knowledge, { id, state }: Observation): string =>
  signatures.states[state ?? 'full'].readings.find((one) => one.id === id)?.label ??
  observables[observableId(id)]?.label ??
  checks.find((one) => one.id === id)?.label ??
  id

/** Words for all exhausts say nothing new where the figure of one that stands off was told, or all figures. */
function inFigures(knowledge: Knowledge, { id, state }: Observation, told: readonly Observation[]): boolean {
  if (knowledge.observables[id]?.from !== 'exhausts' || state === undefined) return false
  const { readings, health } = knowledge.signatures.states[state]
  const figures = told.flatMap((one) => {
    const place = readings.findIndex((reading) => reading.id === one.id)
    const isExhaust = one.state === state && observableId(one.id) !== one.id
    return isExhaust && typeof one.value === 'number' && place >= 0 ? [{ value: one.value, place }] : []
  })
  const standsOff = ({ value, place }: { value: number; place: number }): boolean => {
    const sound = health.readings[place] ?? value
    const deviation = deviationOf(measureOf(knowledge, state, place), sound)
    return Math.abs(value - sound) > STANDS_OFF * deviation
  }
  return figures.length >= knowledge.signatures.cylinders || figures.some(standsOff)
}

/**
 * What cannot be right of what was told: two different values of the same thing, readings that no fault of the
 * circuit can bring about or that no cause shows in their state, and those that are unusual as they were told and usual
 * in another unit.
 * @param knowledge of the circuit
 * @param observations as they were told
 * @returns what is sound, each thing once, and what is in doubt with the question to be asked
 * @source common practice (how far beyond what the model shows is too far)
 */
export function doubtsOf(
  knowledge: Knowledge,
  observations: readonly Observation[],
): { readonly sound: readonly Observation[]; readonly doubts: readonly Doubt[] } {
  const twice = (observation: Observation): boolean =>
    observations.some((other) => same(observation, other) && differs(other.value, observation.value))
  const once = observations.filter(
    (observation, index) => observations.findIndex((other) => same(observation, other)) === index,
  )
  const contradicted = observations.filter(twice).map((observation): Doubt => ({
    observation,
    says: `${labelOf(knowledge, observation)}: told twice, and differently.`,
    mayStand: false,
  }))
  const left = once.filter((observation) => !twice(observation) && !inFigures(knowledge, observation, once))
  // The same rows as those of the ranking, which so finds all of it reckoned.
  const rows = rowsOf(
    knowledge.signatures,
    once.some(({ id }) => observableId(id) !== id),
  )
  const doubted = left.flatMap((observation): Doubt[] => {
    if (!isReading(observation)) return []
    const others = left.filter((other) => other !== observation)
    const doubt = doubtOfReading(knowledge, observation, others, rows)
    return doubt ? [doubt] : []
  })
  return {
    sound: left.filter((observation) => doubted.every((doubt) => doubt.observation !== observation)),
    doubts: [...contradicted, ...doubted],
  }
}
