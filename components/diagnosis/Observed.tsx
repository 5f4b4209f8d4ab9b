import { operatingStates, type OperatingState } from '../../calculators/circuit/types.ts'
import { Field } from '../calculator/Field.tsx'
import { accuracyKey, accuracySpecs, statedAccuracy } from './accuracies.ts'
import { isAnswered } from './finder-state.ts'
import { fieldId, isExhaust, keyOf } from './keys.ts'
import { Question } from './Question.tsx'
import type { FinderShared } from './shared.ts'
import { accuracyText } from './words.ts'

/** What is told at any time, by where one looks for it and in the order of asking; what has no group is in the last. */
const groups: readonly { readonly title: string; readonly ids: readonly string[] }[] = [
  { title: 'After standing overnight', ids: ['standing'] },
  { title: 'Sounds, running, smoke, smell, leaks', ids: ['sounds', 'running', 'smoke', 'smell', 'leaks'] },
]
const LAST = 'History, tank and weather'
/** The glass that tells most stands first. */
const FIRST_GLASS = 'return-glass'
/** What is told of all exhausts in words, before the figures of each. */
const ALL_EXHAUSTS = 'exhausts'

interface Props extends FinderShared {
  /** State whose glasses and gauges are open. */
  when: OperatingState
  choose: (when: OperatingState) => void
}

/** All that can be seen, read and told, in groups. */
export function Observed({ when, choose, ...shared }: Props) {
  const { offer, asked, htmlId, state } = shared
  const checks = new Set(offer.checks.map(({ id }) => id))
  const told = offer.questions.filter(
    ({ id, kind, states }) => kind === undefined && states.length === 0 && !checks.has(id),
  )
  const grouped = new Set(groups.flatMap(({ ids }) => ids))
  const titled = [
    ...groups.map(({ title, ids }) => ({
      title,
      questions: ids.flatMap((id) => told.filter((question) => question.id === id)),
    })),
    { title: LAST, questions: told.filter(({ id }) => !grouped.has(id)) },
  ].filter(({ questions }) => questions.length > 0)
  return (
    <>
      <GlassesAndGauges {...shared} when={when} choose={choose} />
      {titled.map(({ title, questions }) => (
        <details key={title} class="observed-group" open={questions.some(({ id }) => isAnswered(state, id))}>
          <summary>
            {title}
            <Count of={questions.filter(({ id }) => isAnswered(state, id)).length} />
          </summary>
          {questions.map(({ id }) => {
            const one = asked.get(id)
            return one && <Question key={id} {...shared} place={htmlId} one={one} />
          })}
        </details>
      ))}
      <Checks {...shared} />
    </>
  )
}

/** How many answers stand in a part of the form that may be out of sight. */
function Count({ of }: { of: number }) {
  return of === 0 ? null : (
    <span class="answer-count">
      {of}
      <span class="unseen"> answered</span>
    </span>
  )
}

