import { changeFlows, changePressures, evaluate, setUp, type Pass } from './iteration.ts'
import type { Law } from './net.ts'
import type { PreparedNet } from './prepare.ts'
import { shortenStep } from './shorten-step.ts'

/** Values of now, in the order of the net. What is left out is taken from the net itself. */
export interface NetValues {
  readonly laws?: readonly Law[]
  /** Flow taken out at each node. [m³/s] */
  readonly outflows?: ArrayLike<number>
  /** Pressure of each node [Pa]; only those of fixed nodes are read. */
  readonly pressures?: ArrayLike<number>
}

export interface SolveOptions {
  /**
   * Converged when no flow is off by more than this share of the largest flow [-], or the pressures at the two ends of
   * those that are agree with the law to rounding. Default 1e-9.
   */
  readonly tolerance?: number
  /** Default 100. */
  readonly mostIterations?: number
  /** Flows to begin with, by link [m³/s]: those of the last solution. Default: the first flows of the links, or none. */
  readonly start?: Float64Array
  /**
   * Arrays that take the solution, those of an older one that nobody reads any more, even the one to start from.
   * Default: new ones, which cost a small net a fifth of its solve.
   */
  readonly into?: Pick<NetSolution, 'pressures' | 'flows'> | undefined
}

export interface NetSolution {
  /** By node. [Pa] */
  readonly pressures: Float64Array
  /** By link. [m³/s] */
  readonly flows: Float64Array
  readonly converged: boolean
  /** Linear solves. */
  readonly iterations: number
  /** Largest imbalance of a node or change of flow that the law of a link still asks for. [m³/s] */
  readonly residual: number
  /** Id of the link or node with the largest. */
  readonly worst: string
}

const TOLERANCE = 1e-9
const MOST_ITERATIONS = 100

/** Flows this near are alike whatever the largest flow: about a fifth of a drop in a day. [m³/s] */
const LEAST_FLOW = 1e-13

/** Pressures at the two ends of a link agree with its drop to rounding below this share of them. [-] */
const LAST_DIGITS = 4 * Number.EPSILON
/** Iteration from which rounding is looked for in what is still off. */
const LAST_DIGITS_FROM = 8

interface Imbalance {
  /** [m³/s] */
  readonly size: number
  readonly slot: number
}

function largestImbalance(
  prepared: PreparedNet,
  flows: Float64Array,
  outflows: ArrayLike<number> | undefined,
): Imbalance {
  const { from, to, balance, slotOfNode, unknowns } = prepared
  if (outflows === undefined) balance.fill(0)
  else
    for (let node = 0; node < slotOfNode.length; node++)
      balance[slotOfNode[node] as number] = -(outflows[node] as number)
  for (let link = 0; link < from.length; link++) {
    const [one, other, flow] = [from[link] as number, to[link] as number, flows[link] as number]
    balance[one] = (balance[one] as number) - flow
    balance[other] = (balance[other] as number) + flow
  }
  let [size, worst] = [0, 0]
  for (let slot = 0; slot < unknowns; slot++) {
    const off = Math.abs(balance[slot] as number)
    if (off > size) [size, worst] = [off, slot]
  }
  return { size, slot: worst }
}

/**
 * Whether flows are off by more than is allowed only in links whose pressures agree to their last digits: wide ones, in
 * a net with pressures so high that no more can be told.
 */
function atLastDigits(prepared: PreparedNet, allowed: number, iterations: number): boolean {
  if (iterations < LAST_DIGITS_FROM) return false
  const { from, to, pressure, conductance, rest } = prepared
  for (let link = 0; link < rest.length; link++) {
    const off = Math.abs(rest[link] as number)
    const ends =
      Math.abs(pressure[from[link] as number] as number) + Math.abs(pressure[to[link] as number] as number)
    if (!(off * (conductance[link] as number) <= allowed || off <= LAST_DIGITS * ends)) return false
  }
  return true
}

function largestChange({ conductance, rest }: PreparedNet): { size: number; link: number } {
  let [size, worst] = [0, 0]
  for (let link = 0; link < rest.length; link++) {
    const change = Math.abs((conductance[link] as number) * (rest[link] as number))
    // A law without a finite value is the worst of all.
    if (change > size || Number.isNaN(change))
      [size, worst] = [Number.isNaN(change) ? Number.MAX_VALUE : change, link]
  }
  return { size, link: worst }
}

function setPressures(prepared: PreparedNet, pressures: ArrayLike<number> | undefined): void {
  const { net, unknowns, pressure } = prepared
  for (let slot = unknowns; slot < pressure.length; slot++) {
    const place = prepared.nodeOfSlot[slot] as number
    const value = pressures?.[place] ?? net.nodes[place]?.pressure ?? 0
    if (!Number.isFinite(value))
      throw new RangeError(
        `Pressure of node «${net.nodes[place]?.id}»: ${value} is not a finite number of pascals.`,
      )
    pressure[slot] = value
  }
  // Any value serves; a near one costs fewer digits.
  pressure.fill(pressure[unknowns] ?? 0, 0, unknowns)
}

