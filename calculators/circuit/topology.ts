import type { CircuitModel, ModelLink } from './model.ts'

/** What follows from the drawn ways alone, and stays while the circuit does. */
export interface Topology {
  /** All nodes, those that others feed after them where the drawing goes one way. */
  readonly order: readonly number[]
  /** By node: its place in that order. */
  readonly rank: readonly number[]
  /** Fuel goes round and round in a loop, past a vented place. */
  readonly loops: boolean
  /** Place of the mixing column in the list of parts, -1 without one; there is one at most. */
  readonly column: number
  /** Nodes whose pressure a tank or the air holds. */
  readonly fixed: readonly number[]
  /** Links at each node. */
  readonly at: readonly (readonly number[])[]
  /** By link: it lies between a tank and the first pump. */
  readonly onSuction: readonly boolean[]
  /** By link of a pump: the links from which it draws, back to a tank, another pump or a vented place. */
  readonly drawsThrough: ReadonlyMap<number, readonly number[]>
  /** All of those links, whose answer to the flow the pumps' laws ask for. */
  readonly drawnLinks: readonly number[]
  /** Links of pumps that draw from a vented place, whose pressure answers to all that the loop does. */
  readonly loopPumps: readonly number[]
  /** By cylinder: link back to the return header, and node of the injector's inlet. */
  readonly passages: readonly number[]
  readonly inlets: readonly number[]
  /** By node: the way of the fuel through the injectors leads through it. */
  readonly behindInjectors: readonly boolean[]
  /** The part that gathers what comes back from the injectors: place in the list of parts. */
  readonly returnHeader: number
  /** By part: the node at which a hole in its wall lies. */
  readonly holeNode: readonly number[]
}

const isPump = (link: ModelLink): boolean => link.role === 'pump'

function drawnOrder(model: CircuitModel, at: readonly (readonly number[])[]): number[] {
  const done = new Set<number>()
  const backwards: number[] = []
  const visit = (node: number): void => {
    done.add(node)
    for (const place of at[node] ?? []) {
      const link = model.links[place]
      if (link?.from === node && !done.has(link.to)) visit(link.to)
    }
    backwards.push(node)
  }
  const mouths = model.nodes.flatMap(({ mouth }, node) => (mouth ? [node] : []))
  for (const node of mouths) if (!done.has(node)) visit(node)
  for (const node of model.nodes.keys()) if (!done.has(node)) visit(node)
  return backwards.reverse()
}

/** Links from the tanks' mouths to the first pumps. */
function suctionLinks(model: CircuitModel, at: readonly (readonly number[])[]): boolean[] {
  const found = model.links.map(() => false)
  const open = model.nodes.flatMap(({ mouth }, node) => (mouth ? [node] : []))
  for (let node = open.pop(); node !== undefined; node = open.pop())
    for (const place of at[node] ?? []) {
      const link = model.links[place]
      if (link?.from !== node || found[place] || isPump(link)) continue
      found[place] = true
      open.push(link.to)
    }
  return found
}

function drawnThrough(model: CircuitModel, at: readonly (readonly number[])[], pump: ModelLink): number[] {
  const through: number[] = []
  const seen = new Set<number>()
  for (let node = pump.from; !seen.has(node);) {
    seen.add(node)
    const here = model.nodes[node]
    if (here?.fixed !== undefined || here?.vented) break
    const next = (at[node] ?? []).find((place) => {
      const link = model.links[place]
      return link?.to === node && !isPump(link) && link.role !== 'spring-valve'
    })
    const link = next === undefined ? undefined : model.links[next]
    if (!link || next === undefined) break
    through.push(next)
    node = link.from
  }
  return through
}

/** Nodes that fuel reaches from an injector's way back, but through a pump. */
function behindInjectors({ nodes, links }: CircuitModel): boolean[] {
  const reached = nodes.map(() => false)
  const open = links.flatMap(({ role, to }) => (role === 'passage' ? [to] : []))
  for (const node of open) reached[node] = true
  for (let node = open.pop(); node !== undefined; node = open.pop())
    for (const { from, to, role } of links)
      if (from === node && role !== 'pump' && !reached[to]) {
        reached[to] = true
        open.push(to)
      }
  return reached
}

/**
 * What follows from the ways of a circuit.
 * @param model of the circuit
 * @returns order of the nodes, links at each, suction side
 */
export function topologyOf(model: CircuitModel): Topology {
  const at: number[][] = model.nodes.map(() => [])
  model.links.forEach(({ from, to }, place) => {
    at[from]?.push(place)
    at[to]?.push(place)
  })
  const drawsThrough = new Map(
    model.links.flatMap((link, place): [number, number[]][] =>
      isPump(link) ? [[place, drawnThrough(model, at, link)]] : [],
    ),
  )
  // A shaft seal and a glass's gasket lie before what they belong to; a joint or crack of the rest is taken behind.
  const holeNode = model.parts.map(({ kind }, part) => {
    const ends = model.ends[part]
    return (kind.endsWith('-pump') || kind === 'glass' ? ends?.in : ends?.out) ?? -1
  })
  const order = drawnOrder(model, at)
  const rank = model.nodes.map(() => 0)
  for (const [place, node] of order.entries()) rank[node] = place
  return {
    order,
    rank,
    loops: model.nodes.some(({ vented }) => vented),
    column: model.parts.findIndex(({ kind }) => kind === 'mixing-column'),
    fixed: model.nodes.flatMap((node, place) => (node.fixed === undefined ? [] : [place])),
    at,
    onSuction: suctionLinks(model, at),
    drawsThrough,
    drawnLinks: [...new Set([...drawsThrough.values()].flat())],
    loopPumps: [...drawsThrough].flatMap(([pump, through]) => {
      const last = through.at(-1)
      const node = last === undefined ? model.links[pump]?.from : model.links[last]?.from
      return node !== undefined && model.nodes[node]?.vented ? [pump] : []
    }),
    passages: model.links.flatMap(({ role }, place) => (role === 'passage' ? [place] : [])),
    inlets: model.links.flatMap(({ role, from }) => (role === 'metering' ? [from] : [])),
    behindInjectors: behindInjectors(model),
    returnHeader: model.ends.findIndex((ends) =>
      ends?.links.some((link) => model.links[link]?.id.startsWith('return-')),
    ),
    holeNode,
  }
}
