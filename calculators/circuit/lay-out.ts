import { lineFlows } from './line-flows.ts'
import type { CircuitModel, Ends, ModelLink, ModelNode, ModelPart, Role } from './model.ts'
import { findPlaces, gaugeKinds, placeHeights } from './places.ts'
import type { FigureReader } from './read-figures.ts'
import type { ReadPart } from './read-parts.ts'
import type { PartKindId } from './part-kinds.ts'
import type { CircuitData } from './types.ts'
import { splitEnd } from './validate.ts'

type LaidOut = Pick<
  CircuitModel,
  'parts' | 'nodes' | 'links' | 'ends' | 'connections' | 'injectors' | 'cylinders'
>

/** Parts with one way in and one way out, and what that way is. */
const throughRoles: Readonly<Partial<Record<PartKindId, Role>>> = {
  filter: 'filter',
  'motor-pump': 'pump',
  'engine-pump': 'pump',
  'spring-valve': 'spring-valve',
  'thermostat-heater': 'filter',
  'viscosity-heater': 'filter',
  glass: 'glass',
  line: 'pipe',
  'check-valve': 'check-valve',
  'stop-valve': 'stop-valve',
}

/** The headers at the injectors: every line of theirs is one to each cylinder. */
function headersOf(
  circuit: CircuitData,
  injectors: string,
): { supply?: string; back?: string; bundles: Set<string> } {
  const bundles = new Set<string>()
  let [supply, back]: (string | undefined)[] = []
  for (const { from, to } of circuit.connections) {
    if (to === `${injectors}.in`) supply = splitEnd(from)[0]
    else if (from === `${injectors}.out`) back = splitEnd(to)[0]
    else continue
    bundles.add(from).add(to)
  }
  return { ...(supply ? { supply } : {}), ...(back ? { back } : {}), bundles }
}

/**
 * Nodes and links of a circuit: a node for each place, a link for each way through a part, a stretch of header between
 * two branches, and for each cylinder an inlet strainer, a passage back and what is metered.
 * @param circuit the data
 * @param parts from readParts
 * @param reader takes the problems
 * @returns the layout; undefined where a problem leaves none
 */
