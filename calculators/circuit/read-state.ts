import type { Rest } from './come-to-rest.ts'
import { LEAST_SHARE, leastFlow, told } from './at-rest.ts'
import { energyShare, exhaustOf } from './engine.ts'
import { gasRatio, type Fields } from './fields.ts'
import { injectorRates } from './governor.ts'
import { glassViews } from './glasses.ts'
import { gaugeReadings, wholeReadings } from './readings.ts'
import { remarksOn } from './remarks.ts'
import type { Situation } from './situation.ts'
import type { CircuitState, EngineState, FlowPoint, LineState, PartState } from './types.ts'

function pointAt(situation: Situation, fields: Fields, node: number): FlowPoint {
  const pressure = fields.pressure[node] ?? 0
  const ratio = gasRatio(situation, fields, node, pressure)
  return { pressure, temperature: fields.temperature[node] ?? 0, gas: told(ratio / (1 + ratio), LEAST_SHARE) }
}

function partStates(situation: Situation, fields: Fields): PartState[] {
  const { model } = situation
  return model.parts.flatMap((part, place): PartState[] => {
    const { id, kind, label } = part
    const ends = model.ends[place]
    if (ends) {
      const flow = ends.links.reduce((sum, link) => sum + (fields.flow[link] ?? 0), 0)
      return [
        {
          id,
          kind,
          label,
          flow,
          in: pointAt(situation, fields, ends.in),
          out: pointAt(situation, fields, ends.out),
        },
      ]
    }
    const tapped = part.tappings.map((node) => pointAt(situation, fields, node))
    const [first, last] = [tapped[0], tapped.at(-1)]
    if (first && last) return [{ id, kind, label, flow: 0, in: first, out: last }]
    if (kind !== 'tank') return []
    const mouth = model.nodes.findIndex((node) => node.fixed === place && node.mouth)
    const drawn = model.links.reduce(
      (sum, { from, to }, link) =>
        sum + (from === mouth ? 1 : to === mouth ? -1 : 0) * (fields.flow[link] ?? 0),
      0,
    )
    const point = pointAt(situation, fields, mouth)
    return [{ id, kind, label, flow: drawn, in: point, out: point }]
  })
}

/** The lines of the drawing; those at the cylinders are of one in the middle. */
function lineStates(situation: Situation, fields: Fields): LineState[] {
  const { model } = situation
  return model.connections.flatMap((connection, index): LineState[] => {
    if (!connection) return []
    const { from, to, flow } = connection
    return [
      {
        connection: index,
        flow: flow.reduce((sum, { link, sign }) => sum + sign * (fields.flow[link] ?? 0), 0),
        from: pointAt(situation, fields, from),
        to: pointAt(situation, fields, to),
      },
    ]
  })
}

function engineState(situation: Situation, fields: Fields): EngineState {
  const { model, demand, usualFluid, fluid, reference } = situation
  const { ratedPower, burntAtFull, burntAtIdle } = model.engine
  // A full injector, and one that stands, take a trace more in the net of laws than they can.
  const taken = model.links.flatMap(({ role, place: cylinder }, place) =>
    role === 'metering'
      ? [Math.min(fields.metered[cylinder] ?? 0, Math.max(0, fields.flow[place] ?? 0))]
      : [],
  )
  const atFull = burntAtFull * usualFluid.density15 * usualFluid.energy
  const idle = burntAtIdle / burntAtFull
  const share = energyShare(
    taken.map((flow) => flow * reference),
    injectorRates(situation, fields, false),
    fields.rack,
    fluid,
    atFull,
  )
  const each = burntAtFull / model.cylinders
  const shares = taken.map(
    (flow) => (flow * reference * fluid.energy) / (each * usualFluid.density15 * usualFluid.energy),
  )
  return {
    power: demand.running ? ratedPower * Math.max(0, told((share - idle) / (1 - idle), LEAST_SHARE)) : 0,
    rack: fields.rack,
    wanted: demand.load * ratedPower,
    exhaust: exhaustOf(model, demand, shares),
    burnt: taken.reduce((sum, flow) => sum + flow, 0),
  }
}

/**
 * What of the fields can be told: fuel bears no tension, so that where the column has torn, the pressure is that of its
 * vapour; a flow that the solver does not tell from none is none.
 */
function whatIsTold({ fluid }: Situation, fields: Fields): Fields {
  const pressure = fields.pressure.map((value, node) =>
    Math.max(value, fluid.vapourPressure(fields.temperature[node] ?? 0)),
  )
  const least = leastFlow(fields.flow)
  return { ...fields, pressure, flow: fields.flow.map((flow) => told(flow, least)) }
}

/**
 * What a circuit at rest shows.
 * @param situation of the state
 * @param rest fields that have come to rest
 * @returns the state with all readings, glasses and remarks
 */
export function readState(situation: Situation, rest: Rest): CircuitState {
  const { model, conditions } = situation
  const fields = whatIsTold(situation, rest.fields)
  const engine = engineState(situation, fields)
  return {
    ok: true,
    conditions,
    readings: [...gaugeReadings(situation, fields), ...wholeReadings(situation, fields, engine)],
    glasses: glassViews(situation, fields),
    parts: partStates(situation, fields),
    lines: lineStates(situation, fields),
    engine,
    leaks: rest.leaks.map(({ part, flow }) => ({
      part: model.parts[part]?.id ?? '',
      flow: told(flow, leastFlow(rest.fields.flow)),
    })),
    remarks: remarksOn(situation, { ...rest, fields }, engine),
    effort: { solutions: rest.solutions, residual: rest.residual },
  }
}
