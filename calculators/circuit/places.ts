import type { FigureReader } from './read-figures.ts'
import type { ReadPart } from './read-parts.ts'
import type { CircuitData } from './types.ts'
import { splitEnd } from './validate.ts'

export const gaugeKinds: ReadonlySet<string> = new Set([
  'pressure-gauge',
  'vacuum-gauge',
  'drop-gauge',
  'thermometer',
  'viscometer',
])

/** Heights closer than this are one. [m] */
const SAME_HEIGHT = 1e-3

/** Ends of lines that are one place, since nothing but a tee or a union lies between them. */
export interface Places {
  /** Name of the place of an end such as 'supply-pump.in'. */
  readonly of: (end: string) => string
  /** All ends, by the name of their place. */
  readonly members: ReadonlyMap<string, readonly string[]>
}

function unions(): {
  readonly of: (end: string) => string
  readonly join: (one: string, other: string) => void
} {
  const parent = new Map<string, string>()
  const of = (end: string): string => {
    const above = parent.get(end)
    return above === undefined || above === end ? end : of(above)
  }
  return { of, join: (one, other) => void parent.set(of(one), of(other)) }
}

/**
 * The places of a circuit: ends joined by connections without a pipe, all sides of a junction, all ports of what has
 * no resistance of its own.
 * @param circuit the data
 * @param parts its elements, as read
 * @param bundles ends that stand for one line to each cylinder; they are no place
 * @returns the places
 */
export function findPlaces(
  circuit: CircuitData,
  parts: ReadonlyMap<string, ReadPart>,
  bundles: ReadonlySet<string>,
): Places {
  const { of, join } = unions()
  const ends = new Set<string>()
  for (const { from, to, line, pipe } of circuit.connections) {
    if (line === 'shaft' || bundles.has(from) || bundles.has(to)) continue
    ends.add(from).add(to)
    if (!pipe) join(from, to)
  }
  const whole = new Map<string, string>()
  for (const end of ends) {
    const [id, port] = splitEnd(end)
    const kind = parts.get(id)?.kind
    const open =
      kind === undefined || kind === 'mixing-column' || (gaugeKinds.has(kind) && kind !== 'drop-gauge')
    if (!open || port === 'high' || port === 'low') continue
    const first = whole.get(id)
    if (first === undefined) whole.set(id, end)
    else join(end, first)
  }
  const members = new Map<string, string[]>()
  for (const end of ends) {
    const place = of(end)
    members.set(place, [...(members.get(place) ?? []), end])
  }
  return { of, members }
}

/**
 * Height of each place, from the parts and junctions that meet there; gauges and tanks have heights of their own.
 * @param circuit the data
 * @param parts its elements, as read
 * @param places from findPlaces
 * @param reader takes the problems: two heights at one place, or none
 * @returns height by name of the place [m]; none for a place that is only the end of a pipe at a tank
 */
export function placeHeights(
  circuit: CircuitData,
  parts: ReadonlyMap<string, ReadPart>,
  places: Places,
  reader: FigureReader,
): ReadonlyMap<string, number> {
  const junctions = new Map(
    circuit.junctions.map(({ id, height }, index) => [
      id,
      reader.figure(['junctions', index, 'height'], height, 'length', { minimum: -20, maximum: 50 }),
    ]),
  )
  const heights = new Map<string, number>()
  const givenBy = new Map<string, string>()
  for (const [place, ends] of places.members)
    for (const end of ends) {
      const [id] = splitEnd(end)
      const part = parts.get(id)
      if (part && (part.kind === 'tank' || gaugeKinds.has(part.kind))) continue
      const height = junctions.get(id) ?? part?.height ?? Number.NaN
      const known = heights.get(place)
      if (Number.isNaN(height)) {
        const at = circuit.elements.findIndex((element) => element.id === id)
        if (at >= 0 && circuit.elements[at]?.height === undefined)
          reader.refuse(
            ['elements', at, 'height'],
            `${part?.label ?? id} has no height; accepted: its height above the floor of the tank, such as «0.8 m»`,
          )
      } else if (known === undefined) {
        heights.set(place, height)
        givenBy.set(place, end)
      } else if (Math.abs(known - height) > SAME_HEIGHT) {
        const other = givenBy.get(place) ?? ''
        const at = circuit.connections.findIndex(({ from, to }) => from === end || to === end)
        reader.refuse(
          ['connections', at],
          `${splitEnd(other)[0]} lies at ${known} m and ${id} at ${height} m, joined without a pipe; give the line a pipe, or both one height`,
        )
      }
    }
  return heights
}
