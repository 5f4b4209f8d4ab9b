import { useCallback, useEffect, useMemo, useReducer, useState } from 'preact/hooks'
import type { UnitSystem } from '../../../calculators/quantity/types.ts'
import { href } from '../../layout/href.ts'
import { startState, writeAddress } from './address.ts'
import type { BenchProps } from './Bench.tsx'
import { ConditionControls, isCondition } from './ConditionControls.tsx'
import { FaultSwitch } from './FaultSwitch.tsx'
import { GlassPanel } from './GlassPanel.tsx'
import { NoAnswer } from './NoAnswer.tsx'
import { Remarks } from './Remarks.tsx'
import { apply, usualSetting, type Action } from './setting.ts'
import { Spoken } from './Spoken.tsx'
import type { BenchData, Preset, Setting } from './types.ts'
import { useUnits } from './units.ts'
import { useSolved, type Answer } from './use-solved.ts'
import { conditionWords, faultWords, labelOf, settingWords, shownReading } from './words.ts'

interface Props extends BenchProps {
  preset: Preset
}

/** A bench in an article: a few glasses and readings, and the few things that its subject needs to be moved. */
export function SmallBench({ data, htmlId, solve, preset, live }: Props) {
  const start = useMemo(() => startState(data, preset.setting), [data, preset])
  const [state, send] = useReducer(apply, start)
  const [touched, touch] = useState(false)
  const [ready, setReady] = useState(false)
  useEffect(() => setReady(live), [live])
  const system = useUnits(live)
  const { setting } = state
  const usualLevel = useMemo(() => usualSetting(data).tankLevel, [data])
  const answer = useSolved(solve, setting, usualLevel)
  const change = useCallback((action: Action): void => {
    touch(true)
    send(action)
  }, [])
  const address = `${href(`bench/${data.id}`)}?${writeAddress(data, state)}`
  return (
    <div class="small-bench">
      <div class="small-bench-controls">
        <ConditionControls
          data={data}
          htmlId={htmlId}
          setting={setting}
          now={answer.now}
          system={system}
          offered={preset.move.filter(isCondition)}
          send={change}
        />
        {data.faults
          .filter(({ id }) => preset.move.includes(id))
          .map((fault) => (
            <FaultSwitch
              key={fault.id}
              fault={fault}
              severity={setting.faults[fault.id]}
              htmlId={`${htmlId}-${fault.id}`}
              send={change}
            />
          ))}
        <p class="small-bench-set">{stillWords(data, preset, setting, system)}</p>
        <p class="small-bench-paper">Set: {settingWords(data, setting, system)}.</p>
        <p class="small-bench-ways screen-only">
          <button type="button" hidden={!ready} onClick={() => change({ type: 'restore', state: start })}>
            Reset
          </button>
          <a href={address}>On the whole bench</a>
        </p>
      </div>
      <Shown data={data} htmlId={htmlId} preset={preset} answer={answer} system={system} />
      <Spoken data={data} answer={answer} system={system} touched={touched} />
    </div>
  )
}

interface ShownProps {
  data: BenchData
  htmlId: string
  preset: Preset
  answer: Answer
  system: UnitSystem
}

function Shown({ data, htmlId, preset, answer: { now, health, reason }, system }: ShownProps) {
  if (!now || !health) return <NoAnswer reason={reason} />
  return (
    <div class="small-bench-shown">
      <div class="glass-panels">
        {now.glasses
          .filter(({ part }) => preset.glasses.includes(part))
          .map((glass) => (
            <GlassPanel
              key={glass.part}
              htmlId={`${htmlId}-${glass.part}`}
              label={labelOf(data, glass.part)}
              now={glass}
              health={health.glasses.find(({ part }) => part === glass.part)}
            />
          ))}
      </div>
      <table class="small-bench-readings">
        <caption class="unseen">Readings now and in health</caption>
        <thead>
          <tr>
            <th scope="col">Reading</th>
            <th scope="col">Now</th>
            <th scope="col">In health</th>
          </tr>
        </thead>
        <tbody>
          {preset.readings.flatMap((id) => {
            const reading = now.readings.find((candidate) => candidate.id === id)
            const usual = health.readings.find((candidate) => candidate.id === id)
            if (reading === undefined || usual === undefined) return []
            return [
              <tr key={id}>
                <th scope="row">{reading.label}</th>
                <td>{shownReading(reading, system)}</td>
                <td>{shownReading(usual, system)}</td>
              </tr>,
            ]
          })}
        </tbody>
      </table>
      <Remarks remarks={now.remarks} />
    </div>
  )
}

/** What is set and cannot be moved here, in words. */
function stillWords(data: BenchData, { move }: Preset, setting: Setting, system: UnitSystem): string {
  const words = conditionWords(data, setting, system)
  const still = Object.entries({ ...words, fuel: words.fuel.toLowerCase() }).filter(
    ([id]) => !move.includes(id),
  )
  const others = { faults: data.faults.filter(({ id }) => !move.includes(id)) }
  const faults = faultWords(others, setting.faults, system)
  return `Set besides: ${[...still.map(([, text]) => text), ...faults].join(', ')}.`
}
