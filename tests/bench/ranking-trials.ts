import { operatingStates, type OperatingState } from '../../calculators/circuit/types.ts'
import { rank, type Ranking } from '../../calculators/diagnosis/rank.ts'
import type { SignatureSource } from '../../calculators/diagnosis/signatures.ts'
import { groupsOf } from '../../calculators/diagnosis/groups.ts'
import { twinsOf } from '../../calculators/diagnosis/twins.ts'
import type { Knowledge, Observation } from '../../calculators/diagnosis/types.ts'
import {
  feelAll,
  observeAll,
  outOfTheOrdinary,
  showsMore,
  simulate,
  tellAll,
  type Simulated,
} from './simulate.ts'

/** Severities below this are not drawn: nobody would come to look. */
const LEAST_SEVERITY = 0.05

export type Choice = (draw: () => number) => OperatingState[]

const oneOf = <Value>(values: readonly Value[], draw: () => number): Value =>
  values[Math.floor(draw() * values.length)] as Value

/** In which states a person looks. */
export const choices: Readonly<Record<string, Choice>> = {
  'one state': (draw) => [oneOf(operatingStates, draw)],
  'priming and one running state': (draw) => ['priming', oneOf(['idle', 'part', 'full'], draw)],
  'all four states': () => [...operatingStates],
}

/** A cause of the circuit, as often as it is met. */
function drawFault(knowledge: Knowledge, { faults }: SignatureSource, draw: () => number) {
  const here = faults.filter(({ id }) => Object.hasOwn(knowledge.signatures.faults, id))
  const weights = here.map(({ frequency }) => knowledge.weights.frequency[frequency])
  let left = draw() * weights.reduce((sum, weight) => sum + weight, 0)
  const place = weights.findIndex((weight) => (left -= weight) < 0)
  return {
    fault: here[place] as (typeof here)[number],
    severity: LEAST_SEVERITY + (1 - LEAST_SEVERITY) * draw(),
  }
}

/** A plant with so many causes, of which each alone shows something out of the ordinary in these states. */
export function drawPlant(
  knowledge: Knowledge,
  source: SignatureSource,
  states: readonly OperatingState[],
  count: 1 | 2,
  draw: () => number,
): DrawnPlant {
  for (;;) {
    const faults = Array.from({ length: count }, () => drawFault(knowledge, source, draw))
    const [one, other] = faults.map(({ fault }) => groupOf(knowledge, fault.id, states))
    if (count === 2 && one === other) continue
    const alone = faults.map((fault) => simulate(source, [fault], states))
    if (!alone.every((plant) => plant && outOfTheOrdinary(knowledge, plant))) continue
    const plant = count === 1 ? alone[0] : simulate(source, faults, states)
    if (!plant) continue
    const hidden =
      count === 2 && alone.some((each) => !showsMore(knowledge, plant, (state) => each?.shown.get(state)))
    return { ...plant, hidden }
  }
}

export interface DrawnPlant extends Simulated {
  /** Whether one of two causes hides the other: nothing is otherwise than with the one alone. */
  readonly hidden: boolean
}

/** The group of a cause that no reading in these states tells apart from others; its own name where it has none. */
export const groupOf = (knowledge: Knowledge, fault: string, states: readonly OperatingState[]): string =>
  twinsOf(knowledge, states).find((group) => group.includes(fault))?.[0] ?? fault

export interface Trial {
  readonly states: readonly OperatingState[]
  readonly faults: readonly string[]
  readonly hidden: boolean
  /** With what is felt and told, or glasses and gauges alone. */
  readonly told: boolean
  /** Places of the true causes among all, from 0. */
  readonly places: readonly number[]
  /** Places of their groups among groups. */
  readonly groupPlaces: readonly number[]
  /** Share of the first group, of all causes: how often it is right, if shares are. */
  readonly firstShare: number
  /** Causes in the group of the first true one. */
  readonly alike: number
  readonly ranking: Ranking
}

function rankTrial(
  knowledge: Knowledge,
  plant: DrawnPlant,
  observations: readonly Observation[],
  told: boolean,
): Trial {
  const ranking = rank(knowledge, observations)
  const groups = groupsOf(knowledge, ranking, operatingStates)
  const faults = plant.faults.map(({ fault }) => fault.id)
  const placeOf = (id: string) => groups.findIndex(({ causes }) => causes.some(({ fault }) => fault === id))
  return {
    states: [...plant.shown.keys()],
    faults,
    hidden: plant.hidden,
    told,
    places: faults.map((id) => ranking.causes.findIndex(({ fault }) => fault === id)),
    groupPlaces: faults.map(placeOf),
    firstShare: (groups[0]?.share ?? 0) / groups.reduce((sum, { share }) => sum + share, 0),
    alike: groups[placeOf(faults[0] ?? '')]?.causes.length ?? 1,
    ranking,
  }
}

/**
 * Draws a plant, observes everything in the chosen states and ranks: by glasses and gauges alone, and with what hands
 * feel and a person tells beside them.
 */
export function trial(
  knowledge: Knowledge,
  source: SignatureSource,
  choose: Choice,
  count: 1 | 2,
  draw: () => number,
): readonly [Trial, Trial] {
  const plant = drawPlant(knowledge, source, choose(draw), count, draw)
  const observed = observeAll(knowledge, plant, draw)
  return [
    rankTrial(knowledge, plant, observed, false),
    rankTrial(
      knowledge,
      plant,
      [...observed, ...feelAll(knowledge, plant, draw), ...tellAll(knowledge, plant, draw)],
      true,
    ),
  ]
}
