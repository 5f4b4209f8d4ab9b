import type { BenchData, BenchFault } from './types.ts'
import { labelOf } from './words.ts'

/** Where a fault sits that bends no part but the fuel or what surrounds the circuit. */
export const ELSEWHERE = 'Fuel and surroundings'

/** Ids of the parts and pipes that a fault changes, the first one where it sits. */
export function placesOf(data: BenchData, fault: BenchFault): string[] {
  const bends = fault.bends[data.id] ?? []
  return [...new Set(bends.flatMap((bend) => ('part' in bend ? [bend.part] : [])))]
}

export interface FaultGroup {
  readonly title: string
  readonly faults: readonly BenchFault[]
}

/** The faults by where they sit, in the order in which the fuel meets the parts. */
export function faultGroups(data: BenchData): FaultGroup[] {
  const way = wayOf(data)
  const groups = new Map<string, BenchFault[]>()
  for (const fault of data.faults) {
    const place = placesOf(data, fault)[0] ?? ''
    groups.set(place, [...(groups.get(place) ?? []), fault])
  }
  const rank = (place: string): number => (way.includes(place) ? way.indexOf(place) : way.length)
  return [...groups]
    .sort(([a], [b]) => rank(a) - rank(b))
    .map(([place, faults]) => ({ title: place === '' ? ELSEWHERE : labelOf(data, place), faults }))
}

/** Parts in the order of their numbers, each pipe behind the part that it leads away from; the rest behind. */
function wayOf({ circuit }: BenchData): string[] {
  const pipeBehind = (id: string): string[] =>
    circuit.connections.flatMap(({ from, pipe }) => (pipe && from.startsWith(`${id}.`) ? [pipe.id] : []))
  const numbered = [...circuit.elements].sort((a, b) => (a.number ?? Infinity) - (b.number ?? Infinity))
  const parts = numbered.flatMap(({ id }) => [id, ...pipeBehind(id)])
  return [...new Set([...parts, ...circuit.junctions.flatMap(({ id }) => pipeBehind(id))])]
}

/** The pipes that begin or end at a part. */
function pipesAt({ circuit }: BenchData, id: string): string[] {
  return circuit.connections.flatMap(({ from, to, pipe }) =>
    pipe && (from.startsWith(`${id}.`) || to.startsWith(`${id}.`)) ? [pipe.id] : [],
  )
}

/** The faults of a part, and of the pipes at it. */
export function faultsAt(data: BenchData, id: string): BenchFault[] {
  const near = new Set([id, ...pipesAt(data, id)])
  return data.faults.filter((fault) => placesOf(data, fault).some((place) => near.has(place)))
}

/** Whether a fault answers to what was typed: its title, its other names, or where it sits. */
export function matches(data: BenchData, fault: BenchFault, typed: string): boolean {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean)
  const names = [fault.title, ...fault.alsoCalled, ...placesOf(data, fault).map((id) => labelOf(data, id))]
  const text = names.join(' ').toLowerCase()
  return words.every((word) => text.includes(word))
}
