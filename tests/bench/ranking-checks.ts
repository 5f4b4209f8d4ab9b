import { perform } from '../../calculators/checks/perform.ts'
import type { PlantState } from '../../calculators/checks/types.ts'
import { operatingStates, type OperatingState } from '../../calculators/circuit/types.ts'
import { nextCheck } from '../../calculators/diagnosis/next-check.ts'
import { rank, type Ranking } from '../../calculators/diagnosis/rank.ts'
import { observableId } from '../../calculators/diagnosis/items.ts'
import type { SignatureSource } from '../../calculators/diagnosis/signatures.ts'
import type { Knowledge, KnownCheck, KnownStates, Observation } from '../../calculators/diagnosis/types.ts'
import { drawPlant } from './ranking-trials.ts'
import { feel, look, readOff, type Simulated } from './simulate.ts'

/** After so many checks a search is given up. */
const MOST = 25
const SURE = 0.5

/** What a check tells of a simulated plant, with the mistakes of instruments, eyes and inspections. */
function make(
  knowledge: Knowledge,
  { shown, faults }: Simulated,
  check: KnownCheck,
  state: PlantState,
  draw: () => number,
): Observation[] {
  const { signatures, weights } = knowledge
  const made: Observation[] = []
  const seen = state === 'stopped' ? undefined : shown.get(state)
  if (state !== 'stopped' && seen) {
    for (const glass of check.glasses)
      made.push(look(knowledge, state, seen, signatures.glasses.indexOf(glass), draw))
    signatures.states[state].readings.forEach(({ id }, place) => {
      if (check.readings.includes(observableId(id))) made.push(readOff(knowledge, state, seen, place, draw))
    })
    made.push(...feel(knowledge, check, state, seen, draw))
  }
  if (check.finds.length > 0) {
    const ids = faults.map(({ fault }) => fault.id)
    const says = perform(check, undefined, ids).says[0]
    const place = check.finds.findIndex((find) => find.says === says)
    const found = draw() < (place < 0 ? weights.inspection.falseAlarm : weights.inspection.finds)
    const value =
      place < 0
        ? found
          ? `find-${1 + Math.floor(draw() * check.finds.length)}`
          : 'nothing'
        : found
          ? `find-${place + 1}`
          : 'nothing'
    made.push({ id: check.id, value })
  }
  return made
}

type Choose = (
  ranking: Ranking,
  made: ReadonlySet<string>,
  now: PlantState,
) => { readonly check: KnownCheck; readonly state: PlantState } | undefined

function search(
  knowledge: Knowledge,
  plant: Simulated,
  first: readonly Observation[],
  choose: Choose,
  draw: () => number,
): number {
  const right = plant.faults[0]?.fault.id
  const observations = [...first]
  const made = new Set<string>()
  let now: PlantState = 'stopped'
  for (let count = 0; count < MOST; count++) {
    const ranking = rank(knowledge, observations)
    const [best] = ranking.causes
    if (best && best.fault === right && best.share >= SURE) return count
    const next = choose(ranking, made, now)
    if (!next) return MOST
    made.add(`${next.check.id} ${next.state}`)
    const answers = make(knowledge, plant, next.check, next.state, draw)
    const told = new Set(observations.map(({ id, state }) => `${id} ${state ?? ''}`))
    observations.push(...answers.filter(({ id, state }) => !told.has(`${id} ${state ?? ''}`)))
    now = next.state
  }
  return MOST
}

/** How many further checks it takes to the right cause, by the proposals and in a fixed order. */
export function checksToCause(
  knowledge: Knowledge,
  source: SignatureSource,
  states: KnownStates,
  draw: () => number,
): { readonly proposed: number; readonly fixed: number; readonly fault: string } {
  const plant = drawPlant(knowledge, source, [...operatingStates], 1, draw)
  const state = operatingStates[Math.floor(draw() * operatingStates.length)] as OperatingState
  const seen = plant.shown.get(state)
  const first = seen ? [look(knowledge, state, seen, 0, draw)] : []
  const here = knowledge.checks.filter(({ circuits }) => circuits.includes(knowledge.signatures.circuit))
  const proposed: Choose = (ranking, made, now) =>
    nextCheck(
      knowledge,
      ranking,
      ranking.items.map(({ observation }) => observation),
      states,
      now,
    ).proposals.find((one) => !made.has(`${one.check.id} ${one.state}`))
  // In the order of the list, as a person works down a sheet: from a glance to the spanner, first while priming.
  const fixed: Choose = (_, made) => {
    const check = here.find(({ id }) => ![...made].some((key) => key.startsWith(`${id} `)))
    const [where] = check?.states ?? []
    return check && where ? { check, state: where } : undefined
  }
  return {
    fault: plant.faults[0]?.fault.id ?? '',
    proposed: search(knowledge, plant, first, proposed, draw),
    fixed: search(knowledge, plant, first, fixed, draw),
  }
}
