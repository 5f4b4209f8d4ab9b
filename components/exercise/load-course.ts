import type { CollectionEntry } from 'astro:content'
import { prepareCourse, type World } from '../../calculators/exercise/course.ts'
import { shownBy } from '../../calculators/exercise/show.ts'
import { operatingStates } from '../../calculators/circuit/types.ts'
import { startState, writeAddress } from '../circuit/bench/address.ts'
import { benchDataOf } from '../circuit/bench/bench-data.ts'
import { solverOf } from '../circuit/bench/solver.ts'
import { entryOf } from '../content/load.ts'
import { href } from '../layout/href.ts'
import { packCourse, veilCourse, type Cause } from './course-data.ts'
import { reckonedOnce } from './reckoned-once.ts'
import { checksOn, faultsOf, procedureLink } from './load-exercise.ts'
import { severities, surroundingsOf } from './surroundings.ts'
import type { CircuitOffer } from './types.ts'

type ExerciseEntry = CollectionEntry<'exercises'>

/** Solved states by circuit and conditions: exercises in the same conditions share them. */
const shown = new Map<string, World['show']>()

async function showOf({ data: { circuit, conditions } }: ExerciseEntry): Promise<World['show']> {
  const key = JSON.stringify([circuit, conditions])
  const known = shown.get(key)
  if (known) return known
  const solve = solverOf(await benchDataOf(circuit))
  const surroundings = surroundingsOf(conditions)
  const show = shownBy((state, at) => solve({ ...surroundings, state, faults: severities(at) }))
  shown.set(key, show)
  return show
}

/** The hidden causes as the page tells them at the end. */
function causesOf({ data }: ExerciseEntry): Promise<Cause[]> {
  return Promise.all(
    data.faults.map(async ({ fault: id, severity }) => {
      const { title, description, confirm, procedure, procedureIn } = (await entryOf('faults', id)).data
      const way = await procedureLink(procedureIn[data.circuit] ?? procedure)
      return { id, title, description, confirm, severity, procedure: way }
    }),
  )
}

/** Address of the bench with the hidden faults on, in the last state in which the way that was reckoned looks at them. */
async function benchOf({ data }: ExerciseEntry, reckoned: string): Promise<string> {
  const { way } = JSON.parse(reckoned) as { way: readonly { readonly state: string }[] }
  const seenIn = [data.start, ...way.map(({ state }) => state)]
  const state = operatingStates.find((one) => one === seenIn.findLast((seen) => seen !== 'stopped')) ?? 'part'
  const bench = await benchDataOf(data.circuit)
  const setting = { ...surroundingsOf(data.conditions), state, faults: severities(data.faults) }
  return href(`bench/${data.circuit}?${writeAddress(bench, startState(bench, setting))}`)
}

/** What a page carries of an exercise's course, reckoned by the model at build time and veiled. */
export async function loadCourse(entry: ExerciseEntry, offer: CircuitOffer): Promise<string> {
  const { circuit, start, told, faults: hidden } = entry.data
  const faults = (await faultsOf(circuit)).map(({ id, data }) => ({ ...data, id }))
  const checks = (await checksOn(circuit)).map(({ id, data }) => ({ ...data, id }))
  const show = await showOf(entry)
  const reckoned = reckonedOnce(`exercise-${entry.id}`, () =>
    packCourse(
      prepareCourse({ start, hidden, told }, { checks, states: offer.stateMinutes, faults, show }),
      told,
      offer,
    ),
  )
  return veilCourse(reckoned, { causes: await causesOf(entry), bench: await benchOf(entry, reckoned) })
}
