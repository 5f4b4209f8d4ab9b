import { prepareNet, solveNet, type Law, type Link, type PreparedNet } from '../hydraulics/network/index.ts'
import { airThroughLeak, gasThroughInjector } from './gas.ts'
import { carry } from './carry.ts'
import { meter } from './governor.ts'
import { coldFields, copyOf, type Fields } from './fields.ts'
import { linkLaws } from './link-laws.ts'
import { outwardLaw } from './laws.ts'
import type { CircuitModel } from './model.ts'
import { reasonOf } from './reasons.ts'
import { setFixedPressures, type Situation } from './situation.ts'
import { pressureUnderVent } from './vent.ts'
import type { NoState } from './types.ts'

/** Rounds of the outer loop; what has not come to rest by then does not. */
const MOST_ROUNDS = 120

/** At rest when from one round to the next no pressure moves more than this [Pa], no temperature more than this [K]. */
const PRESSURE_AT_REST = 0.05
const TEMPERATURE_AT_REST = 1e-4
/** No liquid flow may move by more than this share of the largest, and none of the gas. [-] */
const SHARE_AT_REST = 1e-7

/** A net with its holes to the outside. */
interface Prepared {
  readonly net: PreparedNet
  /** Parts with a hole, in the order of the additional links. */
  readonly holes: readonly number[]
}

const preparedNets = new WeakMap<CircuitModel, Map<string, Prepared>>()

const unset: Law = () => {
  throw new RangeError('A law of the net was used before it was made.')
}

function preparedFor(situation: Situation): Prepared {
  const { model, parameters, topology } = situation
  const holes = model.parts.flatMap((part, place) =>
    'airHole' in part.values && (parameters.values[place]?.airHole ?? 0) > 0 && (topology.holeNode[place] ?? -1) >= 0
      ? [place]
      : [],
  )
  const nets = preparedNets.get(model) ?? new Map<string, Prepared>()
  preparedNets.set(model, nets)
  const key = holes.join(' ')
  const known = nets.get(key)
  if (known) return known
  const nodes = model.nodes.map(({ id, fixed }) => ({ id, ...(fixed === undefined ? {} : { pressure: 0 }) }))
  const outside = nodes.length
  const links: Link[] = model.links.map(({ id, from, to }) => ({ id, from, to, law: unset }))
  for (const part of holes)
    links.push({ id: `${model.parts[part]?.id} hole`, from: topology.holeNode[part] ?? 0, to: outside, law: unset })
  const net = prepareNet({
    nodes: holes.length > 0 ? [...nodes, { id: 'outside', pressure: 0 }] : nodes,
    links,
  })
  const prepared = { net, holes }
  nets.set(key, prepared)
  return prepared
}

/** Gas that comes in at each node at the pressures of now. */
function drawIn(situation: Situation, fields: Fields, holes: readonly number[]): void {
  const { model, parameters, topology, conditions, demand } = situation
  fields.gasIn.fill(0)
  const add = (node: number, gas: number): void => {
    fields.gasIn[node] = (fields.gasIn[node] as number) + gas
  }
  for (const part of holes) {
    const node = topology.holeNode[part] as number
    const inside = fields.pressure[node] as number
    const hole = parameters.values[part]?.airHole ?? 0
    add(node, airThroughLeak(hole, conditions.airPressure, inside, conditions.ambientTemperature))
  }
  if (!demand.running) return
  for (const link of model.links) {
    if (link.role !== 'passage') continue
    const hole = parameters.ofCylinder('gasHole', link.place)
    if (hole > 0) add(link.to, gasThroughInjector(hole, demand.cylinderPressure, fields.pressure[link.to] as number))
  }
}

/** Fields that have come to rest. */
export interface Rest {
  readonly fields: Fields
  readonly leaks: readonly { readonly part: number; readonly flow: number }[]
  readonly solutions: number
  readonly residual: number
}

/**
 * Solves net, heat, gas, engine and vent in turns until they agree.
 * @param situation of the state
 * @param start fields of a state of the same circuit; those of a cold one where there are none
 * @returns the fields at rest, or why there are none
 * @source common practice (successive substitution)
 */
export function comeToRest(situation: Situation, start: Fields | undefined): Rest | NoState {
  const { model, conditions } = situation
  const { net, holes } = preparedFor(situation)
  const count = net.net.links.length
  const fields = start ? copyOf(start) : coldFields(situation)
  let flows = new Float64Array(count)
  flows.set(fields.flow)
  const slopes = new Float64Array(model.links.length)
  const loss = { drop: 0, slope: 0 }
  const pressures = new Float64Array(net.net.nodes.length).fill(conditions.airPressure)
  let worst = ''
  meter(situation, fields, start !== undefined)
  for (let round = 1; round <= MOST_ROUNDS; round++) {
    setFixedPressures(situation, fields.onSurface, pressures)
    const laws = linkLaws(situation, fields, slopes)
    for (const part of holes) {
      const node = situation.topology.holeNode[part] as number
      const temperature = fields.temperature[node] as number
      laws.push(
        outwardLaw(situation.parameters.values[part]?.airHole ?? 0, {
          density: situation.fluid.density(temperature),
          kinematicViscosity: situation.fluid.kinematicViscosity(temperature),
        }),
      )
    }
    const solved = solveNet(net, { laws, pressures }, { start: flows })
    if (!solved.converged)
      return { ok: false, reason: reasonOf(situation, fields, solved.worst) }
    const before = copyOf(fields)
    fields.flow.set(solved.flows.subarray(0, model.links.length))
    fields.pressure.set(solved.pressures.subarray(0, model.nodes.length))
    flows = Float64Array.from(solved.flows)
    for (const [place, law] of laws.entries()) {
      if (place >= slopes.length) break
      law(fields.flow[place] as number, loss)
      slopes[place] = loss.slope
    }
    drawIn(situation, fields, holes)
    carry(situation, fields)
    meter(situation, fields)
    fields.onSurface = pressureUnderVent(situation, fields, fields.onSurface)
    const moved = movement(before, fields)
    if (moved.share <= 1 && round > 1)
      return {
        fields,
        leaks: holes.map((part, place) => ({ part, flow: flows[model.links.length + place] ?? 0 })),
        solutions: round,
        residual: solved.residual,
      }
    worst = model.nodes[moved.node]?.label ?? ''
  }
  return { ok: false, reason: reasonOf(situation, fields, worst) }
}

/** How far a round has moved the fields, over what counts as rest. */
function movement(before: Fields, now: Fields): { share: number; node: number } {
  let [share, node] = [Math.abs(now.onSurface - before.onSurface) / PRESSURE_AT_REST, 0]
  const note = (moved: number, place: number): void => {
    if (moved > share) [share, node] = [moved, place]
  }
  now.pressure.forEach((value, place) => {
    note(Math.abs(value - (before.pressure[place] as number)) / PRESSURE_AT_REST, place)
    note(Math.abs((now.temperature[place] as number) - (before.temperature[place] as number)) / TEMPERATURE_AT_REST, place)
  })
  const most = now.flow.reduce((largest, flow) => Math.max(largest, Math.abs(flow)), 0)
  now.flow.forEach((flow, place) => {
    note(Math.abs(flow - (before.flow[place] as number)) / (SHARE_AT_REST * most), place)
  })
  return { share, node }
}

