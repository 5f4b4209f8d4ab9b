import type { CircuitState, FlowPoint, PartState } from '../../../calculators/circuit/types.ts'
import type { KindId, UnitSystem } from '../../../calculators/quantity/types.ts'
import { finest, fullFlowOf } from './looks.ts'
import type { BenchData } from './types.ts'
import { capital, computedValue, shownReading } from './words.ts'

interface Props {
  data: BenchData
  id: string
  now: CircuitState
  health: CircuitState
  system: UnitSystem
}

/** Gas below this share is none that anybody could see. */
const NO_GAS = 1e-4

/** Readings, glass and fuel at one part, now and in health, as rows of a small table. */
export function PartFigures({ data, id, now, health, system }: Props) {
  const rows = [
    ...readingRows(now, health, id, system),
    ...glassRows(now, health, id),
    ...fuelRows(now, health, id, system),
  ]
  if (rows.length === 0) return null
  const label = data.circuit.elements.find((element) => element.id === id)?.label
  return (
    <table class="part-figures">
      <caption class="unseen">{label}, now and in health</caption>
      <thead>
        <tr>
          <th scope="col">At this part</th>
          <th scope="col">Now</th>
          <th scope="col">In health</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, value, usual]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>{value}</td>
            <td>{usual}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

type Row = readonly [name: string, now: string, health: string]

function readingRows(now: CircuitState, health: CircuitState, id: string, system: UnitSystem): Row[] {
  return now.readings
    .filter(({ part }) => part === id)
    .map((reading) => {
      const usual = health.readings.find((candidate) => candidate.id === reading.id)
      return [reading.label, shownReading(reading, system), usual ? shownReading(usual, system) : '–']
    })
}

function glassRows(now: CircuitState, health: CircuitState, id: string): Row[] {
  return now.glasses
    .filter(({ part }) => part === id)
    .map(({ words }) => {
      const usual = health.glasses.find(({ part }) => part === id)
      return ['Glass', capital(words), capital(usual?.words ?? '–')]
    })
}

/** Computed, not read: no instrument stands there. */
function fuelRows(now: CircuitState, health: CircuitState, id: string, system: UnitSystem): Row[] {
  const part = now.parts.find((candidate) => candidate.id === id)
  const usual = health.parts.find((candidate) => candidate.id === id)
  if (part === undefined || usual === undefined || !carriesFuel(part, usual)) return []
  const row = (
    name: string,
    kind: KindId,
    step: number,
    value: (state: PartState, air: number) => number,
  ): Row => [
    name,
    computedValue(value(part, now.conditions.airPressure), kind, system, step),
    computedValue(value(usual, health.conditions.airPressure), kind, system, step),
  ]
  const gauge = (point: (state: PartState) => FlowPoint) => (state: PartState, air: number) =>
    point(state).pressure - air
  const gassy = part.out.gas > NO_GAS || usual.out.gas > NO_GAS
  return [
    row('Flow', 'volumeFlow', finest.flowShare * fullFlowOf(health), ({ flow }) => flow),
    row(
      'Pressure before it',
      'gaugePressure',
      finest.pressure,
      gauge((state) => state.in),
    ),
    row(
      'Pressure behind it',
      'gaugePressure',
      finest.pressure,
      gauge((state) => state.out),
    ),
    row('Temperature behind it', 'temperature', finest.temperature, ({ out }) => out.temperature),
    ...(gassy ? [row('Gas behind it', 'ratio', finest.gas, ({ out }) => out.gas)] : []),
  ]
}

const carriesFuel = (part: PartState, usual: PartState): boolean =>
  Number.isFinite(part.flow) &&
  !/-gauge$|^thermometer$|^viscometer$|^motor$|^tank$/.test(part.kind) &&
  (part.flow !== 0 || usual.flow !== 0 || part.in.pressure !== part.out.pressure)
