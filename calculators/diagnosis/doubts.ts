import { observableId, spanOf } from './items.ts'
import type { Knowledge, Observation } from './types.ts'

/** Something that was told and cannot be right; it is left out of the ranking until the person has answered. */
export interface Doubt {
  readonly observation: Observation
  readonly says: string
  /** What the value would be, had it been read in another unit. [SI] */
  readonly perhaps?: { readonly value: number; readonly because: string }
}

/** Factors by which a value is off when it is read in one unit and told in another. */
const MIX_UPS = [
  { factor: 6.894757, because: 'it was read in psi and told in kPa' },
  { factor: 1 / 6.894757, because: 'it was read in kPa and told in psi' },
  { factor: 100, because: 'it was read in bar and told in kPa' },
  { factor: 0.01, because: 'it was read in kPa and told in bar' },
  { factor: 3.386389, because: 'it was read in inHg and told in kPa' },
  { factor: 1 / 3.386389, because: 'it was read in kPa and told in inHg' },
  { factor: 14.503774, because: 'it was read in bar and told in psi' },
  { factor: 1 / 14.503774, because: 'it was read in psi and told in bar' },
  { factor: 1000, because: 'the thousands were left out' },
  { factor: 0.001, because: 'it was told a thousand times too large' },
] as const

const FREEZING = 273.15
const FAHRENHEIT_ZERO = 459.67

/** So much of the span of all causes, and so many accuracies, a value may lie beyond what any of them shows. */
const BEYOND = { share: 0.15, accuracies: 5 }

function mixUp(
  value: number,
  kind: string,
  least: number,
  largest: number,
  health: number,
): Doubt['perhaps'] {
  // No mix-up of units turns a pressure or a flow round.
  if (value < 0 && kind !== 'temperature') return undefined
  const candidates =
    kind === 'temperature'
      ? [
          {
            value: ((value - FREEZING + FAHRENHEIT_ZERO) * 5) / 9,
            because: 'it was read in °F and told in °C',
          },
          {
            value: (value * 9) / 5 - FAHRENHEIT_ZERO + FREEZING,
            because: 'it was read in °C and told in °F',
          },
          { value: value + FREEZING, because: 'it was read in °C and told in K' },
        ]
      : MIX_UPS.map(({ factor, because }) => ({ value: value * factor, because }))
  const [nearest] = candidates
    .filter((one) => one.value >= least && one.value <= largest)
    .toSorted((a, b) => Math.abs(a.value - health) - Math.abs(b.value - health))
  return nearest
}

function doubtOfReading(knowledge: Knowledge, observation: Observation): Doubt | undefined {
  const { state, value, id } = observation
  if (state === undefined || typeof value !== 'number') return undefined
  const { readings, health } = knowledge.signatures.states[state]
  const place = readings.findIndex((one) => one.id === id)
  const key = readings[place]
  if (!key) return undefined
  const [least, largest] = spanOf(knowledge, state, place)
  const room = BEYOND.share * (largest - least) + BEYOND.accuracies * key.accuracy
  if (value >= least - room && value <= largest + room) return undefined
  const perhaps = mixUp(value, key.kind, least - room, largest + room, health.readings[place] ?? 0)
  return {
    observation,
    says: `${key.label}: no state and no fault of this circuit shows such a value.`,
    ...(perhaps ? { perhaps } : {}),
  }
}

const same = (one: Observation, other: Observation): boolean =>
  one.id === other.id && one.state === other.state

/**
 * What cannot be right of what was told: two different values of the same thing, and readings that no fault of the
 * circuit can bring about.
 * @param knowledge of the circuit
 * @param observations as they were told
 * @returns what is sound, each thing once, and what is in doubt with the question to be asked
 * @source common practice (how far beyond what the model shows is too far)
 */
export function doubtsOf(
  knowledge: Knowledge,
  observations: readonly Observation[],
): { readonly sound: readonly Observation[]; readonly doubts: readonly Doubt[] } {
  const doubts: Doubt[] = []
  const sound: Observation[] = []
  observations.forEach((observation, index) => {
    const label = knowledge.observables[observableId(observation.id)]?.label ?? observation.id
    if (observations.some((other) => same(observation, other) && other.value !== observation.value)) {
      doubts.push({ observation, says: `${label}: told twice in the same state, and differently.` })
      return
    }
    const doubt = doubtOfReading(knowledge, observation)
    if (doubt) doubts.push(doubt)
    else if (observations.findIndex((other) => same(observation, other)) === index) sound.push(observation)
  })
  return { sound, doubts }
}