export function layOut(
  circuit: CircuitData,
  parts: readonly ReadPart[],
  reader: FigureReader,
): LaidOut | undefined {
  const byId = new Map(parts.map((part) => [part.id, part]))
  const placeOfPart = new Map(parts.map((part, place) => [part.id, place]))
  const ofInjectors = parts.filter((part) => part.kind === 'injectors')
  const injectors = ofInjectors[0]
  if (!injectors || ofInjectors.length > 1) {
    reader.refuse(['elements'], `${ofInjectors.length} parts of kind injectors; accepted: one`)
    return undefined
  }
  const { supply, back, bundles } = headersOf(circuit, injectors.id)
  if (byId.get(supply ?? '')?.kind !== 'header' || byId.get(back ?? '')?.kind !== 'header') {
    const at = circuit.elements.findIndex(({ id }) => id === injectors.id)
    reader.refuse(
      ['elements', at],
      `${injectors.label}: accepted is a line from a header to ${injectors.id}.in and one from ${injectors.id}.out to a header`,
    )
    return undefined
  }
  const cylinders = injectors.count
  const places = findPlaces(circuit, byId, bundles)
  const heights = placeHeights(circuit, byId, places, reader)
  if (reader.problems.length > 0) return undefined

  const nodes: ModelNode[] = []
  const addNode = (node: ModelNode): number => nodes.push(node) - 1
  const nodeOfPlace = new Map<string, number>()
  for (const [place, ends] of places.members) {
    const tankEnd = ends.find((end) => byId.get(splitEnd(end)[0])?.kind === 'tank')
    const tank = tankEnd === undefined ? undefined : byId.get(splitEnd(tankEnd)[0])
    const mouth = tankEnd !== undefined && splitEnd(tankEnd)[1] === 'out'
    const owner = ends
      .map((end) => byId.get(splitEnd(end)[0]))
      .find((part) => part && !gaugeKinds.has(part.kind))
    const ofTank = (mouth ? tank?.values.mouth : tank?.values.depth) ?? 0
    nodeOfPlace.set(
      place,
      addNode({
        id: ends[0] ?? place,
        label: owner?.label ?? splitEnd(ends[0] ?? place)[0],
        height: heights.get(place) ?? ofTank,
        ...(tank ? { fixed: placeOfPart.get(tank.id) ?? 0, mouth } : {}),
        ...(ends.some((end) => byId.get(splitEnd(end)[0])?.kind === 'mixing-column') ? { vented: true } : {}),
      }),
    )
  }
  const nodeAt = (end: string): number => nodeOfPlace.get(places.of(end)) ?? -1

  const links: ModelLink[] = []
  const addLink = (link: Omit<ModelLink, 'rise' | 'share' | 'narrow'>, share = 1, narrow = true): number => {
    const rise = (nodes[link.to]?.height ?? 0) - (nodes[link.from]?.height ?? 0)
    return links.push({ ...link, rise, share, narrow }) - 1
  }
  const ends: (Ends | undefined)[] = parts.map(() => undefined)
  for (const [place, part] of parts.entries()) {
    const role = throughRoles[part.kind]
    const at = circuit.elements.findIndex(({ id }) => id === part.id)
    const plainHeader = part.kind === 'header' && part.id !== supply && part.id !== back
    if ((!role && !plainHeader) || at < 0) continue
    const [from, to] = [nodeAt(`${part.id}.in`), nodeAt(`${part.id}.out`)]
    if (from < 0 || to < 0 || from === to) {
      reader.refuse(
        ['elements', at],
        `${part.label} has no way through: its in and its out need places of their own`,
      )
      continue
    }
    const link = addLink({ id: part.id, role: role ?? 'segment', part: place, from, to, place: 0 })
    ends[place] = { in: from, out: to, links: [link] }
  }
  const { inward, outward } = layCylinders()
  const drawn = circuit.connections.map(({ from, to, line, pipe }) => {
    if (line === 'shaft' || line === 'gauge') return undefined
    const [sending, taking] = [from, to].map((side) => ends[placeOfPart.get(splitEnd(side)[0]) ?? -1])
    if (bundles.has(from)) {
      const way = splitEnd(to)[0] === injectors.id ? inward : outward
      return { from: sending?.out ?? 0, to: taking?.in ?? 0, link: way[Math.floor(cylinders / 2)] ?? 0 }
    }
    const [start, end] = [nodeAt(from), nodeAt(to)]
    if (!pipe) {
      const ofPart = splitEnd(from)[1] === 'out' ? (sending ?? taking) : taking
      const link = ofPart?.links[0]
      return { from: start, to: end, ...(link === undefined ? {} : { link }) }
    }
    const part = placeOfPart.get(pipe.id) ?? 0
    const link = addLink({ id: pipe.id, role: 'pipe', part, from: start, to: end, place: 0 })
    ends[part] = { in: start, out: end, links: [link] }
    return { from: start, to: end, link }
  })
  const flows = lineFlows(
    circuit,
    drawn.map((connection) => connection?.link),
  )
  const connections = drawn.map(
    (connection, index) =>
      connection && { from: connection.from, to: connection.to, flow: flows[index] ?? [] },
  )
  return {
    parts: parts.map(withTappings),
    nodes,
    links,
    ends,
    connections,
    injectors: placeOfPart.get(injectors.id) ?? 0,
    cylinders,
  }

  function layCylinders(): { readonly inward: readonly number[]; readonly outward: readonly number[] } {
    const [supplyPart, backPart, own] = [supply, back, injectors?.id].map(
      (id) => placeOfPart.get(id ?? '') ?? 0,
    )
    const height = injectors?.height ?? 0
    const label = injectors?.label ?? ''
    const branch = (part: number | undefined, place: number): number =>
      addNode({
        id: `${parts[part ?? 0]?.id}-${place + 1}`,
        label: parts[part ?? 0]?.label ?? '',
        height: parts[part ?? 0]?.height ?? height,
      })
    const cylinder = addNode({ id: 'cylinders', label, height, fixed: 'cylinders' })
    const range = Array.from({ length: cylinders }, (_, place) => place)
    const branches = range.map((place) => branch(supplyPart, place))
    const inlets = range.map((place) => addNode({ id: `injector-${place + 1}`, label, height }))
    const returns = range.map((place) => branch(backPart, place))
    const run = (id: string, part: number, through: readonly number[], narrowAt: number): number[] =>
      through.slice(1).map((to, place) => {
        const from = through[place] ?? 0
        const link = { id: `${id}-${place + 1}`, role: 'segment', part, from, to, place } as const
        return addLink(link, 1 / cylinders, place === narrowAt)
      })
    const ahead = run('supply', supplyPart ?? 0, [nodeAt(`${supply}.in`), ...branches], 0)
    const behind = run('return', backPart ?? 0, [...returns, nodeAt(`${back}.out`)], cylinders - 1)
    const chain = (role: Role, from: readonly number[], to: readonly number[]): number[] =>
      range.map((place) =>
        addLink({
          id: `${role}-${place + 1}`,
          role,
          part: own ?? 0,
          from: from[place] ?? 0,
          to: to[place] ?? 0,
          place,
        }),
      )
    const strainers = chain('inlet-strainer', branches, inlets)
    const passages = chain('passage', inlets, returns)
    chain(
      'metering',
      inlets,
      range.map(() => cylinder),
    )
    const middle = (list: readonly number[]): number => list[Math.floor((list.length - 1) / 2)] ?? 0
    ends[supplyPart ?? 0] = { in: nodeAt(`${supply}.in`), out: middle(branches), links: ahead.slice(0, 1) }
    ends[backPart ?? 0] = { in: middle(returns), out: nodeAt(`${back}.out`), links: behind.slice(-1) }
    ends[own ?? 0] = { in: middle(branches), out: middle(returns), links: strainers }
    return { inward: strainers, outward: passages }
  }

  function withTappings(part: ReadPart): ModelPart {
    const height = Number.isNaN(part.height) ? 0 : part.height
    const shaft = circuit.connections.find(
      ({ from, to, line }) =>
        line === 'shaft' && (splitEnd(from)[0] === part.id || splitEnd(to)[0] === part.id),
    )
    const other = shaft && [shaft.from, shaft.to].map((end) => splitEnd(end)[0]).find((id) => id !== part.id)
    const partner = other === undefined ? undefined : placeOfPart.get(other)
    const joined = partner === undefined ? {} : { shaft: partner }
    if (!gaugeKinds.has(part.kind)) return { ...part, height, tappings: [], ...joined }
    const own = circuit.connections.flatMap(({ from, to }) =>
      [from, to].filter((end) => splitEnd(end)[0] === part.id),
    )
    const wanted = part.kind === 'drop-gauge' ? [`${part.id}.high`, `${part.id}.low`] : own.slice(0, 1)
    return { ...part, height, tappings: wanted.map(nodeAt).filter((node) => node >= 0), ...joined }
  }
}
