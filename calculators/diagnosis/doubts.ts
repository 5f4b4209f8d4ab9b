import type { OperatingState } from '../circuit/types.ts'
import type { KindId } from '../quantity/types.ts'
import { observableId, spanOf } from './items.ts'
import { mixUpOf, mixUpsOf, type MixUp } from './mix-up.ts'
import type { Knowledge, Observation } from './types.ts'

/** Something that was told and cannot be right; it is left out of the ranking until the person has answered. */
export interface Doubt {
  readonly observation: Observation
  readonly says: string
  /** What the value would be, had it been read in another unit. [SI] */
  readonly perhaps?: MixUp
}

/** So much of the span of all causes, and so many accuracies, a value may lie beyond what any of them shows. */
const BEYOND = { share: 0.15, accuracies: 5 }

/** Air pressure at the sea, and what no weather reaches. [Pa] */
const ATMOSPHERE = 101_325
const HIGHEST_AIR = 108_000

/** What no instrument can show, wherever it is read. */
function impossible(id: string, kind: KindId, value: number): string | undefined {
  if (!Number.isFinite(value)) return 'that is no number.'
  if (kind === 'temperature' && value < 0) return 'nothing is colder than absolute zero.'
  if (kind === 'gaugePressure' && value < -HIGHEST_AIR) return 'that is less than a perfect vacuum.'
  if (id.includes('vacuum') && value > HIGHEST_AIR)
    return `no vacuum is deeper than the pressure of the air, about ${ATMOSPHERE / 1000} kPa.`
  return undefined
}

type Reading = Observation & { readonly value: number; readonly state: OperatingState }

const isReading = (observation: Observation): observation is Reading =>
  typeof observation.value === 'number' && observation.state !== undefined

function doubtOfReading(
  knowledge: Knowledge,
  observation: Reading,
  others: readonly Observation[],
): Doubt | undefined {
  const { state, value, id } = observation
  const { readings, health } = knowledge.signatures.states[state]
  const place = readings.findIndex((one) => one.id === id)
  const key = readings[place]
  if (!key) return undefined
  const [least, largest] = spanOf(knowledge, state, place)
  const room = BEYOND.share * (largest - least) + BEYOND.accuracies * key.accuracy
  const never = impossible(id, key.kind, value)
  if (never === undefined && value >= least - room && value <= largest + room) {
    const perhaps = observation.sure === true ? undefined : mixUpOf(knowledge, observation, others)
    return perhaps
      ? { observation, says: `${key.label}: unusual as it was told, and usual in another unit.`, perhaps }
      : undefined
  }
  const sound = health.readings[place] ?? 0
  const [perhaps] = mixUpsOf(value, key.kind)
    .filter((one) => one.value >= least - room && one.value <= largest + room)
    .toSorted((a, b) => Math.abs(a.value - sound) - Math.abs(b.value - sound))
  return {
    observation,
    says: `${key.label}: ${never ?? 'no state and no fault of this circuit shows such a value.'}`,
    ...(perhaps ? { perhaps } : {}),
  }
}

const same = (one: Observation, other: Observation): boolean =>
  one.id === other.id && one.state === other.state

/**
 * What cannot be right of what was told: two different values of the same thing, readings that no fault of the
 * circuit can bring about, and those that are unusual as they were told and usual in another unit.
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
    observations.some((other) => same(observation, other) && !Object.is(other.value, observation.value))
  const once = observations.filter(
    (observation, index) => observations.findIndex((other) => same(observation, other)) === index,
  )
  const contradicted = observations.filter(twice).map((observation): Doubt => {
    const label = knowledge.observables[observableId(observation.id)]?.label ?? observation.id
    return { observation, says: `${label}: told twice in the same state, and differently.` }
  })
  const left = once.filter((observation) => !twice(observation))
  const doubted = left.flatMap((observation): Doubt[] => {
    if (!isReading(observation)) return []
    const others = left.filter((other) => other !== observation)
    const doubt = doubtOfReading(knowledge, observation, others)
    return doubt ? [doubt] : []
  })
  return {
    sound: left.filter((observation) => doubted.every((doubt) => doubt.observation !== observation)),
    doubts: [...contradicted, ...doubted],
  }
}
