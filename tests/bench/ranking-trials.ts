import { operatingStates, type OperatingState } from '../../calculators/circuit/types.ts'
import { rank, type Ranking } from '../../calculators/diagnosis/rank.ts'
import type { SignatureSource } from '../../calculators/diagnosis/signatures.ts'
import { twinsOf } from '../../calculators/diagnosis/twins.ts'
import type { Knowledge } from '../../calculators/diagnosis/types.ts'
import { observeAll, outOfTheOrdinary, simulate, type Simulated } from './simulate.ts'

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
): Simulated {
  for (;;) {
    const faults = Array.from({ length: count }, () => drawFault(knowledge, source, draw))
    const [one, other] = faults.map(({ fault }) => groupOf(knowledge, fault.id))
    if (count === 2 && one === other) continue
    const alone = faults.map((fault) => simulate(source, [fault], states))
    if (!alone.every((plant) => plant && outOfTheOrdinary(knowledge, plant))) continue
    const plant = count === 1 ? alone[0] : simulate(source, faults, states)
    if (plant) return plant
  }
}

/** The group of a cause that no reading tells apart from others; its own name where it has none. */
export const groupOf = (knowledge: Knowledge, fault: string): string =>
  twinsOf(knowledge).find((group) => group.includes(fault))?.[0] ?? fault

/** Groups by their shares, the likeliest first. */
export function groupOrder(knowledge: Knowledge, { causes }: Ranking): string[] {
  const shares = new Map<string, number>()
  for (const { fault, share } of causes) {
    const group = groupOf(knowledge, fault)
    shares.set(group, (shares.get(group) ?? 0) + share)
  }
  return [...shares].toSorted(([, a], [, b]) => b - a).map(([group]) => group)
}

export interface Trial {
  readonly faults: readonly string[]
  /** Places of the true causes among all, from 0. */
  readonly places: readonly number[]
  /** Places of their groups among groups. */
  readonly groupPlaces: readonly number[]
  readonly ranking: Ranking
}

/** Draws a plant, observes everything in the chosen states and ranks. */
export function trial(
  knowledge: Knowledge,
  source: SignatureSource,
  choose: Choice,
  count: 1 | 2,
  draw: () => number,
): Trial {
  const plant = drawPlant(knowledge, source, choose(draw), count, draw)
  const ranking = rank(knowledge, observeAll(knowledge, plant, draw))
  const faults = plant.faults.map(({ fault }) => fault.id)
  const order = groupOrder(knowledge, ranking)
  return {
    faults,
    places: faults.map((id) => ranking.causes.findIndex(({ fault }) => fault === id)),
    groupPlaces: faults.map((id) => order.indexOf(groupOf(knowledge, id))),
    ranking,
  }
}
