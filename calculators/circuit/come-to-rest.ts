import { temperatureOfContent } from '../heat/petroleum-heat.ts'
import { solveNet, type Law } from '../hydraulics/network/index.ts'
import { leastFlow, PRESSURE_AT_REST, TEMPERATURE_AT_REST } from './at-rest.ts'
import { carry } from './carry.ts'
import { networkOf } from './circuit-net.ts'
import { drawIn } from './draw-in.ts'
import { coldFields, copyOf, type Fields } from './fields.ts'
import { meter } from './governor.ts'
import { outwardLaw } from './laws.ts'
import { linkLaws } from './link-laws.ts'
import { reasonOf } from './reasons.ts'
import { room } from './room.ts'
import { settlingOf, type Settling } from './settling.ts'
import { setFixedPressures, type Situation } from './situation.ts'
import type { NoState } from './types.ts'
import { pressureUnderVent } from './vent.ts'

/** Rounds of the outer loop; what has not come to rest by then does not. */
const MOST_ROUNDS = 240

/** From this round on heat and gas are damped too, and from that one on so many times as much counts as rest. */
const DAMPED_FROM = 12
const LENIENT_FROM = 120
const LENIENCE = 30

/** The pressure of a loop answers so steeply to what its pump draws that the pump's law must go after it in small steps. */
const LEAST_DRAWN = 1e-3

const BELOW_NOTHING = 'The pressure would fall below nothing, which no fuel bears, at'

/** Fields that have come to rest. */
export interface Rest {
  readonly fields: Fields
  /** What leaves through the hole of each part. [m³/s] */
  readonly leaks: readonly { readonly part: number; readonly flow: number }[]
  readonly solutions: number
  /** [m³/s] */
  readonly residual: number
  /** How many times what counts as rest it still moved; 1 but where it came to rest slowly. [-] */
  readonly within: number
}

function outwardLaws(situation: Situation, fields: Fields, holes: readonly number[]): Law[] {
  const { topology, fluid, parameters } = situation
  return holes.map((part) => {
    const temperature = fields.temperature[topology.holeNode[part] as number] as number
    return outwardLaw(parameters.values[part]?.airHole ?? 0, {
      density: fluid.density(temperature),
      kinematicViscosity: fluid.kinematicViscosity(temperature),
    })
  })
}

/**
 * Solves net, heat, gas, engine and vent in turns until they agree.
 * @param situation of the state
 * @param start fields of a state of the same circuit; those of a cold one where there are none
 * @returns the fields at rest, or why there are none
 * @source common practice (successive substitution)
 */
export function comeToRest(situation: Situation, start: Fields | undefined): Rest | NoState {
  const { model, conditions, topology } = situation
  const { net, holes } = networkOf(situation)
  const fields = start ? copyOf(start) : coldFields(situation)
  const [nodes, ownLinks] = [model.nodes.length, model.links.length]
  const take = room()
  let flows = take(net.net.links.length)
  flows.set(fields.flow)
  const slopes = take(ownLinks)
  const loss = { drop: 0, slope: 0 }
  const pressures = take(net.net.nodes.length).fill(conditions.airPressure)
  const gas = settlingOf(take, nodes)
  const ways = settlingOf(take, ownLinks)
  const drawing = settlingOf(take, topology.loopPumps.length, LEAST_DRAWN)
  const drawnAt = take(topology.loopPumps.length)
  for (const [place, pump] of topology.loopPumps.entries()) drawnAt[place] = fields.drawnAt[pump] as number
  const surface = settlingOf(take, 1)
  const onSurface = take(1).fill(fields.onSurface)
  const metering = settlingOf(take, model.cylinders)
  let carried: Carried | undefined
  const before: Before = {
    pressure: take(nodes),
    temperature: take(nodes),
    heat: take(nodes),
    bubbles: take(nodes),
  }
  let worst = ''
  /** How far a pump's law is behind the pressure at its inlet, over what counts as rest. */
  const lag = (): number =>
    topology.loopPumps.reduce((most, _, place) => {
      const behind = (drawing.wanted[place] as number) - (drawnAt[place] as number)
      return Math.max(most, Math.abs(behind) / PRESSURE_AT_REST)
    }, 0)
  meter(situation, fields, metering, start !== undefined)
  // The last solution has been read when the next one is sought: its arrays take that.
  const into = { pressures: take(pressures.length), flows: take(flows.length) }
  for (let round = 1; round <= MOST_ROUNDS; round++) {
    setFixedPressures(situation, fields.onSurface, pressures)
    const laws = linkLaws(situation, fields, slopes)
    laws.push(...outwardLaws(situation, fields, holes))
    const solved = solveNet(net, { laws, pressures }, { start: flows, into })
    if (!solved.converged) return { ok: false, reason: reasonOf(situation, solved.worst) }
    before.pressure.set(fields.pressure)
    before.temperature.set(fields.temperature)
    before.heat.set(fields.heat)
    before.bubbles.set(fields.bubbles)
    flows = solved.flows
    const moved = flowMovement(fields.flow, flows)
    fields.flow.set(flows.subarray(0, ownLinks))
    fields.pressure.set(solved.pressures.subarray(0, nodes))
    for (const place of topology.drawnLinks) {
      laws[place]?.(fields.flow[place] as number, loss)
      slopes[place] = loss.slope
    }
    direct(fields, ways)
    for (const [place, pump] of topology.loopPumps.entries())
      drawing.wanted[place] = fields.pressure[model.links[pump]?.from ?? 0] as number
    drawing.move(drawnAt)
    for (const [place, pump] of topology.loopPumps.entries()) fields.drawnAt[pump] = drawnAt[place] as number
    drawIn(situation, fields, holes, gas)
    carry(situation, fields)
    if (round >= DAMPED_FROM) {
      carried ??= { heat: settlingOf(take, nodes), liquid: settlingOf(take, nodes) }
      holdBack(situation, before, fields, carried)
    }
    meter(situation, fields, metering, true)
    surface.wanted[0] = pressureUnderVent(situation, fields)
    surface.move(onSurface)
    const surfaceMoved = Math.abs((onSurface[0] as number) - fields.onSurface) / PRESSURE_AT_REST
    fields.onSurface = onSurface[0] as number
    const far = farthest(before, fields)
    const rest = round < LENIENT_FROM ? 1 : LENIENCE
    if (Math.max(moved, far.share, surfaceMoved, lag()) <= rest && round > 1) {
      // The equations have a solution where fuel itself has none: no liquid bears less than nothing.
      const empty = fields.pressure.findIndex((pressure) => pressure <= 0)
      if (empty >= 0)
        return { ok: false, reason: reasonOf(situation, model.nodes[empty]?.id ?? '', BELOW_NOTHING) }
      const leaks = holes.map((part, place) => ({ part, flow: flows[ownLinks + place] as number }))
      return { fields, leaks, solutions: round, residual: solved.residual, within: rest }
    }
    worst = model.nodes[far.node]?.id ?? ''
  }
  return { ok: false, reason: reasonOf(situation, worst) }
}

