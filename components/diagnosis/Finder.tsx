import { useCallback, useEffect, useMemo, useReducer, useState } from 'preact/hooks'
import { operatingStates } from '../../calculators/circuit/types.ts'
import { showInAddress } from '../calculator/address-bar.ts'
import { AddressProblems } from '../calculator/AddressProblems.tsx'
import { useExpressions, useUnitSystem } from '../calculator/live.ts'
import type { Action } from '../calculator/state.ts'
import { inMinutes } from '../exercise/words.ts'
import { printEvent } from '../layout/print-event.ts'
import { useSettled } from '../layout/settled.ts'
import { unitSystem } from '../settings/unit-system.ts'
import { statedAccuracies } from './accuracies.ts'
import { CIRCUIT_KEY, readAddress, writeAddress } from './address.ts'
import {
  apply,
  gaugeSpecs,
  isAnswered,
  observationsOf,
  startState,
  type FinderAction,
  type FinderState,
} from './finder-state.ts'
import { askedOf, fieldId } from './keys.ts'
import { NextCheck } from './NextCheck.tsx'
import { Observed } from './Observed.tsx'
import { Question } from './Question.tsx'
import { useReckoned } from './reckoner.ts'
import { Results } from './Results.tsx'
import { rowInWords, shownRows } from './rows.ts'
import { percentText } from './shares.ts'
import type { FinderShared } from './shared.ts'
import type { CircuitChoice, FinderOffer, FoundCauses, FoundNext } from './types.ts'
import { checkInWords } from './words.ts'
import { workOrderOf } from './work-order.ts'
import { PrintedWorkOrder, WorkOrderSheet } from './WorkOrderSheet.tsx'

interface Props {
  htmlId: string
  offer: FinderOffer
  /** The first is shown where the address names none. */
  circuits: readonly CircuitChoice[]
}

/** Browsers refuse more than a few changes of address a second. */
const ADDRESS_PAUSE_MS = 400
/** A screen reader is told when the answering pauses. */
const SPEECH_PAUSE_MS = 1200

/** From what was seen to why: answers on one side, causes and the next check on the other. */
export function Finder({ htmlId, offer, circuits }: Props) {
  const specs = useMemo(() => gaugeSpecs(offer.questions), [offer])
  const asked = useMemo(() => askedOf(offer.questions), [offer])
  const opened = useMemo(
    () => readAddress(offer, specs, location.search.slice(1), unitSystem()),
    [offer, specs],
  )
  const reduce = useCallback(
    (before: FinderState, action: FinderAction) => apply(specs, before, action),
    [specs],
  )
  const [state, dispatch] = useReducer(reduce, opened.state)
  const [when, choose] = useState(() => firstState(offer, asked, opened.state))
  /** Key of a question whose field is to take the focus once it is there. */
  const [wanted, show] = useState<string>()
  const [touched, touch] = useState(false)
  /** The day on which something was last told; paper bears it. */
  const [today, setToday] = useState(() => new Date())
  const [beforeReset, setBeforeReset] = useState<FinderState>()
  const sendToGauges = useCallback((action: Action) => dispatch({ type: 'gauge', action }), [])
  useUnitSystem(sendToGauges)
  useExpressions(specs, state.gauges, sendToGauges)

  const observations = useUnchanged(observationsOf(offer, state))
  const accuracies = useUnchanged(statedAccuracies(offer.questions, state.gauges.fields))
  const usual = circuits[0]?.id ?? offer.circuit
  const knowledge = circuits.find(({ id }) => id === offer.circuit)?.knowledge ?? ''
  const { causes, next, status, again } = useReckoned(knowledge, observations, accuracies, state.now)

  const write = useCallback(
    () => showInAddress(writeAddress(offer, state, usual, location.search.slice(1))),
    [offer, state, usual],
  )
  const settled = useSettled(state, ADDRESS_PAUSE_MS)
  useEffect(() => {
    if (settled === state) write()
    document.addEventListener(printEvent, write)
    return () => document.removeEventListener(printEvent, write)
  }, [settled, state, write])

  useEffect(() => {
    if (wanted === undefined) return
    const of = asked.get(wanted)?.state
    if (of !== undefined && of !== when) {
      choose(of)
      return
    }
    document.getElementById(fieldId(htmlId, wanted))?.focus()
    show(undefined)
  }, [asked, htmlId, wanted, when])

  const send = (action: FinderAction): void => {
    touch(true)
    setToday(new Date())
    setBeforeReset(undefined)
    dispatch(action)
  }
  const order = () => {
    write()
    return workOrderOf(offer, specs, state, { causes, next }, new Date(), location.href)
  }
  const start = offer.starts[state.from]
  const shared: FinderShared = { htmlId, offer, specs, asked, state, found: causes, next, send }
  return (
    <div class="finder-live" id={htmlId} data-ready="true">
      <AddressProblems problems={opened.problems} />
      <nav class="finder-circuits" aria-label="Circuit">
        <span>Circuit</span>
        <ul>
          {circuits.map(({ id, title }) => (
            <li key={id}>
              <a
                href={`?${writeAddress({ ...offer, circuit: id }, state, usual) || `${CIRCUIT_KEY}=${id}`}`}
                aria-current={id === offer.circuit ? 'true' : undefined}
              >
                {title}
              </a>
            </li>
          ))}
        </ul>
        {offer.invented && <span class="invented">invented</span>}
      </nav>
      <div class="finder-columns">
        <div class="finder-seen">
          {start && (
            <div class="finder-start">
              <p>
                From the symptom <a href={start.href}>{start.title}</a>. What it says is filled in; answer
                what it leaves open, and change what you saw otherwise.
              </p>
              {start.asks.map((key) => {
                const one = asked.get(key)
                return one && <Question key={key} {...shared} place={`${htmlId}-start`} one={one} />
              })}
            </div>
          )}
          <Observed {...shared} when={when} choose={choose} />
        </div>
        <div class="finder-found" id={`${htmlId}-found-column`} aria-busy={status === 'behind'}>
          <Results {...shared} status={status} again={again} show={show} />
          <NextCheck {...shared} />
          <WorkOrderSheet
            {...shared}
            order={order}
            startAfresh={() => {
              setBeforeReset(state)
              dispatch({ type: 'restore', state: startState(specs, unitSystem()) })
            }}
            undo={
              beforeReset &&
              (() => {
                dispatch({ type: 'restore', state: beforeReset })
                setBeforeReset(undefined)
              })
            }
          />
        </div>
      </div>
      <ResultBar {...shared} />
      <Spoken {...shared} touched={touched} current={status === 'ready'} />
      <PrintedWorkOrder order={workOrderOf(offer, specs, state, { causes, next }, today, '')} />
    </div>
  )
}

