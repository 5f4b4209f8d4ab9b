import { getCollection, type CollectionEntry } from 'astro:content'

export type CircuitEntry = CollectionEntry<'circuits'>

/** A circuit of content/circuits. An unknown id fails the build and names those that there are. */
export async function circuitOf(id: string): Promise<CircuitEntry> {
  const circuits = await getCollection('circuits')
  const circuit = circuits.find((entry) => entry.id === id)
  if (!circuit) {
    const allowed = circuits.map((entry) => entry.id).join(', ')
    throw new Error(`circuit: «${id}» is not an id of content/circuits; allowed: ${allowed}`)
  }
  return circuit
}
