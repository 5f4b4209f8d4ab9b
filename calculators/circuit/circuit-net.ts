import { prepareNet, type Law, type Link, type PreparedNet } from '../hydraulics/network/index.ts'
import type { CircuitModel } from './model.ts'
import type { Situation } from './situation.ts'

/** The net of a circuit with its holes to the outside. */
export interface CircuitNetwork {
  readonly net: PreparedNet
  /** Parts with a hole, in the order of the links that come after those of the model. */
  readonly holes: readonly number[]
}

const networks = new WeakMap<CircuitModel, Map<string, CircuitNetwork>>()

const unset: Law = () => {
  throw new RangeError('A law of the net was used before it was made.')
}

/**
 * The prepared net of a circuit; one for each set of holes, kept for the next state.
 * @param situation of the state
 * @returns the net, its last node being the outside where there are holes
 */
export function networkOf(situation: Situation): CircuitNetwork {
  const { model, parameters, topology } = situation
  const holes = model.parts.flatMap((_, place) =>
    (parameters.values[place]?.airHole ?? 0) > 0 && (topology.holeNode[place] ?? -1) >= 0 ? [place] : [],
  )
  const known = networks.get(model) ?? new Map<string, CircuitNetwork>()
  networks.set(model, known)
  const key = holes.join(' ')
  const before = known.get(key)
  if (before) return before
  const nodes = model.nodes.map(({ id, fixed }) => (fixed === undefined ? { id } : { id, pressure: 0 }))
  const links: Link[] = model.links.map(({ id, from, to }) => ({ id, from, to, law: unset }))
  for (const part of holes)
    links.push({
      id: `${model.parts[part]?.id}-hole`,
      from: topology.holeNode[part] ?? 0,
      to: nodes.length,
      law: unset,
    })
  const net = prepareNet({
    nodes: holes.length > 0 ? [...nodes, { id: 'outside', pressure: 0 }] : nodes,
    links,
  })
  const network = { net, holes }
  known.set(key, network)
  return network
}