/** The same value for as long as it says the same: what does not change what was told asks nothing anew. */
function useUnchanged<Value>(value: Value): Value {
  const text = JSON.stringify(value)
  // oxlint-disable-next-line react-hooks/exhaustive-deps -- the text says all that the value does
  return useMemo(() => value, [text])
}

/** The state whose glasses are open first: that of the first answer, or of what the symptom asks. */
function firstState(offer: FinderOffer, asked: FinderShared['asked'], state: FinderState) {
  const answered = [...asked.values()].filter(({ key }) => isAnswered(state, key))
  const toAnswer = offer.starts[state.from]?.asks.flatMap((key) => asked.get(key) ?? []) ?? []
  const first = [...answered, ...toAnswer].find((one) => one.state !== undefined)
  return first?.state ?? operatingStates[0]
}

/** On a phone: the first cause and the next check, always at the thumb. */
function ResultBar({ offer, found, next: proposed, state, htmlId }: FinderShared) {
  const [first] = found ? shownRows(offer, found) : []
  const next = proposed?.checks.find(({ check: id }) => !state.skipped.includes(id))
  const check = offer.checks.find(({ id }) => id === next?.check)
  return (
    <nav class="finder-bar" aria-label="Results">
      <a href={`#${htmlId}-causes`}>
        {first === undefined ? (
          'Causes are on their way'
        ) : (
          <>
            <span class="bar-words">{first.words}</span> <strong>{percentText(first.percent)}</strong>
          </>
        )}
      </a>
      <a href={`#${htmlId}-next`}>
        {next === undefined || check === undefined ? (
          'No next check'
        ) : (
          <>
            <span class="bar-words">Next: {checkInWords(offer, check, next.state)}</span>{' '}
            <strong>{inMinutes(next.minutes)}</strong>
          </>
        )}
      </a>
    </nav>
  )
}

interface SpokenProps extends FinderShared {
  /** What the page opens with is no news. */
  touched: boolean
  current: boolean
}

/** Tells a screen reader what comes first now, once the answering pauses. */
function Spoken({ touched, current, ...shared }: SpokenProps) {
  const { found, next } = shared
  const words = found === undefined ? '' : spokenFindings(shared, found, next)
  const settled = useSettled(words, SPEECH_PAUSE_MS)
  return <output class="unseen">{touched && current && settled === words ? words : ''}</output>
}

function spokenFindings(
  { offer, state }: FinderShared,
  found: FoundCauses,
  next: FoundNext | undefined,
): string {
  const [first] = shownRows(offer, found)
  const proposed = next?.checks.find(({ check: id }) => !state.skipped.includes(id))
  const check = offer.checks.find(({ id }) => id === proposed?.check)
  const doubts = found.doubts.length > 0 ? `${found.verdict} ` : ''
  const stop = next?.doNotRun === undefined ? '' : `${next.doNotRun} `
  const cause = first === undefined ? '' : `First cause: ${rowInWords(first)}, ${first.percent} per cent.`
  return `${stop}${doubts}${cause}${check === undefined ? '' : ` Next check: ${checkInWords(offer, check, proposed?.state)}.`}`
}