function setFlows(prepared: PreparedNet, start: Float64Array | undefined, flows: Float64Array): void {
  const from = start ?? prepared.firstFlows
  for (let link = 0; link < flows.length; link++)
    if (!Number.isFinite((flows[link] = from[link] as number)))
      throw new RangeError(
        `First flow of link «${prepared.net.links[link]?.id}»: ${flows[link]} is not a finite number of m³/s.`,
      )
}

function refuseWrongOutflows({ net }: PreparedNet, outflows: ArrayLike<number> | undefined): void {
  if (outflows === undefined) return
  for (let node = 0; node < net.nodes.length; node++)
    if (!Number.isFinite(outflows[node]))
      throw new RangeError(
        `Outflow of node «${net.nodes[node]?.id}»: ${outflows[node]} is not a finite number of m³/s.`,
      )
}

function readPressures(prepared: PreparedNet, pressures: Float64Array): void {
  const { slotOfNode, unknowns, pressure } = prepared
  for (let node = 0; node < pressures.length; node++) {
    const found = pressure[slotOfNode[node] as number] as number
    pressures[node] = Number.isFinite(found) ? found : (pressure[unknowns] as number)
  }
}

/**
 * Pressures of all nodes and flows of all links: Newton's method on both together, whose steps are shortened where a
 * full one would overshoot.
 * @param prepared from prepareNet; its working space is used, so one solve at a time
 * @param values laws, outflows [m³/s] and fixed pressures [Pa] of now
 * @param options tolerance [-], most iterations [-], flows to start with [m³/s], arrays to write into
 * @returns pressures [Pa] and flows [m³/s], always finite; when not converged, the last ones, which mean nothing, with
 * the size and the place of what is still off
 * @throws RangeError, with the name of the part, for a fixed pressure, an outflow or a first flow that is not finite
 * @source common practice (global gradient form of Todini and Pilati)
 */
export function solveNet(
  prepared: PreparedNet,
  values: NetValues = {},
  options: SolveOptions = {},
): NetSolution {
  const { net } = prepared
  const laws = values.laws ?? prepared.laws
  const outflows = values.outflows ?? prepared.outflows
  const tolerance = options.tolerance ?? TOLERANCE
  const most = options.mostIterations ?? MOST_ITERATIONS
  const { pressures, flows } = options.into ?? {
    pressures: new Float64Array(net.nodes.length),
    flows: new Float64Array(net.links.length),
  }
  setFlows(prepared, options.start, flows)
  refuseWrongOutflows(prepared, outflows)
  setPressures(prepared, values.pressures)
  const pass: Pass = { along: 0, change: 0, flow: 0, descent: 0 }

  prepared.step.fill(0)
  let finite = evaluate(prepared, laws, flows, pass)
  let iterations = 0
  let balanced = false
  let converged = false
  let loose: number | undefined
  let imbalance: Imbalance | undefined
  while (finite && !converged && iterations < most) {
    setUp(prepared, flows, outflows)
    loose = changePressures(prepared)
    if (loose !== undefined) break
    changeFlows(prepared, flows, pass)
    iterations++
    // However small the step: behind a kink the law of a link may be another, so the laws are always asked again.
    finite = evaluate(prepared, laws, flows, pass)
    // The first whole step balances the nodes, whatever it takes; only from there on does the energy tell how far to go.
    if (!finite || (balanced && pass.along > 0)) {
      const share = shortenStep(prepared, laws, flows, pass, balanced, iterations)
      finite = share > 0
      balanced ||= share === 1
    } else balanced = true
    const allowed = Math.max(tolerance * pass.flow, LEAST_FLOW)
    if (finite && (pass.change <= allowed || atLastDigits(prepared, allowed, iterations))) {
      imbalance = largestImbalance(prepared, flows, outflows)
      converged = imbalance.size <= allowed
    }
  }

  const change = largestChange(prepared)
  if (!converged) imbalance = largestImbalance(prepared, flows, outflows)
  const unbalanced = imbalance?.size ?? 0
  const atNode = loose ?? (unbalanced > change.size ? imbalance?.slot : undefined)
  const worst =
    atNode === undefined ? net.links[change.link] : net.nodes[prepared.nodeOfSlot[atNode] as number]
  readPressures(prepared, pressures)
  return {
    pressures,
    flows,
    converged,
    iterations,
    residual: Math.max(change.size, unbalanced),
    worst: worst?.id ?? '',
  }
}
