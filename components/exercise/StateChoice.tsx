import { stateMinutes } from '../../calculators/checks/state-minutes.ts'
import { plantStates, type PlantState } from '../../calculators/checks/types.ts'
import { CautionLinks } from './CautionLinks.tsx'
import type { ExerciseProps } from './types.ts'
import { inMinutes } from './words.ts'

interface Props {
  exercise: ExerciseProps
  now: PlantState
  ended: boolean
  bring: (state: PlantState) => void
}

/** The states of the plant, and what it costs to bring it into each. */
export function StateChoice({ exercise, now, ended, bring }: Props) {
  const { states, stateMinutes: costs, cautionsHref } = exercise
  return (
    <section class="exercise-states">
      <h3>State of the plant</h3>
      <ul class="state-list">
        {plantStates.map((state) => (
          <li key={state} class={state === now ? 'state-now' : undefined}>
            <button
              type="button"
              aria-pressed={state === now}
              disabled={ended || state === now}
              onClick={() => bring(state)}
            >
              {states[state].title}
              <span class="cost">{state === now ? 'now' : inMinutes(stateMinutes(now, state, costs))}</span>
            </button>
          </li>
        ))}
      </ul>
      <p class="state-words">
        <strong>{states[now].title}.</strong> {states[now].words}
      </p>
      <CautionLinks cautions={states[now].cautions} href={cautionsHref} />
    </section>
  )
}
