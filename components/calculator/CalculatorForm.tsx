import { useCallback, useEffect, useMemo, useReducer, useState } from 'preact/hooks'
import type { Calculator } from '../../calculators/calculator/types.ts'
import { Accuracies } from './Accuracies.tsx'
import { Actions } from './Actions.tsx'
import { readAddress, writeAddress } from './address.ts'
import type { AddressReading, Place } from './address.ts'
import { showInAddress, useAddressBar } from './address-bar.ts'
import { AddressProblems } from './AddressProblems.tsx'
import { Chart } from './Chart.tsx'
import { ColumnMode } from './ColumnMode.tsx'
import { evaluate } from './evaluate.ts'
import { fieldsOf } from './fields.ts'
import { Inputs } from './Inputs.tsx'
import { useSettled } from '../layout/settled.ts'
import { unitSystem } from '../settings/unit-system.ts'
import { useCalculation, useExpressions, useLastRead, useUnitSystem } from './live.ts'
import { PointsChart } from './PointsChart.tsx'
import { PrintedInputs } from './PrintedInputs.tsx'
import { Result } from './Result.tsx'
import { apply, startState, typedInto } from './state.ts'
import type { Action, FormState, Starting } from './state.ts'
import { summaryOf } from './summary.ts'
import type { SourceLine } from './summary.ts'
import { briefResult, spokenResult } from './spoken.ts'
import { Working } from './Working.tsx'

export interface FormProps {
  calculator: Calculator
  starting: Starting
  sources: readonly SourceLine[]
  /** Start of every id in the form. */
  htmlId: string
  /** Only in a browser. */
  live?: {
    readonly place: Place
    /** What was typed before the script had loaded, by field. */
    readonly early: Readonly<Record<string, string>>
  }
}

/** A screen reader is told the result when the typing pauses, not at every key. */
const SPEECH_PAUSE_MS = 900

/** After one of these there is something new that an undone reset would destroy. */
const changesInputs: ReadonlySet<Action['type']> = new Set<Action['type']>([
  'type',
  'choose',
  'typeCell',
  'addRow',
  'removeRow',
  'fillCells',
  'replaceRows',
])

export function CalculatorForm({ calculator, starting, sources, htmlId, live }: FormProps) {
  const specs = useMemo(() => fieldsOf(calculator), [calculator])
  const [state, send] = useReducer(
    (before: FormState, action: Action) => apply(specs, before, action),
    undefined,
    () => startState(calculator, starting, 'si'),
  )
  const [ready, setReady] = useState(false)
  const [touched, touch] = useState(false)
  const [address, setAddress] = useState<Pick<AddressReading, 'problems' | 'unread'>>({ problems: [] })
  const [beforeReset, setBeforeReset] = useState<FormState>()
  const start = useMemo(
    () => startState(calculator, starting, state.system),
    [calculator, starting, state.system],
  )
  const { evaluation, drawn } = useCalculation(calculator, specs, state)
  const shown = useLastRead({ state, evaluation }).evaluation
  const later = useLastRead(drawn)
  const lagging = evaluation.pending || drawn.state !== state

  useUnitSystem(send)
  useExpressions(specs, state, send)
  useEffect(() => {
    if (live === undefined) return
    const fresh = startState(calculator, starting, unitSystem())
    const reading = readAddress(calculator, specs, fresh, location.search.slice(1), live.place)
    const typed = Object.entries(live.early).map(([name, text]) => typedInto(name, text))
    const restored = typed.reduce((before, action) => apply(specs, before, action), reading.state)
    send({ type: 'restore', state: restored })
    setAddress(reading)
    setReady(true)
  }, [calculator, starting, specs, live])

  const write = useCallback(() => {
    if (live === undefined) return
    showInAddress(writeAddress(calculator, specs, start, state, location.search.slice(1), live.place))
  }, [live, calculator, specs, start, state])
  const writeWhole = useCallback(() => {
    if (live === undefined) return
    showInAddress(writeAddress(calculator, specs, start, state, location.search.slice(1), live.place, true))
  }, [live, calculator, specs, start, state])
  useAddressBar(ready, state, write, writeWhole)
  // What the page holds when it is opened is no news; only a change is spoken.
  const settledEvaluation = useSettled(evaluation, SPEECH_PAUSE_MS)
  const spoken =
    touched && settledEvaluation === evaluation && !evaluation.pending
      ? spokenResult(calculator, state, evaluation)
      : ''

  const change = (action: Action): void => {
    touch(true)
    if (changesInputs.has(action.type)) setBeforeReset(undefined)
    send(action)
  }
  const summary = () => {
    const link = new URL(location.href)
    if (ready && live !== undefined) {
      const query = location.search.slice(1)
      showInAddress(writeAddress(calculator, specs, start, state, query, live.place))
      link.search = writeAddress(calculator, specs, start, state, query, live.place, true)
    }
    const whole = evaluation.pending ? evaluate(calculator, specs, state) : evaluation
    return summaryOf(calculator, specs, state, whole, sources, link.href)
  }
  const parts = { htmlId, calculator, specs, state, evaluation, send: change }
  return (
    <>
      <AddressProblems problems={address.problems} unread={address.unread === true} />
      <div class="calculator-columns">
        <fieldset class="calculator-given">
          <legend class="unseen">Inputs</legend>
          <Inputs {...parts} />
          <Accuracies {...parts} />
          <PrintedInputs {...parts} {...drawn} />
          <p class="result-strip" aria-hidden="true">
            {briefResult(calculator, state, shown)}
          </p>
        </fieldset>
        <div class="calculator-found" data-waiting={evaluation.waiting ? 'true' : 'false'}>
          <div class="calculator-kept">
            <Result {...parts} evaluation={shown} />
            <div class="calculator-drawn" data-lagging={lagging ? 'true' : 'false'}>
              <Chart {...parts} {...later} />
              <PointsChart {...parts} {...later} />
            </div>
          </div>
        </div>
      </div>
      <output class="unseen">{spoken}</output>
      <div class="calculator-drawn" data-lagging={lagging ? 'true' : 'false'}>
        <Working steps={later.evaluation.result?.steps ?? []} state={later.state} />
      </div>
      <ColumnMode {...parts} {...drawn} />
      <Actions
        ready={ready}
        summary={summary}
        reset={() => {
          setBeforeReset(state)
          send({ type: 'restore', state: start })
        }}
        undoReset={
          beforeReset &&
          (() => {
            send({ type: 'restore', state: beforeReset })
            send({ type: 'follow', system: unitSystem() })
            setBeforeReset(undefined)
          })
        }
      />
    </>
  )
}
