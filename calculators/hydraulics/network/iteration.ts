import type { Law } from './net.ts'
import type { PreparedNet } from './prepare.ts'

// The inner loops. Every index comes from prepareNet and lies inside its array, hence `as number` in place of a check
// that would cost as much as the arithmetic.

/**
 * Slopes below this count as this. [Pa·s/m³] One pascal at a litre a second: far below any part of a fuel circuit, and
 * enough to keep the equations of a net well conditioned where a law is flat at no flow.
 */
const LEAST_SLOPE = 1e3

/** What the passes over the links found; written in place. */
export interface Pass {
  /** Derivative of the net's energy along the last step; falls to 0 where the step should end. [W] */
  along: number
  /** Largest change of a flow that the law of its link still asks for. [m³/s] */
  change: number
  /** Largest flow. [m³/s] */
  flow: number
  /** How steeply the net's energy falls at the start of the last step, if the flows were balanced there. [W] */
  descent: number
}

/**
 * Evaluates all laws at the flows.
 * @param prepared from prepareNet; rest and conductance are written
 * @param laws one for each link, from Law
 * @param flows by link [m³/s]
 * @param pass along, change and flow are filled in, from Pass
 * @returns whether all laws gave finite numbers
 * @source common practice (global gradient form of Todini and Pilati)
 */
export function evaluate(
  prepared: PreparedNet,
  laws: readonly Law[],
  flows: Float64Array,
  pass: Pass,
): boolean {
  const { from, to, pressure, conductance, rest, step, loss } = prepared
  let along = 0
  let mostChange = 0
  let mostFlow = 0
  for (let link = 0; link < from.length; link++) {
    const flow = flows[link] as number
    ;(laws[link] as Law)(flow, loss)
    const conducts = 1 / (loss.slope > LEAST_SLOPE ? loss.slope : LEAST_SLOPE)
    const left =
      (pressure[from[link] as number] as number) - (pressure[to[link] as number] as number) - loss.drop
    along -= left * (step[link] as number)
    const change = Math.abs(conducts * left)
    if (change > mostChange) mostChange = change
    const size = Math.abs(flow)
    if (size > mostFlow) mostFlow = size
    rest[link] = left
    conductance[link] = conducts
  }
  pass.along = along
  pass.change = mostChange
  pass.flow = mostFlow
  // One that is not finite makes the sum so.
  return Number.isFinite(along)
}

/**
 * Sets up the equations for the change of the pressures.
 * @param prepared from prepareNet, after evaluate; matrix and right side are written
 * @param flows by link [m³/s]
 * @param outflows by node [m³/s]; undefined for none
 * @returns nothing
 * @source common practice (global gradient form of Todini and Pilati)
 */
export function setUp(
  prepared: PreparedNet,
  flows: Float64Array,
  outflows: ArrayLike<number> | undefined,
): void {
  const { from, to, between, matrix, right, conductance, rest, slotOfNode } = prepared
  matrix.fill(0)
  if (outflows === undefined) right.fill(0)
  else
    for (let node = 0; node < slotOfNode.length; node++)
      right[slotOfNode[node] as number] = -(outflows[node] as number)
  for (let link = 0; link < from.length; link++) {
    const conducts = conductance[link] as number
    const wanted = (flows[link] as number) + conducts * (rest[link] as number)
    const one = from[link] as number
    const other = to[link] as number
    const off = between[link] as number
    matrix[one] = (matrix[one] as number) + conducts
    matrix[other] = (matrix[other] as number) + conducts
    matrix[off] = (matrix[off] as number) - conducts
    right[one] = (right[one] as number) - wanted
    right[other] = (right[other] as number) + wanted
  }
}

/**
 * Solves the equations by L·D·Lᵀ and adds the changes to the pressures.
 * @param prepared from prepareNet, after setUp
 * @returns undefined, or the slot of a node that nothing holds
 * @source common practice (right-looking factorisation with the forward substitution in it)
 */
export function changePressures(prepared: PreparedNet): number | undefined {
  const { unknowns, start, row, target, matrix, right, pressure } = prepared
  let product = 0
  for (let k = 0; k < unknowns; k++) {
    const pivot = matrix[k] as number
    if (!(pivot > 0 && pivot < Infinity)) return k
    const inverse = 1 / pivot
    const value = right[k] as number
    const end = start[k + 1] as number
    for (let i = start[k] as number; i < end; i++) {
      const scaled = (matrix[i] as number) * inverse
      const below = row[i] as number
      right[below] = (right[below] as number) - scaled * value
      for (let j = i; j < end; j++) {
        const place = target[product++] as number
        matrix[place] = (matrix[place] as number) - scaled * (matrix[j] as number)
      }
      matrix[i] = scaled
    }
    right[k] = value * inverse
  }
  right.fill(0, unknowns)
  for (let k = unknowns - 1; k >= 0; k--) {
    let value = right[k] as number
    const end = start[k + 1] as number
    for (let i = start[k] as number; i < end; i++)
      value -= (matrix[i] as number) * (right[row[i] as number] as number)
    right[k] = value
    pressure[k] = (pressure[k] as number) + value
  }
  return undefined
}

/**
 * Changes the flows to what the new pressures drive through the tangents of the laws.
 * @param prepared from prepareNet, after changePressures; step is written
 * @param flows by link [m³/s], changed in place
 * @param pass descent is filled in, from Pass
 * @returns nothing
 * @source common practice (global gradient form of Todini and Pilati)
 */
export function changeFlows(prepared: PreparedNet, flows: Float64Array, pass: Pass): void {
  const { from, to, right, conductance, rest, step } = prepared
  let descent = 0
  for (let link = 0; link < from.length; link++) {
    // From the changes of the pressures: these are small near the end, where the pressures would cost digits of the mass.
    const left =
      (rest[link] as number) + (right[from[link] as number] as number) - (right[to[link] as number] as number)
    const change = (conductance[link] as number) * left
    flows[link] = (flows[link] as number) + change
    step[link] = change
    descent += left * change
  }
  pass.descent = descent
}