/** A flow larger than this fills its link with what it brings. [m³/s] */
const FILLS = 2e-7

/** Where hardly anything moves, a link holds something of both sides; else the two would take turns for ever. */
function direct(fields: Fields, ways: Settling): void {
  for (let place = 0; place < fields.flow.length; place++) {
    const share = 0.5 + (fields.flow[place] as number) / (2 * FILLS)
    ways.wanted[place] = Math.min(1, Math.max(0, share))
  }
  ways.move(fields.ahead)
}

/** What the round before left at the nodes. */
type Before = Pick<Fields, 'pressure' | 'temperature' | 'heat' | 'bubbles'>

interface Carried {
  readonly heat: Settling
  readonly liquid: Settling
}

/** Moves heat and gas from what they were before only as far as what swings to and fro allows. */
function holdBack(situation: Situation, before: Before, now: Fields, carried: Carried): void {
  const { heat, liquid } = carried
  heat.wanted.set(now.heat)
  now.heat.set(before.heat)
  heat.move(now.heat)
  // Gas goes from none to almost all there is: the liquid's share lies halfway where the gas's amount does not.
  const shares = new Float64Array(now.bubbles.length)
  for (let place = 0; place < shares.length; place++) {
    const scale = (now.temperature[place] as number) / Math.max(1, now.pressure[place] as number)
    liquid.wanted[place] = 1 / (1 + (now.bubbles[place] as number) * scale)
    shares[place] = 1 / (1 + (before.bubbles[place] as number) * scale)
  }
  liquid.move(shares)
  for (let place = 0; place < shares.length; place++) {
    const scale = (now.temperature[place] as number) / Math.max(1, now.pressure[place] as number)
    now.bubbles[place] = Math.max(0, 1 / (shares[place] as number) - 1) / scale
    now.temperature[place] = temperatureOfContent(situation.fluid.density15, now.heat[place] as number)
  }
}

/** How far the flows have moved, over what counts as rest. */
function flowMovement(before: Float64Array, now: Float64Array): number {
  let moved = 0
  for (let place = 0; place < before.length; place++)
    moved = Math.max(moved, Math.abs((now[place] as number) - (before[place] as number)))
  return moved / leastFlow(now.subarray(0, before.length))
}

/** How far pressures and temperatures have moved, over what counts as rest, and where most. */
function farthest(before: Before, now: Fields): { share: number; node: number } {
  let [share, node] = [0, 0]
  for (let place = 0; place < now.pressure.length; place++) {
    const pressed = Math.abs((now.pressure[place] as number) - (before.pressure[place] as number))
    const warmed = Math.abs((now.temperature[place] as number) - (before.temperature[place] as number))
    const moved = Math.max(pressed / PRESSURE_AT_REST, warmed / TEMPERATURE_AT_REST)
    if (moved > share) [share, node] = [moved, place]
  }
  return { share, node }
}
