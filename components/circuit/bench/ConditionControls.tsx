import { operatingStates } from '../../../calculators/circuit/types.ts'
import type { UnitSystem } from '../../../calculators/quantity/types.ts'
import { slidersOf, type Action, type Slider } from './setting.ts'
import { SliderField } from './SliderField.tsx'
import type { BenchData, Setting } from './types.ts'
import { stateNames, stateNotes } from './words.ts'

/** What of the conditions a person may change. */
export const conditionIds = ['state', 'fuel', 'tankTemperature', 'ambientTemperature', 'tankLevel'] as const
export type Condition = (typeof conditionIds)[number]

export const isCondition = (id: string): id is Condition => conditionIds.some((condition) => condition === id)

interface Props {
  data: BenchData
  htmlId: string
  setting: Setting
  system: UnitSystem
  offered: readonly Condition[]
  send: (action: Action) => void
}

/** State, fuel, temperatures and level. */
export function ConditionControls({ data, htmlId, setting, system, offered, send }: Props) {
  const sliders = slidersOf(data)
  const fuels = data.fuels.filter(({ id }) => data.circuit.fuels.includes(id))
  return (
    <div class="conditions">
      {offered.includes('state') && (
        <fieldset class="states">
          <legend class="unseen">State</legend>
          <div class="states-row">
            {operatingStates.map((state) => (
              <label key={state} class="state" title={stateNotes[state]}>
                <input
                  type="radio"
                  name={`${htmlId}-state`}
                  value={state}
                  checked={setting.state === state}
                  onChange={() => send({ type: 'set', setting: { state } })}
                />
                <span>{stateNames[state]}</span>
              </label>
            ))}
          </div>
        </fieldset>
      )}
      {offered.includes('fuel') && (
        <label class="slider">
          <span class="slider-label">Fuel</span>
          <select
            value={setting.fuel}
            autocomplete="off"
            onChange={(event) => send({ type: 'set', setting: { fuel: event.currentTarget.value } })}
          >
            {fuels.map(({ id, title }) => (
              <option key={id} value={id} selected={id === setting.fuel}>
                {title}
              </option>
            ))}
          </select>
        </label>
      )}
      {(Object.keys(sliders) as Slider[])
        .filter((slider) => offered.includes(slider))
        .map((slider) => (
          <SliderField
            key={slider}
            htmlId={`${htmlId}-${slider}`}
            {...sliders[slider]}
            step={1}
            value={setting[slider]}
            system={system}
            set={(value) => send({ type: 'set', setting: { [slider]: value } })}
          />
        ))}
    </div>
  )
}
