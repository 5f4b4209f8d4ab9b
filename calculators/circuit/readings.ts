import { columnPressure } from '../hydraulics/hydrostatics.ts'
import { PRESSURE_AT_REST, told } from './at-rest.ts'
import type { Fields } from './fields.ts'
import type { ModelPart } from './model.ts'
import type { Situation } from './situation.ts'
import type { Values } from './parameters.ts'
import type { EngineState, Reading } from './types.ts'

/** Accuracies of what is read without a gauge of the circuit. Common practice, no published source. */
const ACCURACY = {
  /** Timed into a measure, share of the flow; and what drips in a minute, about a thimble. [m³/s] */
  flow: 0.02,
  leastFlow: 2e-8,
  /** Share of the rated power. */
  power: 0.01,
  rack: 0.01,
  /** [K] */
  exhaust: 5,
} as const

/**
 * What every gauge of the circuit shows.
 * @param situation of the state
 * @param fields at rest
 * @returns readings in SI: pressures against the air outside and less the column between tapping and gauge, error of the
 * instrument and its stops included
 * @source nist-sp811 (standard gravity)
 */
export function gaugeReadings(situation: Situation, fields: Fields): Reading[] {
  return situation.model.parts.flatMap((part, place): Reading[] => {
    const values = situation.parameters.values[place]
    return values && part.tappings.length > 0 ? readGauge(situation, fields, part, values) : []
  })
}

function readGauge(situation: Situation, fields: Fields, part: ModelPart, values: Values): Reading[] {
  const { model, fluid, conditions, parameters } = situation
  const [first = 0, second = first] = part.tappings
  const { id, label } = part
  const filling = fluid.density(conditions.ambientTemperature)
  const atGauge = (node: number): number =>
    (fields.pressure[node] ?? 0) - columnPressure(filling, part.height - (model.nodes[node]?.height ?? 0))
  const stopped = (exact: number): Pick<Reading, 'value' | 'atStop'> => {
    const value = told(exact, PRESSURE_AT_REST)
    if (value <= 0) return { value: 0, atStop: 'lowest' }
    return value >= values.range ? { value: values.range, atStop: 'highest' } : { value }
  }
  const common = { id, label, part: id, accuracy: values.accuracy }
  switch (part.kind) {
    case 'pressure-gauge':
      return [
        {
          ...common,
          kind: 'gaugePressure',
          ...stopped(atGauge(first) - conditions.airPressure + values.error),
        },
      ]
    case 'vacuum-gauge':
      return [
        {
          ...common,
          kind: 'pressureDifference',
          ...stopped(conditions.airPressure - atGauge(first) + values.error),
        },
      ]
    case 'drop-gauge':
      return [
        {
          ...common,
          kind: 'pressureDifference',
          ...stopped(atGauge(first) - atGauge(second) + values.error),
        },
      ]
    case 'thermometer':
      return [{ ...common, kind: 'temperature', value: (fields.temperature[first] ?? 0) + values.error }]
    case 'viscometer': {
      const controlled = model.parts.findIndex(({ kind }) => kind === 'viscosity-heater')
      const value =
        fluid.kinematicViscosity(fields.temperature[first] ?? 0) *
        (parameters.values[controlled]?.sensorShare ?? 1)
      return [{ ...common, kind: 'kinematicViscosity', value, accuracy: values.accuracy * value }]
    }
    default:
      return []
  }
}

/**
 * What is read of the circuit as a whole and of the engine.
 * @param situation of the state
 * @param fields at rest
 * @param engine its state
 * @returns return flow, rack, power and the exhaust temperature of each cylinder, in SI
 */
export function wholeReadings(situation: Situation, fields: Fields, engine: EngineState): Reading[] {
  const { model, reference, fluid, topology } = situation
  const ends = model.ends[topology.returnHeader]
  const atTank = ends?.links.reduce((sum, link) => sum + (fields.flow[link] ?? 0), 0) ?? 0
  const flow = ends ? (atTank * reference) / fluid.density(fields.temperature[ends.out] ?? 0) : 0
  const readings: Reading[] = [
    {
      id: 'return-flow',
      label: 'Flow in the return',
      kind: 'volumeFlow',
      value: flow,
      accuracy: Math.max(ACCURACY.leastFlow, ACCURACY.flow * Math.abs(flow)),
    },
  ]
  if (engine.exhaust.length === 0) return readings
  readings.push(
    { id: 'rack', label: 'Rack', kind: 'ratio', value: engine.rack, accuracy: ACCURACY.rack },
    {
      id: 'power',
      label: 'Power',
      kind: 'power',
      value: engine.power,
      accuracy: ACCURACY.power * model.engine.ratedPower,
    },
  )
  engine.exhaust.forEach((value, place) => {
    readings.push({
      id: `exhaust-${place + 1}`,
      label: `Exhaust temperature, cylinder ${place + 1}`,
      kind: 'temperature',
      value,
      accuracy: ACCURACY.exhaust,
    })
  })
  return readings
}
