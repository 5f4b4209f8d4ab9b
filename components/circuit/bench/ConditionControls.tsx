import { useMemo } from 'preact/hooks'
import { operatingStates, type CircuitState } from '../../../calculators/circuit/types.ts'
import type { UnitSystem } from '../../../calculators/quantity/types.ts'
import { steady } from '../steady.tsx'
import { setByFaults } from './set-by-faults.ts'
import { slidersOf, type Action, type Slider, type SliderSpec } from './setting.ts'
import { SliderField } from './SliderField.tsx'
import type { BenchData, Setting } from './types.ts'

/** What of the conditions a person may change. */
export const conditionIds = [
  'state',
  'fuel',
  'tankTemperature',
  'ambientTemperature',
  'tankLevel',
  'height',
] as const
export type Condition = (typeof conditionIds)[number]

export const isCondition = (id: string): id is Condition => conditionIds.some((condition) => condition === id)

type Send = (action: Action) => void

interface Props {
  data: BenchData
  htmlId: string
  setting: Setting
  /** The state that the setting leads to; undefined where the model has no answer. */
  now: CircuitState | undefined
  system: UnitSystem
  offered: readonly Condition[]
  send: Send
}

/** State, fuel, temperatures, level and height. */
export function ConditionControls({ data, htmlId, setting, now, system, offered, send }: Props) {
  const sliders = useMemo(() => slidersOf(data), [data])
  const notes = setByFaults(data, setting, now, system)
  return (
    <div class="conditions">
      {offered.includes('state') && (
        <StateChoice names={data.states} htmlId={htmlId} chosen={setting.state} send={send} />
      )}
      {offered.includes('fuel') && (
        <FuelChoice
          data={data}
          htmlId={`${htmlId}-fuel`}
          chosen={setting.fuel}
          note={notes.fuel}
          send={send}
        />
      )}
      {(Object.keys(sliders) as Slider[])
        .filter((slider) => offered.includes(slider))
        .map((slider) => (
          <ConditionSlider
            key={slider}
            htmlId={`${htmlId}-${slider}`}
            slider={slider}
            spec={sliders[slider]}
            value={setting[slider]}
            note={notes[slider]}
            system={system}
            send={send}
          />
        ))}
    </div>
  )
}

interface StateProps {
  names: BenchData['states']
  htmlId: string
  chosen: Setting['state']
  send: Send
}

const StateChoice = steady(({ names, htmlId, chosen, send }: StateProps) => (
  <fieldset class="states">
    <legend class="unseen">State</legend>
    <div class="states-row">
      {operatingStates.map((state) => (
        <label key={state} class="state" title={names[state].words}>
          <input
            type="radio"
            name={`${htmlId}-state`}
            value={state}
            checked={chosen === state}
            onChange={() => send({ type: 'set', setting: { state } })}
          />
          <span>{names[state].title}</span>
        </label>
      ))}
    </div>
  </fieldset>
))

interface FuelProps {
  data: BenchData
  htmlId: string
  chosen: string
  note: string | undefined
  send: Send
}

const FuelChoice = steady(({ data, htmlId, chosen, note, send }: FuelProps) => (
  <>
    <label class="slider">
      <span class="slider-label">Fuel</span>
      <select
        value={chosen}
        autocomplete="off"
        aria-describedby={note && `${htmlId}-note`}
        onChange={(event) => send({ type: 'set', setting: { fuel: event.currentTarget.value } })}
      >
        {data.fuels
          .filter(({ id }) => data.circuit.fuels.includes(id))
          .map(({ id, title }) => (
            <option key={id} value={id} selected={id === chosen}>
              {title}
            </option>
          ))}
      </select>
    </label>
    {note && (
      <p class="slider-note" id={`${htmlId}-note`}>
        {note}
      </p>
    )}
  </>
))

interface SliderProps {
  htmlId: string
  slider: Slider
  spec: SliderSpec
  value: number
  note: string | undefined
  system: UnitSystem
  send: Send
}

const ConditionSlider = steady(({ htmlId, slider, spec, value, note, system, send }: SliderProps) => (
  <SliderField
    htmlId={htmlId}
    {...spec}
    value={value}
    note={note}
    system={system}
    set={(si) => send({ type: 'set', setting: { [slider]: si } })}
  />
))
