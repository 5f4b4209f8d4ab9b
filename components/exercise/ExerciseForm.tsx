import { useEffect, useMemo, useReducer, useState } from 'preact/hooks'
import { describeResult, type ResultLine } from '../../calculators/checks/describe.ts'
import { judge } from '../../calculators/exercise/judge.ts'
import type { Act } from '../../calculators/exercise/types.ts'
import { wayOf } from '../../calculators/exercise/way.ts'
import type { UnitSystem } from '../../calculators/quantity/types.ts'
import { preferencesEvent } from '../settings/preferences.ts'
import { unitSystem } from '../settings/unit-system.ts'
import { AnswerSheet } from './AnswerSheet.tsx'
import { CheckRow } from './CheckRow.tsx'
import { knowledgeOf, type CourseData } from './course-data.ts'
import { apply, standsIn } from './exercise-state.ts'
import { Log } from './Log.tsx'
import { NameCause } from './NameCause.tsx'
import { Outcome } from './Outcome.tsx'
import { keepProgress, keptProgress, noProgress } from './progress.ts'
import { StateChoice } from './StateChoice.tsx'
import type { ExerciseProps } from './types.ts'
import { counted, inMinutes, kindHeadings, titlesOf } from './words.ts'

interface Props {
  htmlId: string
  exercise: ExerciseProps
  /** What the checks tell, and what is hidden. */
  course: CourseData
}

const inWords = (lines: readonly ResultLine[]): string =>
  lines.map(({ label, text }) => (label === '' ? text : `${label}: ${text}`)).join('; ')

