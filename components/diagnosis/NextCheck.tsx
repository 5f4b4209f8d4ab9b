import { useEffect, useRef, useState } from 'preact/hooks'
import { plantStates } from '../../calculators/checks/types.ts'
import { CautionLinks } from '../exercise/CautionLinks.tsx'
import { inMinutes } from '../exercise/words.ts'
import { isAnswered, isPlantState } from './finder-state.ts'
import { keyOf, questionsNamed, type Asked } from './keys.ts'
import { Question } from './Question.tsx'
import type { FinderShared } from './shared.ts'
import type { CheckToMake, FoundCheck } from './types.ts'
import { checkInWords } from './words.ts'

/** 'header-pressure.full': a check in a state. */
const nameOf = ({ check, state }: FoundCheck): string => keyOf(check, state)

/** What can be answered of a check in a state. */
function questionsOf(
  { offer, asked }: FinderShared,
  { id, glasses, readings }: CheckToMake,
  { state }: FoundCheck,
): Asked[] {
  const questions = [...glasses, ...readings, id].flatMap((name) => questionsNamed(offer.questions, name))
  return [...new Set(questions)].flatMap((question) => {
    const one = asked.get(question.states.length === 0 ? question.id : keyOf(question.id, state))
    return one === undefined ? [] : [one]
  })
}

/** The check that is expected to tell most for its effort; answered here, the next one follows. */
export function NextCheck(shared: FinderShared) {
  const { offer, next: found, htmlId, state, send } = shared
  const heading = useRef<HTMLHeadingElement>(null)
  /** A check whose fields are being filled in stays, though the answer may have made another one worth more. */
  const [kept, keep] = useState<FoundCheck>()
  /** Name of the check that was answered or left out last, until another one has come. */
  const [left, leave] = useState<string>()
  const proposed = found?.checks.filter((one) => !state.skipped.includes(one.check)) ?? []
  const next = kept ?? proposed[0]
  const name = next && nameOf(next)
  useEffect(() => {
    if (left === undefined || left === name) return
    leave(undefined)
    // Who works by keys goes on from here; the button that was pressed is gone.
    heading.current?.focus()
  }, [left, name])
  const check = offer.checks.find(({ id }) => id === next?.check)
  if (found === undefined) return null
  /** On to the next one; whoever works by keys is taken along. */
  const goOn = (made: FoundCheck, follow: boolean): void => {
    if (questionsMade(made)) send({ type: 'now', now: made.state })
    keep(undefined)
    leave(follow ? nameOf(made) : undefined)
  }
  const questionsMade = (made: FoundCheck): boolean =>
    check !== undefined && questionsOf(shared, check, made).some(({ key }) => isAnswered(state, key))
  return (
    <section class="next-check" id={`${htmlId}-next`} aria-labelledby={`${htmlId}-next-heading`}>
      <h2 id={`${htmlId}-next-heading`} ref={heading} tabIndex={-1}>
        {check === undefined ? 'Next check' : `Next check: ${checkInWords(offer, check, next?.state)}`}
      </h2>
      {next === undefined || check === undefined ? (
        <p>
          {state.skipped.length > 0
            ? 'No other check is worth its time.'
            : 'No other check is worth its time. Confirm the first cause.'}
        </p>
      ) : (
        // It only watches whether somebody is still at work in it.
        // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions
        <fieldset
          class="next-body"
          aria-label={check.label}
          onFocusIn={({ target }) => {
            if (target instanceof HTMLInputElement || target instanceof HTMLSelectElement) keep(next)
          }}
          onFocusOut={({ currentTarget, relatedTarget }) => {
            const stays = relatedTarget instanceof Node && currentTarget.contains(relatedTarget)
            if (kept !== undefined && !stays) goOn(kept, false)
          }}
          onKeyDown={({ key, target }) => {
            if (key === 'Enter' && target instanceof HTMLInputElement) goOn(next, true)
          }}
        >
          <p class="next-facts">
            <strong>{inMinutes(next.minutes)}</strong>{' '}
            {next.state === state.now
              ? offer.states[next.state].title.toLowerCase()
              : `with the time to go from ${offer.states[state.now].title.toLowerCase()} to ${offer.states[next.state].title.toLowerCase()}`}
          </p>
          <PlantNow {...shared} />
          <CautionLinks
            cautions={[...check.cautions, ...offer.states[next.state].cautions].filter(
              ({ id }, place, all) => all.findIndex((other) => other.id === id) === place,
            )}
            href={offer.cautionsHref}
          />
          <p>{check.how}</p>
          {check.procedure && (
            <p class="next-procedure">
              Procedure: <a href={check.procedure.href}>{check.procedure.title}</a>
            </p>
          )}
          {questionsOf(shared, check, next).map((one) => (
            <Question
              key={one.key}
              {...shared}
              place={`${htmlId}-next`}
              one={one}
              chosen={() => {
                send({ type: 'now', now: next.state })
                keep(undefined)
                leave(nameOf(next))
              }}
            />
          ))}
          <div class="next-buttons">
            {kept !== undefined && (
              <button type="button" class="primary" onClick={() => goOn(next, true)}>
                Go on
              </button>
            )}
            <button
              type="button"
              onClick={() => {
                send({ type: 'skip', check: next.check })
                keep(undefined)
                leave(nameOf(next))
              }}
            >
              Cannot be done now
            </button>
          </div>
        </fieldset>
      )}
      {state.skipped.length > 0 && (
        <button type="button" onClick={() => send({ type: 'unskip' })}>
          Ask again for the {state.skipped.length} left out
        </button>
      )}
    </section>
  )
}

/** The state in which the plant stands: minutes to the next one hang on it. */
function PlantNow({ offer, htmlId, state, send }: FinderShared) {
  return (
    <p class="plant-now">
      <label for={`${htmlId}-now`}>{'The plant is now'}</label>
      <select
        id={`${htmlId}-now`}
        value={state.now}
        onChange={({ currentTarget: { value } }) => {
          if (isPlantState(value)) send({ type: 'now', now: value })
        }}
      >
        {plantStates.map((one) => (
          <option key={one} value={one} selected={one === state.now}>
            {offer.states[one].title}
          </option>
        ))}
      </select>
    </p>
  )
}
