import { prepareElimination } from './elimination.ts'
import type { Law, Loss, Net } from './net.ts'

/**
 * A net with everything worked out that does not change while its links and its fixed nodes stay the same. It also holds
 * the working space of a solve, so one solve at a time. Slots: unknown nodes come first, in the order of elimination,
 * then the fixed ones, so that no loop has to ask which is which.
 */
export interface PreparedNet {
  readonly net: Net
  /** What the net itself says, for values that a solve is not given. */
  readonly laws: readonly Law[]
  readonly firstFlows: Float64Array
  /** By node [m³/s]; undefined where nothing is taken out anywhere. */
  readonly outflows: Float64Array | undefined
  /** How many nodes have a pressure to be found. */
  readonly unknowns: number
  readonly slotOfNode: Int32Array
  readonly nodeOfSlot: Int32Array
  /** Slots of the two ends of each link. */
  readonly from: Int32Array
  readonly to: Int32Array
  /** Where the conductance between the two ends goes in the matrix. */
  readonly between: Int32Array
  /** Diagonals of all slots, entries of L column by column, and a place for what concerns fixed nodes only. */
  readonly matrix: Float64Array
  /** Places in the matrix of the first entry of each column, and one past the last. */
  readonly start: Int32Array
  /** Slot of the row of each entry, at the same place as the entry in the matrix. */
  readonly row: Int32Array
  /** Place in the matrix from which each product of two entries of one column is taken, in the order of elimination. */
  readonly target: Int32Array
  /** By slot: right side of the equations, then change of the pressures. */
  readonly right: Float64Array
  /** By slot: what comes in less what goes out. [m³/s] */
  readonly balance: Float64Array
  /** By slot. [Pa] */
  readonly pressure: Float64Array
  /** By link: 1/slope [m³/(s·Pa)], pressure that the law leaves over [Pa] and change of flow [m³/s] of the last step. */
  readonly conductance: Float64Array
  readonly rest: Float64Array
  readonly step: Float64Array
  readonly loss: Loss
}

/** Nodes that no chain of links joins to a fixed pressure. */
function adrift(net: Net): string[] {
  const links: number[][] = net.nodes.map(() => [])
  for (const link of net.links) {
    links[link.from]?.push(link.to)
    links[link.to]?.push(link.from)
  }
  const reached = net.nodes.map((node) => node.pressure !== undefined)
  const waiting = net.nodes.flatMap((_, place) => (reached[place] ? [place] : []))
  for (let place = waiting.pop(); place !== undefined; place = waiting.pop())
    for (const other of links[place] ?? [])
      if (!reached[other]) {
        reached[other] = true
        waiting.push(other)
      }
  return net.nodes.flatMap((node, place) => (reached[place] ? [] : [node.id]))
}

function refuseWrongLinks(net: Net): void {
  for (const { id, from, to } of net.links) {
    for (const [end, place] of [
      ['from', from],
      ['to', to],
    ] as const)
      if (!net.nodes[place])
        throw new RangeError(
          `Link «${id}», ${end}: ${place} is no place in the list of nodes, 0 to ${net.nodes.length - 1}.`,
        )
    if (from === to)
      throw new RangeError(`Link «${id}»: both its ends are node «${net.nodes[from]?.id}»; they must differ.`)
  }
  const without = adrift(net)
  if (without.length > 0)
    throw new RangeError(
      `No fixed pressure reaches ${without.map((id) => `«${id}»`).join(', ')}: every part of a net needs a node with a pressure.`,
    )
}

/**
 * Works out once what solves of a net have in common: the order of elimination and the pattern of its matrix.
 * @param net nodes and links [Pa, m³/s]; which of the nodes have a fixed pressure must stay the same, its value need not
 * @returns the prepared net, for solveNet
 * @throws RangeError, with the name of the part, for a link with an end that does not exist or with both ends at one
 * node, and for nodes that no fixed pressure reaches
 * @source common practice (minimum degree, symbolic factorisation)
 */
export function prepareNet(net: Net): PreparedNet {
  refuseWrongLinks(net)
  const open = net.nodes.flatMap((node, place) => (node.pressure === undefined ? [place] : []))
  const fixed = net.nodes.flatMap((node, place) => (node.pressure === undefined ? [] : [place]))
  const unknownOfNode = new Map(open.map((place, unknown) => [place, unknown]))
  const pairs = net.links.flatMap((link) => {
    const [one, other] = [unknownOfNode.get(link.from), unknownOfNode.get(link.to)]
    return one === undefined || other === undefined ? [] : [[one, other] as const]
  })
  const { order, start, row, target } = prepareElimination(open.length, pairs)
  const count = net.nodes.length
  const nodeOfSlot = Int32Array.from([...order].map((unknown) => open[unknown] ?? 0).concat(fixed))
  const slotOfNode = new Int32Array(count)
  for (const [slot, place] of nodeOfSlot.entries()) slotOfNode[place] = slot

  const from = Int32Array.from(net.links, (link) => slotOfNode[link.from] ?? 0)
  const to = Int32Array.from(net.links, (link) => slotOfNode[link.to] ?? 0)
  const unused = count + row.length
  const startInMatrix = start.map((entry) => count + entry)
  const rowInMatrix = new Int32Array(unused)
  rowInMatrix.set(row, count)
  const between = Int32Array.from(net.links, (_, link) => {
    const [one, other] = [from[link] ?? 0, to[link] ?? 0]
    const [column, below] = one < other ? [one, other] : [other, one]
    if (below >= open.length) return unused
    return rowInMatrix.indexOf(below, startInMatrix[column])
  })
  const shift = count - open.length
  return {
    net,
    laws: net.links.map((link) => link.law),
    firstFlows: Float64Array.from(net.links, (link) => link.first ?? 0),
    outflows: net.nodes.some((node) => node.outflow)
      ? Float64Array.from(net.nodes, (node) => node.outflow ?? 0)
      : undefined,
    unknowns: open.length,
    slotOfNode,
    nodeOfSlot,
    from,
    to,
    between,
    matrix: new Float64Array(unused + 1),
    start: startInMatrix,
    row: rowInMatrix,
    target: target.map((place) => (place < open.length ? place : place + shift)),
    right: new Float64Array(count),
    balance: new Float64Array(count),
    pressure: new Float64Array(count),
    conductance: new Float64Array(net.links.length),
    rest: new Float64Array(net.links.length),
    step: new Float64Array(net.links.length),
    loss: { drop: Number.NaN, slope: Number.NaN },
  }
}
