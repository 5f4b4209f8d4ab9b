import { useState } from 'preact/hooks'
import type { ExerciseProps, FaultName } from './types.ts'
import { counted, faultsNamed } from './words.ts'

interface Props {
  htmlId: string
  exercise: ExerciseProps
  /** What to say of the cause that was last named. */
  answer: string
  name: (faults: readonly string[]) => void
  giveUp: () => void
}

/** As many as one takes in without scrolling; more come with the next letter typed. */
const MOST_SHOWN = 8

/** Search over the faults by title and shop word, and the button that names the cause. */
export function NameCause({ htmlId, exercise, answer, name, giveUp }: Props) {
  const { faults, hidden } = exercise
  const [typed, type] = useState('')
  const [chosen, choose] = useState<readonly FaultName[]>([])
  const found =
    typed.trim() === '' ? [] : faultsNamed(faults, typed).filter((fault) => !chosen.includes(fault))
  const take = (fault: FaultName): void => {
    choose([...chosen, fault].slice(-hidden))
    type('')
    document.getElementById(`${htmlId}-${chosen.length + 1 < hidden ? 'search' : 'name'}`)?.focus()
  }
  const wanted = hidden === 1 ? 'the cause' : 'both causes'
  return (
    <section class="exercise-name" id={`${htmlId}-naming`}>
      <h3>Name {wanted}</h3>
      <div class="field">
        <label for={`${htmlId}-search`}>Search the {faults.length} faults of this circuit</label>
        <input
          id={`${htmlId}-search`}
          type="text"
          autocomplete="off"
          aria-describedby={`${htmlId}-found`}
          value={typed}
          onInput={(event) => type(event.currentTarget.value)}
        />
      </div>
      <p id={`${htmlId}-found`} class="found-count" aria-live="polite">
        {typed.trim() === ''
          ? 'By title or shop word: filter, bubbles, spring …'
          : found.length === 0
            ? 'No fault has these words. Try fewer letters, or another word.'
            : `${counted(found.length, 'fault')}${found.length > MOST_SHOWN ? `, the first ${MOST_SHOWN} shown` : ''}.`}
      </p>
      {found.length > 0 && (
        <ul class="found-list">
          {found.slice(0, MOST_SHOWN).map((fault) => (
            <li key={fault.id}>
              <button type="button" onClick={() => take(fault)}>
                {fault.title}
                <span class="also">{fault.alsoCalled.join(', ')}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      {chosen.length > 0 && (
        <ul class="chosen-list" aria-label="Chosen">
          {chosen.map((fault) => (
            <li key={fault.id}>
              <strong>{fault.title}</strong>
              <button
                type="button"
                aria-label={`Take back: ${fault.title}`}
                onClick={() => choose(chosen.filter((other) => other !== fault))}
              >
                Take back
              </button>
            </li>
          ))}
        </ul>
      )}
      <div class="exercise-buttons">
        <button
          id={`${htmlId}-name`}
          type="button"
          class="primary"
          aria-disabled={chosen.length < hidden}
          onClick={() => {
            if (chosen.length === hidden) name(chosen.map(({ id }) => id))
          }}
        >
          {hidden === 1 ? 'This is the cause' : 'These are the causes'}
        </button>
        <button type="button" onClick={giveUp}>
          Give up and see the answer
        </button>
      </div>
      {chosen.length < hidden && (
        <p class="found-count">
          {hidden === 1 ? 'Choose one fault first.' : `Choose two faults first; ${chosen.length} chosen.`}
        </p>
      )}
      <output class="answer">{answer}</output>
    </section>
  )
}
