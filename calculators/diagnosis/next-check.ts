import { stateMinutes } from '../checks/state-minutes.ts'
import type { PlantState } from '../checks/types.ts'
import type { OperatingState } from '../circuit/types.ts'
import { featuresOf, together, type Feature } from './outcomes.ts'
import type { Prediction } from './predict.ts'
import type { Ranking } from './rank.ts'
import { safeStates, STANDING } from './safe-states.ts'
import { standingFor } from './standing-for.ts'
import type { Knowledge, KnownCheck, KnownStates, Observation } from './types.ts'

export interface ProposedCheck {
  readonly check: KnownCheck
  readonly state: PlantState
  /** Of the check and of the state, by id. */
  readonly cautions: readonly string[]
  /** By how much it is expected to lessen what is not known. [bit] */
  readonly tells: number
  /** Work, with bringing the plant into the state. [min] */
  readonly minutes: number
  /** What it tells for its effort, by which checks are put in order. [bit/min] */
  readonly worth: number
}

export interface NextCheck {
  readonly proposals: readonly ProposedCheck[]
  /** That the engine, or the pump too, is not to be run to learn more, and why. */
  readonly doNotRun?: string
}

/** A cause with a smaller share is left out of what a check is expected to tell. */
const LEFT_FROM = 0.004
/** A check that tells less is not worth the way. [bit] */
const WORTH_A_LOOK = 0.02

interface Left {
  readonly share: number
  readonly predictions: readonly { readonly prediction: Prediction; readonly weight: number }[]
}

const uncertain = (share: number): number => (share > 0 ? -share * Math.log2(share) : 0)

/** By how much the entropy over the causes is expected to fall. [bit] */
function expectedGain(features: readonly Feature[], left: readonly Left[]): number {
  const byName = features.every((feature) => feature.byName)
  const totals: number[] = []
  let gain = 0
  for (const { share, predictions } of left) {
    gain += uncertain(share)
    const outcomes: number[] = []
    for (const { prediction, weight } of byName ? predictions.slice(0, 1) : predictions)
      together(features.map(({ shares }) => shares(prediction))).forEach((one, place) => {
        outcomes[place] = (outcomes[place] ?? 0) + (byName ? 1 : weight) * share * one
      })
    outcomes.forEach((joint, place) => {
      totals[place] = (totals[place] ?? 0) + joint
      gain -= uncertain(joint)
    })
  }
  return Math.max(
    0,
    totals.reduce((sum, total) => sum + uncertain(total), gain),
  )
}

/** Causes that are left, with shares that sum to one, each with a few of its severities. */
function leftOf({ causes, healthy }: Ranking): Left[] {
  const all = [
    { share: healthy.share, predictions: healthy.predictions },
    ...causes.map(({ share, alone }) => ({ share, predictions: alone.predictions })),
  ].filter(({ share }) => share >= LEFT_FROM)
  const sum = all.reduce((total, { share }) => total + share, 0)
  return all.map(({ share, predictions }) => ({
    share: share / sum,
    predictions: standingFor(predictions),
  }))
}

/**
 * The checks that are expected to tell most for their effort: the fall of entropy over the causes that are left, for
 * each minute of work and way, with gauges, hands and spanners weighing more than a glance. No spanner is put to a plant
 * whose engine runs, and none is run with a leak or a light fuel.
 * @param knowledge of the circuit
 * @param ranking of the causes so far
 * @param told all that was told, what is in doubt too
 * @param states what it costs to bring the plant into a state [min]
 * @param now state of the plant
 * @returns proposals, the best first; none where nothing is left to learn
 * @source common practice (efforts); the expected fall of entropy is the usual measure of information
 */
export function nextCheck(
  knowledge: Knowledge,
  ranking: Ranking,
  told: readonly Observation[],
  states: KnownStates,
  now: PlantState,
): NextCheck {
  const { checks, signatures, weights } = knowledge
  const left = leftOf(ranking)
  const predictions = left.flatMap((one) => one.predictions.map(({ prediction }) => prediction))
  const done = new Set(ranking.items.map(({ observation: { id, state } }) => `${id} ${state ?? ''}`))
  const { doNotRun, ...safe } = safeStates(knowledge, ranking, told)
  const proposals = checks
    .filter(({ circuits }) => circuits.includes(signatures.circuit))
    .flatMap((check) =>
      check.states
        .filter(
          (state) => safe.states.includes(state) && (check.kind !== 'spanner' || STANDING.includes(state)),
        )
        .flatMap((state): ProposedCheck[] => {
          const operating: OperatingState | undefined = state === 'stopped' ? undefined : state
          const features = featuresOf(knowledge, check, operating, done, predictions)
          if (features.length === 0) return []
          const tells = expectedGain(features, left)
          const minutes = check.minutes + stateMinutes(now, state, states)
          return tells < WORTH_A_LOOK
            ? []
            : [
                {
                  check,
                  state,
                  cautions: [...new Set([...check.cautions, ...states[state].cautions])],
                  tells,
                  minutes,
                  worth: tells / (minutes * weights.effort[check.kind]),
                },
              ]
        }),
    )
    .toSorted((a, b) => b.worth - a.worth)
  return { proposals, ...(doNotRun === undefined ? {} : { doNotRun }) }
}
