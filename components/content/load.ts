import { getCollection, type CollectionEntry } from 'astro:content'
import type { KindId } from '../../calculators/quantity/types.ts'
import { readFigure } from '../../calculators/quantity/figure.ts'

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

/** Entries of a collection by id, in the order asked for. An unknown id fails the build and names those that there are. */
export async function entriesOf<C extends 'cautions' | 'sources' | 'faults' | 'procedures' | 'symptoms'>(
  collection: C,
  ids: readonly string[],
): Promise<CollectionEntry<C>[]> {
  const all: CollectionEntry<C>[] = await getCollection(collection)
  return ids.map((id) => {
    const entry = all.find((candidate) => candidate.id === id)
    if (!entry) throw new Error(unknownId(id, `content/${collection}`, all))
    return entry
  })
}

/** The SI value of a figure in the content's data: '450 kPa' as a gauge pressure gives 450000. */
export function siOf(figure: string, kind: KindId): number {
  const reading = readFigure(figure, kind)
  if (!reading.ok) throw new Error(`«${figure}»: ${reading.reason}; allowed: ${reading.accepted}`)
  return reading.si
}

/** A difference of two values of this kind is itself a quantity, in some cases of another kind. */
export function differenceKind(kind: KindId): KindId {
  if (kind === 'temperature') return 'temperatureDifference'
  if (kind === 'gaugePressure' || kind === 'absolutePressure') return 'pressureDifference'
  return kind
}

function unknownId(id: string, place: string, all: readonly { id: string }[]): string {
  return `«${id}» is not an id of ${place}; allowed: ${all.map((entry) => entry.id).join(', ')}`
}