export function ExerciseForm({ htmlId, exercise, course }: Props) {
  const [progress, send] = useReducer(apply, noProgress)
  const [ready, setReady] = useState(false)
  const [units, follow] = useState<UnitSystem>('si')
  const [said, say] = useState('')
  const [answer, tell] = useState('')

  useEffect(() => {
    const { found, progress: kept } = keptProgress(exercise)
    if (kept) send({ type: 'restore', progress: kept })
    else if (found)
      say('What this device had kept of the exercise does not fit this edition; it starts afresh.')
    const read = () => follow(unitSystem())
    read()
    setReady(true)
    document.addEventListener(preferencesEvent, read)
    return () => document.removeEventListener(preferencesEvent, read)
  }, [exercise])

  useEffect(() => {
    if (ready && !keepProgress(exercise.number, progress))
      say('This browser keeps nothing: the exercise is lost when the page is closed.')
  }, [ready, exercise.number, progress])

  useEffect(() => {
    if (progress.end !== undefined) document.querySelector<HTMLElement>(`#${htmlId} [data-outcome]`)?.focus()
  }, [htmlId, progress.end])

  const knowledge = useMemo(() => knowledgeOf(course), [course])
  const costs = useMemo(
    () => ({
      states: exercise.stateMinutes,
      checks: Object.fromEntries(exercise.checks.map(({ id, minutes }) => [id, minutes])),
    }),
    [exercise],
  )
  const steps = useMemo(() => wayOf(knowledge, costs, progress.acts), [knowledge, costs, progress.acts])
  const shortest = useMemo(() => wayOf(knowledge, costs, course.way), [knowledge, costs, course])
  const linesOf = ({ state, check }: Act): readonly ResultLine[] => {
    const told = course.told.find((move) => move.state === state && move.check === check)
    return told ? describeResult(told.result, units) : []
  }
  const toldBy = (act: Act): string => inWords(linesOf(act))
  const healthOf = ({ state, check }: Act): string => {
    const told = course.told.find((move) => move.state === state && move.check === check)
    return told ? inWords(describeResult(told.health, units)) : ''
  }

  const now = standsIn(progress, exercise.start)
  const ended = progress.end !== undefined
  const spent = steps.at(-1)?.total ?? 0
  const report = course.report.flatMap(({ state, check }) =>
    linesOf({ state, check }).map((line) => ({
      ...line,
      label: `${exercise.states[state].title}${line.label === '' ? '' : `, ${line.label.toLowerCase()}`}`,
    })),
  )
  const lastOf = (check: string) => {
    const act = progress.acts.findLast((candidate) => candidate.check === check)
    const told = course.told.find((move) => move.state === act?.state && move.check === check)
    return act && { state: act.state, lines: linesOf(act), glasses: told?.result.glasses ?? [] }
  }
  const name = (named: readonly string[]): void => {
    const hidden = course.causes.map(({ id }) => id)
    const verdict = judge(
      named,
      hidden,
      course.alike.map((place) => course.answers[place] ?? []),
    )
    send({ type: 'name', named, verdict })
    if (verdict === 'partly') tell('One of the two is right, the other is not.')
    if (verdict === 'wrong') tell(`${titlesOf(named, exercise.faults)}: not it. ${against(named)}`)
  }
  /** The first step that spoke against what was named. */
  const against = (named: readonly string[]): string => {
    const place = course.answers.findIndex((faults) => judge(named, faults, []) === 'right')
    if (place === -1) return 'What the driver saw speaks against it already.'
    const step = steps.find(({ ruledOut }) => ruledOut.includes(place))
    if (step?.act.check === undefined)
      return 'Nothing that you have checked speaks against it, but look further.'
    const check = exercise.checks.find(({ id }) => id === step.act.check)
    return `Against it speaks what you have seen yourself. ${exercise.states[step.act.state].title}, ${check?.label.toLowerCase()}: ${toldBy(step.act)}.`
  }

  return (
    <div class="exercise-live" data-ready={ready ? 'true' : 'false'} id={htmlId}>
      <div class="exercise-bar">
        <p>
          <strong>{exercise.states[now].title}</strong>, {inMinutes(spent)} spent
        </p>
        <a href={`#${htmlId}-naming`}>{ended ? 'See the answer' : 'Name the cause'}</a>
      </div>
      {progress.end !== undefined && (
        <div id={`${htmlId}-naming`}>
          <Outcome
            exercise={exercise}
            course={course}
            end={progress.end}
            own={steps}
            shortest={shortest}
            toldBy={toldBy}
            healthOf={healthOf}
          />
        </div>
      )}
      <div class="exercise-columns">
        <div class="exercise-checks">
          <StateChoice
            exercise={exercise}
            now={now}
            ended={ended}
            bring={(state) => {
              send({ type: 'bring', state })
              say(`${exercise.states[state].title}. ${exercise.states[state].words}`)
            }}
          />
          {kindHeadings.map(([kind, heading]) => (
            <section key={kind}>
              <h3>{heading}</h3>
              <ul class="check-list">
                {exercise.checks
                  .filter((check) => check.kind === kind)
                  .map((check) => (
                    <CheckRow
                      key={check.id}
                      htmlId={`${htmlId}-${check.id}`}
                      exercise={exercise}
                      check={check}
                      now={now}
                      ended={ended}
                      last={lastOf(check.id)}
                      make={(state) => {
                        send({ type: 'check', state, check: check.id })
                        say(`${check.label}. ${toldBy({ state, check: check.id })}.`)
                      }}
                    />
                  ))}
              </ul>
            </section>
          ))}
        </div>
        <div class="exercise-found">
          <Log exercise={exercise} steps={steps} tries={progress.tries} report={report} linesOf={linesOf} />
          {!ended && (
            <NameCause
              htmlId={htmlId}
              exercise={exercise}
              answer={answer}
              name={name}
              giveUp={() => send({ type: 'give up' })}
            />
          )}
          <details class="exercise-hint">
            <summary>A hint</summary>
            <p>{exercise.hint}</p>
            {!ended && (
              <p>
                What has been seen so far leaves{' '}
                {counted(
                  steps.at(-1)?.open.length ?? course.answers.length,
                  exercise.hidden === 1 ? 'cause' : 'pair of causes',
                  exercise.hidden === 1 ? 'causes' : 'pairs of causes',
                )}
                .
              </p>
            )}
          </details>
          <div class="exercise-buttons">
            <button
              type="button"
              onClick={() => {
                send({ type: 'again' })
                tell('')
                say('The exercise starts afresh.')
              }}
            >
              Start afresh
            </button>
          </div>
          <output class="said">{said}</output>
        </div>
      </div>
      <AnswerSheet
        htmlId={htmlId}
        exercise={exercise}
        course={course}
        shortest={shortest}
        toldBy={toldBy}
        healthOf={healthOf}
      />
    </div>
  )
}
