import { getCollection, type CollectionEntry } from 'astro:content'
import { plantStates, type StatesData } from '../../calculators/checks/types.ts'
import { operatingStates } from '../../calculators/circuit/types.ts'
import { benchDataOf } from '../circuit/bench/bench-data.ts'
import { usualSetting } from '../circuit/bench/setting.ts'
import { entriesOf, entryOf } from '../content/load.ts'
import { gravestFirst } from '../content/signals.ts'
import { href } from '../layout/href.ts'
import { solverOf } from '../circuit/bench/solver.ts'
import type { CautionLine, CheckOffer, CircuitOffer, Labels, StateOffer } from './types.ts'

type ExerciseEntry = CollectionEntry<'exercises'>

/** Cautions as lines, the gravest first. */
export async function cautionLines(ids: readonly string[]): Promise<CautionLine[]> {
  const cautions = gravestFirst(await entriesOf('cautions', ids))
  return cautions.map(({ id, data: { signal, title } }) => ({ id, signal, title }))
}

/** A procedure as a link. */
export async function procedureLink(id: string): Promise<{ title: string; href: string }> {
  const { data } = await entryOf('procedures', id)
  return { title: data.title, href: href(`/procedures/${id}/`) }
}

/** The checks that can be made on a circuit, the quickest first. */
export async function checksOn(circuit: string): Promise<CollectionEntry<'checks'>[]> {
  return (await getCollection('checks'))
    .filter(({ data }) => data.circuits.includes(circuit))
    .sort((a, b) => a.data.minutes - b.data.minutes || a.data.label.localeCompare(b.data.label, 'en'))
}

/** The faults that a circuit can have. */
export async function faultsOf(circuit: string): Promise<CollectionEntry<'faults'>[]> {
  return (await getCollection('faults')).filter(({ data }) => data.bends[circuit] !== undefined)
}

async function offerOf({ id, data }: CollectionEntry<'checks'>): Promise<CheckOffer> {
  const { label, kind, minutes, how, states, otherwise, procedure } = data
  return {
    id,
    label,
    kind,
    minutes,
    how,
    states: plantStates.filter((state) => states.includes(state)),
    ...(otherwise === undefined ? {} : { otherwise }),
    cautions: await cautionLines(data.cautions),
    ...(procedure === undefined ? {} : { procedure: await procedureLink(procedure) }),
  }
}

/** The states of a plant: what each is, and what it costs. A state without its entry stops the build. */
export async function plantStatesData(): Promise<{
  offers: CircuitOffer['states']
  costs: StatesData
}> {
  const entries = await getCollection('checkStates')
  const named = await Promise.all(
    plantStates.map(async (state) => {
      const entry = entries.find(({ id }) => id === state)
      if (!entry)
        throw new Error(`content/checks/states.yaml has no «${state}»; wanted: ${plantStates.join(', ')}`)
      const { title, words, cautions, up, down } = entry.data
      const offer: StateOffer = { title, words, cautions: await cautionLines(cautions) }
      return [state, offer, { up, down }] as const
    }),
  )
  return {
    offers: Object.fromEntries(named.map(([state, offer]) => [state, offer])) as CircuitOffer['states'],
    costs: Object.fromEntries(named.map(([state, , costs]) => [state, costs])) as unknown as StatesData,
  }
}

/** Labels of all that the checks on a circuit can tell of. */
async function labelsOf(circuit: string): Promise<Labels> {
  const data = await benchDataOf(circuit)
  const solve = solverOf(data)
  const shown = operatingStates.flatMap((state) => {
    const solved = solve({ ...usualSetting(data), state })
    if (!solved.ok) throw new Error(`${circuit} in health, ${state}: ${solved.reason}`)
    return [solved]
  })
  return Object.fromEntries([
    ...shown.flatMap(({ parts }) => parts.map(({ id, label }) => [id, { label }] as const)),
    ...shown.flatMap(({ readings }) => readings.map(({ id, label, kind }) => [id, { label, kind }] as const)),
  ])
}

const offers = new Map<string, Promise<CircuitOffer>>()

/** What all exercises on a circuit share, gathered once a build. */
export function circuitOffer(circuit: string): Promise<CircuitOffer> {
  const known = offers.get(circuit)
  if (known) return known
  const gathering = gatherOffer(circuit)
  offers.set(circuit, gathering)
  return gathering
}

async function gatherOffer(circuit: string): Promise<CircuitOffer> {
  const { offers: states, costs } = await plantStatesData()
  return {
    checks: await Promise.all((await checksOn(circuit)).map(offerOf)),
    states,
    stateMinutes: costs,
    faults: (await faultsOf(circuit))
      .map((fault) => ({ id: fault.id, title: fault.data.title, alsoCalled: fault.data.alsoCalled }))
      .sort((a, b) => a.title.localeCompare(b.title, 'en')),
    labels: await labelsOf(circuit),
    cautionsHref: href('/cautions/'),
  }
}

/** The cautions of an exercise: its own, and those of the plant's states. */
export async function exerciseCautions({ data }: ExerciseEntry): Promise<string[]> {
  const states = (await getCollection('checkStates')).flatMap((state) => state.data.cautions)
  return [...new Set([...data.cautions, ...states, 'manual-and-licence'])]
}

/** A fuel by its id. An unknown one stops the build. */
export async function fuelOf(id: string): Promise<CollectionEntry<'fuels'>> {
  const fuel = (await getCollection('fuels')).find((entry) => entry.id === id)
  if (!fuel) throw new Error(`«${id}» is not an id of content/fuels`)
  return fuel
}
