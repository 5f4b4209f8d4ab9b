import type { ComponentChildren } from 'preact'
import type { CircuitState } from '../../../calculators/circuit/types.ts'
import type { UnitSystem } from '../../../calculators/quantity/types.ts'
import { steady } from '../steady.tsx'
import { finest, fullFlowOf } from './looks.ts'
import type { BenchData, Setting } from './types.ts'
import { capital, computedValue, labelOf, shownChange, settingWords, shownReading } from './words.ts'

interface Props {
  data: BenchData
  htmlId: string
  setting: Setting
  now: CircuitState
  health: CircuitState
  system: UnitSystem
}

/** The same facts as the drawing's, as tables: for who does not see it, and for paper. */
export const Facts = steady(({ data, htmlId, setting, now, health, system }: Props) => {
  return (
    <section class="facts" aria-labelledby={`${htmlId}-facts`}>
      <h2 id={`${htmlId}-facts`}>The same as tables</h2>
      <p class="facts-setting">{settingWords(data, setting, system)}</p>
      <div class="facts-tables">
        <Scroller label="Readings and glasses" columns="few">
          <table>
            <caption>Readings and glasses</caption>
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">Now</th>
                <th scope="col">In health</th>
                <th scope="col">Change</th>
              </tr>
            </thead>
            <tbody>
              {now.glasses.map((glass) => {
                const usual = health.glasses.find(({ part }) => part === glass.part)
                return (
                  <tr key={glass.part}>
                    <th scope="row">{labelOf(data, glass.part)}</th>
                    <td>{capital(glass.words)}</td>
                    <td>{capital(usual?.words ?? '–')}</td>
                    <td>{usual?.words === glass.words ? 'none' : 'looks otherwise'}</td>
                  </tr>
                )
              })}
              {now.readings.map((reading) => {
                const usual = health.readings.find(({ id }) => id === reading.id)
                return (
                  <tr key={reading.id}>
                    <th scope="row">{reading.label}</th>
                    <td>{shownReading(reading, system)}</td>
                    <td>{usual ? shownReading(usual, system) : '–'}</td>
                    <td>{usual ? shownChange(usual, reading, system) : '–'}</td>
                  </tr>
                )
              })}
            </tbody>
          </table>
        </Scroller>
        <Lines data={data} now={now} health={health} system={system} />
      </div>
    </section>
  )
})

/** Flow, pressure and temperature along the way; computed, where no instrument stands. */
function Lines({ data, now, health, system }: Omit<Props, 'htmlId' | 'setting'>) {
  const air = now.conditions.airPressure
  const finestFlow = finest.flowShare * fullFlowOf(health)
  return (
    <Scroller label="Lines" columns="many">
      <table>
        <caption>
          Lines, as computed. Flow counts as at the temperature of the tank, at the cylinders that of one.
        </caption>
        <thead>
          <tr>
            <th scope="col">From, to</th>
            <th scope="col">Flow</th>
            <th scope="col">In health</th>
            <th scope="col">Pressure</th>
            <th scope="col">Temperature</th>
            <th scope="col">Gas</th>
          </tr>
        </thead>
        <tbody>
          {now.lines.map(({ connection, flow, from, to }) => {
            const usual = health.lines.find((line) => line.connection === connection)
            const drawn = data.circuit.connections[connection]
            if (drawn === undefined || drawn.line === 'gauge' || drawn.line === 'shaft') return null
            return (
              <tr key={connection}>
                <th scope="row">{drawn.pipe?.label ?? capital(endWords(data, drawn.from, drawn.to))}</th>
                <td>{computedValue(flow, 'volumeFlow', system, finestFlow)}</td>
                <td>{usual ? computedValue(usual.flow, 'volumeFlow', system, finestFlow) : '–'}</td>
                <td>
                  {computedValue(
                    (from.pressure + to.pressure) / 2 - air,
                    'gaugePressure',
                    system,
                    finest.pressure,
                  )}
                </td>
                <td>{computedValue(to.temperature, 'temperature', system, finest.temperature)}</td>
                <td>{computedValue(to.gas, 'ratio', system, finest.gas)}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </Scroller>
  )
}

interface ScrollerProps {
  label: string
  /** By how many columns it is known how much room it wants. */
  columns: 'few' | 'many'
  children: ComponentChildren
}

/** A table that may be wider than the screen; where it is, it says so. */
function Scroller({ label, columns, children }: ScrollerProps) {
  return (
    <div class={`facts-table facts-table-${columns}`}>
      <p class="facts-hint">This table is wider than the screen: move it sideways.</p>
      {/* A region that scrolls must take the keyboard. */}
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex */}
      <section class="scroller" aria-label={label} tabIndex={0}>
        {children}
      </section>
    </div>
  )
}

const idOf = (end: string): string => end.slice(0, end.indexOf('.'))

/** 'Tank to Suction strainer'; a tee has no name that a person would know. */
function endWords(data: BenchData, from: string, to: string): string {
  const words = (end: string): string => {
    const id = idOf(end)
    const label = labelOf(data, id)
    return label === id ? id.replaceAll('-', ' ') : label
  }
  return `${words(from)} → ${words(to)}`
}
