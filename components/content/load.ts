import { getCollection, type CollectionEntry } from 'astro:content'

export type Plant = CollectionEntry<'plants'>
export type SetPoint = Plant['data']['setPoints'][string]
export type CautionEntry = CollectionEntry<'cautions'>

/** The plant whose set points the handbook shows: PLANT=my-plant npm run build takes content/plants/my-plant.yaml. */
export async function defaultPlant(): Promise<Plant> {
  const wanted = process.env['PLANT'] ?? 'pq-12'
  const plants = await getCollection('plants')
  const plant = plants.find((entry) => entry.id === wanted)
  if (!plant) throw new Error(`PLANT: ${unknownId(wanted, 'content/plants', plants)}`)
  return plant
}

/** A set point of the plant shown. An unknown id fails the build and names those that there are. */
export async function setPointOf(id: string): Promise<SetPoint> {
  const plant = await defaultPlant()
  const point = plant.data.setPoints[id]
  if (!point) {
    const allowed = Object.keys(plant.data.setPoints).join(', ')
    throw new Error(`«${id}» is not a set point of content/plants/${plant.id}.yaml; allowed: ${allowed}`)
  }
  return point
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
