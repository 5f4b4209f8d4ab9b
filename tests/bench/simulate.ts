import type { OperatingState } from '../../calculators/circuit/types.ts'
import { itemOf, measureOf, observableId } from '../../calculators/diagnosis/items.ts'
import { shownOf, solveWith, type SignatureSource } from '../../calculators/diagnosis/signatures.ts'
import { deviationOf, FELT_RIGHT } from '../../calculators/diagnosis/predict.ts'
import type { Knowledge, KnownCheck, Observation, Shown } from '../../calculators/diagnosis/types.ts'
import type { SevereFault } from '../../calculators/faults/bend-circuit.ts'

/** A small generator with a seed (mulberry32), so that a run can be repeated. */
export function seeded(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}

const normal = (draw: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw())

export interface Simulated {
  readonly faults: readonly SevereFault[]
  /** What the circuit shows in each state that was solved. */
  readonly shown: ReadonlyMap<OperatingState, Shown>
}

/** The circuit with faults in these states, solved at the very severities; nothing where it has no state. */
export function simulate(
  source: SignatureSource,
  faults: readonly SevereFault[],
  states: readonly OperatingState[],
): Simulated | undefined {
  const shown = new Map<OperatingState, Shown>()
  for (const state of states) {
    const solved = solveWith(source, state, faults)
    if (!solved.ok) return undefined
    shown.set(state, shownOf(source, solved))
  }
  return { faults, shown }
}

/** Standard deviation of a reading: the instrument's, and that among sound plants. */
function deviation(knowledge: Knowledge, state: OperatingState, place: number, value: number): number {
  return deviationOf(measureOf(knowledge, state, place), value)
}

/** Whether at least one thing is otherwise than there: a glass that looks otherwise, or a reading two deviations off. */
export function showsMore(
  knowledge: Knowledge,
  { shown }: Simulated,
  than: (state: OperatingState) => Shown | undefined,
): boolean {
  return [...shown].some(([state, seen]) => {
    const there = than(state)
    return (
      there !== undefined &&
      (seen.glasses.some((value, place) => value !== there.glasses[place]) ||
        seen.readings.some((value, place) => {
          const other = there.readings[place] ?? value
          return Math.abs(value - other) > 2 * deviation(knowledge, state, place, other)
        }))
    )
  })
}

/** Whether at least one thing is out of the ordinary. */
export const outOfTheOrdinary = (knowledge: Knowledge, plant: Simulated): boolean =>
  showsMore(knowledge, plant, (state) => knowledge.signatures.states[state].health)

/** What a person says of a glass: mostly what is there. */
function said(knowledge: Knowledge, glass: string, there: string, draw: () => number): string {
  const observable = knowledge.observables[glass]
  if (observable?.from !== 'glass') return there
  let left = draw()
  for (const [other, share] of Object.entries(observable.mistaken[there] ?? {})) {
    left -= share
    if (left < 0) return other
  }
  return there
}

/** One look at a glass. */
export function look(
  knowledge: Knowledge,
  state: OperatingState,
  seen: Shown,
  place: number,
  draw: () => number,
): Observation {
  const id = knowledge.signatures.glasses[place] ?? ''
  return { id, state, value: said(knowledge, id, seen.glasses[place] ?? '', draw) }
}

/** One reading with its noise. */
export function readOff(
  knowledge: Knowledge,
  state: OperatingState,
  seen: Shown,
  place: number,
  draw: () => number,
): Observation {
  const value = seen.readings[place] ?? 0
  const id = knowledge.signatures.states[state].readings[place]?.id ?? ''
  const noisy = value + deviation(knowledge, state, place, value) * normal(draw)
  const observable = knowledge.observables[observableId(id)]
  if (observable?.from !== 'reading') throw new Error(`${id} is no reading`)
  return { id, state, value: noisy }
}

/** All glasses and instruments of the states that were solved. */
export function observeAll(knowledge: Knowledge, { shown }: Simulated, draw: () => number): Observation[] {
  return [...shown].flatMap(([state, seen]) => [
    ...seen.glasses.map((_, place) => look(knowledge, state, seen, place, draw)),
    ...seen.readings.map((_, place) => readOff(knowledge, state, seen, place, draw)),
  ])
}

/** A hand on a part: mostly what is there. */
export function feel(
  knowledge: Knowledge,
  check: KnownCheck,
  state: OperatingState,
  seen: Shown,
  draw: () => number,
): Observation[] {
  return check.feels.map((part) => {
    const right = draw() < FELT_RIGHT
    const passes = seen.felt[knowledge.signatures.felt.indexOf(part)] === right
    return { id: check.id, state, value: passes ? 'passes' : 'still' }
  })
}

/** What hands feel in the states that were solved. */
export const feelAll = (knowledge: Knowledge, { shown }: Simulated, draw: () => number): Observation[] =>
  [...shown].flatMap(([state, seen]) =>
    knowledge.checks
      .filter(
        ({ circuits, states }) => circuits.includes(knowledge.signatures.circuit) && states.includes(state),
      )
      .flatMap((check) => feel(knowledge, check, state, seen, draw)),
  )

/** What is told beside what the model shows, drawn by the estimates: sounds, smoke, smell, leaks, history. */
export function tellAll(knowledge: Knowledge, { faults }: Simulated, draw: () => number): Observation[] {
  const { observables, signatures } = knowledge
  const ids = faults.map(({ fault }) => fault.id)
  return Object.entries(observables).flatMap(([id, observable]): Observation[] => {
    if (observable.from !== 'told' || !observable.circuits.includes(signatures.circuit)) return []
    const shares = Object.keys(observable.values).flatMap((value) => {
      const item = itemOf(knowledge, { id, value })
      return item?.from === 'named' ? [{ value, share: item.share(ids) }] : []
    })
    let left = draw() * shares.reduce((sum, { share }) => sum + share, 0)
    const told = shares.find(({ share }) => (left -= share) < 0)
    return told ? [{ id, value: told.value }] : []
  })
}
