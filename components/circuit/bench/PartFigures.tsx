import type { CircuitState, FlowPoint, PartState } from '../../../calculators/circuit/types.ts'
import type { KindId, UnitSystem } from '../../../calculators/quantity/types.ts'
import type { BenchData } from './types.ts'
import { capital, shownReading, shownValue } from './words.ts'

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
  const rows = [...readingRows(now, health, id, system), ...glassRows(now, health, id), ...fuelRows(now, health, id, system)]
  if (rows.length === 0) return null
  const label = data.circuit.elements.find((element) => element.id === id)?.label
  return (
    <table class="part-figures">
      <caption class="unseen">{label}, now and in health</caption>
      <thead>
        <tr>
          <td />
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
  const row = (name: string, kind: KindId, value: (state: PartState, air: number) => number): Row => [
    name,
    shownValue(value(part, now.conditions.airPressure), kind, system),
    shownValue(value(usual, health.conditions.airPressure), kind, system),
  ]
  const gauge = (point: (state: PartState) => FlowPoint) => (state: PartState, air: number) =>
    point(state).pressure - air
  const gassy = part.out.gas > NO_GAS || usual.out.gas > NO_GAS
  return [
    row('Flow', 'volumeFlow', ({ flow }) => flow),
    row('Pressure before it', 'gaugePressure', gauge((state) => state.in)),
    row('Pressure behind it', 'gaugePressure', gauge((state) => state.out)),
    row('Temperature behind it', 'temperature', ({ out }) => out.temperature),
    ...(gassy ? [row('Gas behind it', 'ratio', ({ out }) => out.gas)] : []),
  ]
}

const carriesFuel = (part: PartState, usual: PartState): boolean =>
  Number.isFinite(part.flow) &&
  !/-gauge$|^thermometer$|^viscometer$|^motor$|^tank$/.test(part.kind) &&
  (part.flow !== 0 || usual.flow !== 0 || part.in.pressure !== part.out.pressure)
