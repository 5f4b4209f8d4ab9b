import type { Rest } from './come-to-rest.ts'
import { LEAST_SHARE, leastFlow, told } from './at-rest.ts'
import { energyShare, exhaustOf } from './engine.ts'
import { copyOf, gasRatio, type Fields } from './fields.ts'
import { knowAt } from './fuel-at-nodes.ts'
import { injectorRates } from './governor.ts'
import { glassViews } from './glasses.ts'
import { gaugeReadings, wholeReadings } from './readings.ts'
import { remarksOn } from './remarks.ts'
import type { Situation } from './situation.ts'
import type { CircuitState, EngineState, FlowPoint, LineState, PartState } from './types.ts'

/** The fuel at each node; parts and lines that meet there share it. */
function pointsOf(situation: Situation, fields: Fields): readonly FlowPoint[] {
  return situation.model.nodes.map((_, node) => {
    const pressure = fields.pressure[node] as number
    const ratio = gasRatio(situation, fields, node, pressure)
    const gas = told(ratio / (1 + ratio), LEAST_SHARE)
    return { pressure, temperature: fields.temperature[node] as number, gas }
  })
}

function partStates({ model }: Situation, fields: Fields, points: readonly FlowPoint[]): PartState[] {
  const pointAt = (node: number) => points[node] as FlowPoint
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
          in: pointAt(ends.in),
          out: pointAt(ends.out),
        },
      ]
    }
    const tapped = part.tappings.map(pointAt)
    const [first, last] = [tapped[0], tapped.at(-1)]
    if (first && last) return [{ id, kind, label, flow: 0, in: first, out: last }]
    if (kind !== 'tank') return []
    const mouth = model.nodes.findIndex((node) => node.fixed === place && node.mouth)
    const drawn = model.links.reduce(
      (sum, { from, to }, link) =>
        sum + (from === mouth ? 1 : to === mouth ? -1 : 0) * (fields.flow[link] ?? 0),
      0,
    )
    const point = pointAt(mouth)
    return [{ id, kind, label, flow: drawn, in: point, out: point }]
  })
}

/** The lines of the drawing; those at the cylinders are of one in the middle. */
function lineStates({ model }: Situation, fields: Fields, points: readonly FlowPoint[]): LineState[] {
  return model.connections.flatMap((connection, index): LineState[] => {
    if (!connection) return []
    const { from, to, flow } = connection
    return [
      {
        connection: index,
        flow: flow.reduce((sum, { link, sign }) => sum + sign * (fields.flow[link] ?? 0), 0),
        from: points[from] as FlowPoint,
        to: points[to] as FlowPoint,
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
function whatIsTold({ fluid, atNodes }: Situation, fields: Fields): Fields {
  const shown = copyOf(fields)
  const { pressure, temperature, flow } = shown
  for (let node = 0; node < pressure.length; node++) {
    knowAt(atNodes, fluid, node, temperature[node] as number)
    pressure[node] = Math.max(pressure[node] as number, atNodes.vapourPressure[node] as number)
  }
  const least = leastFlow(flow)
  for (let place = 0; place < flow.length; place++) flow[place] = told(flow[place] as number, least)
  return shown
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
  const points = pointsOf(situation, fields)
  const glasses = glassViews(situation, fields)
  return {
    ok: true,
    conditions,
    readings: [...gaugeReadings(situation, fields), ...wholeReadings(situation, fields, engine)],
    glasses,
    parts: partStates(situation, fields, points),
    lines: lineStates(situation, fields, points),
    engine,
    leaks: rest.leaks.map(({ part, flow }) => ({
      part: model.parts[part]?.id ?? '',
      flow: told(flow, leastFlow(rest.fields.flow)),
    })),
    remarks: remarksOn(situation, { ...rest, fields }, engine, glasses),
    effort: { solutions: rest.solutions, residual: rest.residual },
  }
}
