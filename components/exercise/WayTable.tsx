import type { WayStep } from '../../calculators/exercise/types.ts'
import type { ExerciseProps } from './types.ts'
import { counted, inMinutes, titlesOf } from './words.ts'

interface Props {
  exercise: ExerciseProps
  caption: string
  steps: readonly WayStep[]
  answers: readonly (readonly string[])[]
  toldBy: (act: WayStep['act']) => string
  /** What it would have told in health. */
  healthOf: (act: WayStep['act']) => string
}

/** Up to so many causes are named that a step ruled out or left; more are counted. */
const MOST_NAMED = 6

/** A way step by step: what was done, what it told, which causes it ruled out. */
export function WayTable({ exercise, caption, steps, answers, toldBy, healthOf }: Props) {
  const { checks, states, faults } = exercise
  const named = (places: readonly number[]): string =>
    places.length > MOST_NAMED
      ? ''
      : `: ${places.map((place) => titlesOf(answers[place] ?? [], faults)).join('; ')}`
  return (
    <table class="way">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Step</th>
          <th scope="col">It told</th>
          <th scope="col">Why it helps</th>
          <th scope="col">Minutes</th>
        </tr>
      </thead>
      <tbody>
        {steps.map(({ act, minutes, total, ruledOut, open }) => (
          <tr key={total}>
            <th scope="row">
              {states[act.state].title}
              {act.check !== undefined && `: ${checks.find(({ id }) => id === act.check)?.label}`}
            </th>
            <td data-label="It told">
              {toldBy(act)}
              {healthOf(act) !== toldBy(act) && <span class="in-health">In health: {healthOf(act)}</span>}
            </td>
            <td data-label="Why it helps">
              {ruledOut.length === 0
                ? 'Rules out nothing that was still open.'
                : `Rules out ${counted(ruledOut.length, 'cause')}${named(ruledOut)}.`}{' '}
              Left: {open.length}
              {named(open)}.
            </td>
            <td data-label="Minutes">
              {inMinutes(minutes)}, in all {inMinutes(total)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
