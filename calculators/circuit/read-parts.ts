import { partKinds, type Parameter, type PartKind, type PartKindId } from './part-kinds.ts'
import type { Values } from './parameters.ts'
import type { CircuitData } from './types.ts'
import type { FigureReader, Path } from './read-figures.ts'
import { wrongOrders } from './wrong-order.ts'

/** A part with its figures, before its place in the net is known. */
export interface ReadPart {
  readonly id: string
  readonly label: string
  readonly kind: PartKindId
  readonly count: number
  /** Not a number where the data gives none. */
  readonly height: number
  readonly values: Values
}

const heightLimits = { minimum: -20, maximum: 50 }

/** What the data of a part holds beside its parameters. */
const ownKeys: ReadonlySet<string> = new Set(['kind', 'id', 'label'])

function readValues(
  path: Path,
  kind: PartKind,
  given: Readonly<Record<string, string>>,
  reader: FigureReader,
): Values {
  for (const key of Object.keys(given))
    if (!ownKeys.has(key) && !Object.hasOwn(kind.parameters, key))
      reader.refuse(
        [...path, key],
        `«${key}» is no parameter of a ${kind.title.toLowerCase()}; accepted: ${Object.keys(kind.parameters).join(', ') || 'none'}`,
      )
  const entries = Object.entries(kind.parameters).map(([id, parameter]: [string, Parameter]) => {
    const text = Object.hasOwn(given, id) ? given[id] : undefined
    if (text === undefined && parameter.otherwise !== undefined) return [id, parameter.otherwise]
    return [id, reader.figure([...path, id], text, parameter.kind, parameter)]
  })
  return Object.fromEntries(entries) as Values
}

function readPart(
  path: Path,
  given: Readonly<Record<string, string>>,
  part: Omit<ReadPart, 'values'>,
  reader: FigureReader,
): ReadPart {
  const read = { ...part, values: readValues(path, partKinds[part.kind], given, reader) }
  for (const { parameter, message, accepted } of wrongOrders(read))
    reader.refuse([...path, parameter], `${message}; accepted: ${accepted}`)
  return read
}

/**
 * All parts of a circuit with their figures: elements first, then pipes.
 * @param circuit the data
 * @param reader takes the problems: an unknown kind, stray or missing parameters, figures out of range or order
 * @returns the parts that have a known kind; a pipe's height is left open, since it has two
 */
export function readParts(circuit: CircuitData, reader: FigureReader): readonly ReadPart[] {
  const elements = circuit.elements.flatMap((element, index): ReadPart[] => {
    const path = ['elements', index]
    const { kind } = element.model
    if (!Object.hasOwn(partKinds, kind)) {
      reader.refuse(
        [...path, 'model', 'kind'],
        `«${String(kind)}» is no kind of part; accepted: ${Object.keys(partKinds).join(', ')}`,
      )
      return []
    }
    const { id, label, count } = element
    const height =
      element.height === undefined
        ? Number.NaN
        : reader.figure([...path, 'height'], element.height, 'length', heightLimits)
    return [readPart([...path, 'model'], element.model, { id, label, kind, count, height }, reader)]
  })
  const pipes = circuit.connections.flatMap(({ pipe }, index): ReadPart[] => {
    if (!pipe) return []
    const { id, label } = pipe
    const part = { id, label, kind: 'line', count: 1, height: Number.NaN } as const
    return [readPart(['connections', index, 'pipe'], pipe as Readonly<Record<string, string>>, part, reader)]
  })
  return [...elements, ...pipes]
}