function GlassesAndGauges({ when, choose, ...shared }: Props) {
  const { offer, asked, htmlId, state: told } = shared
  const checks = new Set(offer.checks.filter(({ feels }) => feels.length > 0).map(({ id }) => id))
  const inState = (state: OperatingState) =>
    offer.questions.filter(({ id, states }) => states.includes(state) && !checks.has(id))
  const here = inState(when)
  const exhausts = here.filter((one) => isExhaust(one) || one.id === ALL_EXHAUSTS)
  const question = (id: string) => {
    const one = asked.get(keyOf(id, when))
    return one && <Question key={one.key} {...shared} place={htmlId} one={one} />
  }
  const gauges = here.filter((one) => one.kind !== undefined && !isExhaust(one))
  const read = (questions: readonly { id: string }[], state: OperatingState) =>
    questions.filter(({ id }) => isAnswered(told, keyOf(id, state))).length
  return (
    <section class="observed-glasses" aria-labelledby={`${htmlId}-glasses`}>
      <h2 id={`${htmlId}-glasses`}>Glasses and gauges</h2>
      <fieldset class="states">
        <legend>When was it seen?</legend>
        <div class="states-row">
          {operatingStates.map((state) => (
            <label key={state} class="state">
              <input
                type="radio"
                name={`${htmlId}-when`}
                value={state}
                checked={state === when}
                onChange={() => choose(state)}
              />
              <span>
                {offer.states[state].title}
                <Count of={read(inState(state), state)} />
              </span>
            </label>
          ))}
        </div>
      </fieldset>
      {here
        .filter(({ id, kind }) => kind === undefined && id !== ALL_EXHAUSTS)
        .toSorted((a, b) => Number(b.id === FIRST_GLASS) - Number(a.id === FIRST_GLASS))
        .map(({ id }) => question(id))}
      <details class="observed-group" open={read(gauges, when) > 0}>
        <summary>
          Gauges, thermometers{when === 'priming' ? '' : ', power'}
          <Count of={read(gauges, when)} />
        </summary>
        <div class="gauges">{gauges.map(({ id }) => question(id))}</div>
      </details>
      {exhausts.length > 0 && (
        <details class="observed-group" open={read(exhausts, when) > 0}>
          <summary>
            Exhausts of the cylinders
            <Count of={read(exhausts, when)} />
          </summary>
          {question(ALL_EXHAUSTS)}
          <div class="gauges">{exhausts.filter(isExhaust).map(({ id }) => question(id))}</div>
        </details>
      )}
      <Instruments {...shared} />
    </section>
  )
}

/** How right the instruments are, where they are better or worse than such instruments usually are. */
function Instruments({ offer, specs, state, send, htmlId }: FinderShared) {
  const fields = accuracySpecs(offer.questions).flatMap((spec) => {
    const field = state.gauges.fields[spec.id]
    const question = offer.questions.find((one) => one.kind !== undefined && accuracyKey(one) === spec.id)
    return field === undefined || question === undefined ? [] : [{ spec, field, question }]
  })
  const stated = fields.filter(({ field }) => field.text.trim() !== '')
  return (
    <details class="observed-group" open={stated.length > 0}>
      <summary>
        How right the gauges are
        <Count of={stated.length} />
      </summary>
      <div class="gauges">
        {fields.map(({ spec, field, question }) => {
          const { reading, text } = field
          const empty = text.trim() === ''
          const refused = reading !== 'waiting' && !reading.ok ? reading : undefined
          const nought = { reason: 'it is not above nought', accepted: 'a figure above 0' }
          const wrong = refused ?? (statedAccuracy(field) === undefined ? nought : undefined)
          return (
            <div key={spec.id} class="question gauge">
              <Field
                htmlId={fieldId(htmlId, spec.id)}
                spec={specs[spec.id] ?? spec}
                field={field}
                help={`Empty: ± ${accuracyText(question, question.accuracy ?? 0, state.gauges.system)}.`}
                problem={
                  empty || reading === 'waiting' || wrong === undefined
                    ? undefined
                    : { label: spec.label, read: text, ...wrong }
                }
                send={(action) => send({ type: 'gauge', action })}
              />
            </div>
          )
        })}
      </div>
    </details>
  )
}

/** Checks with the hand and with spanners, for those that were made already. */
function Checks(shared: FinderShared) {
  const { offer, asked, htmlId, state } = shared
  const glasses = new Set(offer.checks.flatMap((check) => check.glasses))
  const made = offer.checks
    .filter(({ id }) => !glasses.has(id))
    .map((check) => ({
      check,
      questions: [...asked.values()].filter(({ question }) => question.id === check.id),
    }))
    .filter(({ questions }) => questions.length > 0)
  const answered = made.flatMap(({ questions }) => questions.filter(({ key }) => isAnswered(state, key)))
  return (
    <details class="observed-group">
      <summary>
        Checks made already
        <Count of={answered.length} />
      </summary>
      {made.map(({ check, questions }) => (
        <details key={check.id} class="made-check" open={questions.some(({ key }) => isAnswered(state, key))}>
          <summary>{check.label}</summary>
          {questions.map((one) => (
            <Question key={one.key} {...shared} place={`${htmlId}-made`} one={one} />
          ))}
        </details>
      ))}
    </details>
  )
}
