import { useCallback, useEffect, useMemo, useReducer, useState } from 'preact/hooks'
import { showInAddress, useAddressBar } from '../../calculator/address-bar.ts'
import { AddressProblems } from '../../calculator/AddressProblems.tsx'
import { useSettled } from '../../layout/settled.ts'
import { readAddress, startState, writeAddress } from './address.ts'
import { BenchActions } from './BenchActions.tsx'
import { ChangeStrip } from './ChangeStrip.tsx'
import { ColourKey } from './ColourKey.tsx'
import { ConditionControls, conditionIds } from './ConditionControls.tsx'
import { Facts } from './Facts.tsx'
import { FaultList } from './FaultList.tsx'
import { GlassPanel } from './GlassPanel.tsx'
import { LiveSheet } from './LiveSheet.tsx'
import { NoAnswer } from './NoAnswer.tsx'
import { PartPanel } from './PartPanel.tsx'
import { Remarks } from './Remarks.tsx'
import { scaleOf } from './scale.ts'
import { apply, usualSetting, type Action } from './setting.ts'
import type { Solved } from './solver.ts'
import { Spoken } from './Spoken.tsx'
import type { BenchData, BenchState, Setting } from './types.ts'
import { useUnits } from './units.ts'
import { useSolved } from './use-solved.ts'
import { labelOf } from './words.ts'

export interface BenchProps {
  data: BenchData
  /** Start of every id in the bench. */
  htmlId: string
  solve: (setting: Setting) => Solved
  /** Only in a browser. */
  live: boolean
}

/** The tables follow when the sliding pauses: what moves with the slider comes first. */
const TABLES_PAUSE_MS = 120
/** Changes that stand on a shop PC's screen beside the glasses. */
const MOST_CHANGES = 6

/** The circuit that a person works with: drawing, glasses, what changed, and all that can be set. */
export function Bench({ data, htmlId, solve, live }: BenchProps) {
  const start = useMemo(() => startState(data), [data])
  const [state, send] = useReducer(apply, start)
  const [ready, setReady] = useState(false)
  const [touched, touch] = useState(false)
  const [byHand, setByHand] = useState(false)
  const [problems, setProblems] = useState<readonly string[]>([])
  const [beforeReset, setBeforeReset] = useState<BenchState>()
  const system = useUnits(live)
  const { setting, colouring, part } = state
  const usualLevel = useMemo(() => usualSetting(data).tankLevel, [data])
  const answer = useSolved(solve, setting, usualLevel)
  const { now, health, reason } = answer
  const tabled = useSettled(answer, TABLES_PAUSE_MS, true)
  const scale = useMemo(() => health && scaleOf(colouring, health, system), [colouring, health, system])

  useEffect(() => {
    if (!live) return
    const reading = readAddress(data, location.search.slice(1))
    send({ type: 'restore', state: reading.state })
    setProblems(reading.problems)
    setReady(true)
  }, [data, live])
  const write = useCallback(
    () => showInAddress(writeAddress(data, state, location.search.slice(1))),
    [data, state],
  )
  useAddressBar(ready, state, write)

  const change = useCallback((action: Action): void => {
    touch(true)
    setBeforeReset(undefined)
    send(action)
  }, [])
  const choose = useCallback((id: string) => {
    setByHand(true)
    send({ type: 'part', part: id })
  }, [])
  const close = (): void => {
    send({ type: 'part', part: undefined })
    document.getElementById(`drawn-${part}`)?.focus()
  }
  const chosen = data.circuit.elements.find(({ id }) => id === part)
  const shared = { data, htmlId, setting, now, health, system, send: change }
  return (
    <div class={`bench bench-by-${colouring}`}>
      <AddressProblems problems={problems} />
      <div class="bench-board">
        <section class="bench-sheet" aria-label="The circuit as it runs">
          <p class="circuit-hint">The drawing is wider than this screen: move it sideways.</p>
          {/* A region that scrolls must take the keyboard. */}
          {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex */}
          <section class="circuit-window" tabIndex={0} aria-label={`${data.circuit.title}, drawing`}>
            <LiveSheet {...shared} scale={scale} chosen={part} choose={choose} />
          </section>
          <ColourKey
            htmlId={htmlId}
            colouring={colouring}
            scale={scale}
            choose={(name) => send({ type: 'colour', colouring: name })}
          />
        </section>
        <div class="bench-side">
          {/* Where faults bring many remarks it scrolls. */}
          {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex */}
          <section class="bench-now" tabIndex={0} aria-label="What one sees now">
            {now && health ? (
              <>
                <div class="glass-panels">
                  {now.glasses.map((glass) => (
                    <GlassPanel
                      key={glass.part}
                      htmlId={`${htmlId}-large-${glass.part}`}
                      label={labelOf(data, glass.part)}
                      now={glass}
                      health={health.glasses.find((usual) => usual.part === glass.part)}
                    />
                  ))}
                </div>
                <div class="bench-changes">
                  <h2>Changed against health</h2>
                  <ChangeStrip data={data} health={health} now={now} system={system} most={MOST_CHANGES} />
                </div>
                <Remarks remarks={now.remarks} />
              </>
            ) : (
              <NoAnswer reason={reason} />
            )}
          </section>
          <div class="bench-controls" data-ready={ready ? 'true' : 'false'}>
            {chosen && <PartPanel {...shared} element={chosen} focused={byHand} close={close} />}
            <section aria-labelledby={`${htmlId}-conditions`}>
              <h2 id={`${htmlId}-conditions`}>Conditions</h2>
              <ConditionControls {...shared} offered={conditionIds} />
            </section>
            <FaultList data={data} htmlId={htmlId} severities={setting.faults} send={change} />
            <BenchActions
              ready={ready}
              address={() => {
                write()
                return location.href
              }}
              reset={() => {
                setBeforeReset(state)
                send({ type: 'restore', state: start })
              }}
              undoReset={
                beforeReset &&
                (() => {
                  send({ type: 'restore', state: beforeReset })
                  setBeforeReset(undefined)
                })
              }
            />
          </div>
        </div>
      </div>
      {now && (
        <p class="bench-bar" aria-hidden="true">
          {now.glasses.map(({ part: glass, words }) => (
            <span key={glass}>
              {labelOf(data, glass)}: <strong>{words}</strong>
            </span>
          ))}
        </p>
      )}
      <Spoken data={data} answer={answer} system={system} touched={touched} />
      {now && tabled.now && tabled.health && (
        <Facts
          data={data}
          htmlId={htmlId}
          setting={tabled.setting}
          now={tabled.now}
          health={tabled.health}
          system={system}
        />
      )}
    </div>
  )
}
