import { getCollection, type CollectionEntry } from 'astro:content'
import { ARTICLES_PLANT, shownPlant } from './ids.ts'

export type Plant = CollectionEntry<'plants'>
export type SetPoint = Plant['data']['setPoints'][string]
export type CautionEntry = CollectionEntry<'cautions'>

/** The plant whose set points the handbook shows. */
export async function defaultPlant(): Promise<Plant> {
  const plants = await getCollection('plants')
  const plant = plants.find((entry) => entry.id === shownPlant())
  if (!plant) throw new Error(`PLANT: ${unknownId(shownPlant(), 'content/plants', plants)}`)
  return plant
}

/** The plant shown where it has this circuit, else the circuit's own. */
export async function plantOfCircuit(circuit: CollectionEntry<'circuits'>): Promise<Plant> {
  const shown = await defaultPlant()
  return shown.data.circuit === circuit.id ? shown : entryOf('plants', circuit.data.plant)
}

interface ShownSetPoint {
  readonly point: SetPoint
  readonly plant: Plant
  /** Title of the plant that it is borrowed from; nothing where it is that of the plant asked for. */
  readonly borrowedFrom?: string
}

/**
 * A set point of the plant shown, or of the one given. A plant that has not the circuit of the articles has not all of
 * its parts either: there the article's plant lends its figure, and says so. Any other unknown id fails the build and
 * names those that there are.
 */
export async function setPointOf(id: string, asked?: Plant): Promise<ShownSetPoint> {
  const plant = asked ?? (await defaultPlant())
  const point = plant.data.setPoints[id]
  if (point) return { point, plant }
  const lender = await entryOf('plants', ARTICLES_PLANT)
  const lent = plant.data.circuit === lender.data.circuit ? undefined : lender.data.setPoints[id]
  if (lent) return { point: lent, plant: lender, borrowedFrom: lender.data.title }
  const allowed = Object.keys(plant.data.setPoints).join(', ')
  throw new Error(`«${id}» is not a set point of content/plants/${plant.id}.yaml; allowed: ${allowed}`)
}

type Looked = 'cautions' | 'sources' | 'faults' | 'procedures' | 'plants'

/** An entry of a collection. An unknown id fails the build and names those that there are. */
export async function entryOf<C extends Looked>(collection: C, id: string): Promise<CollectionEntry<C>> {
  const all: CollectionEntry<C>[] = await getCollection(collection)
  const entry = all.find((candidate) => candidate.id === id)
  if (!entry) throw new Error(unknownId(id, `content/${collection}`, all))
  return entry
}

/** Entries of a collection by id, in the order asked for. */
export function entriesOf<C extends Looked>(
  collection: C,
  ids: readonly string[],
): Promise<CollectionEntry<C>[]> {
  return Promise.all(ids.map((id) => entryOf(collection, id)))
}

function unknownId(id: string, place: string, all: readonly { id: string }[]): string {
  return `«${id}» is not an id of ${place}; allowed: ${all.map((entry) => entry.id).join(', ')}`
}
