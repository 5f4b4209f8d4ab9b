import type { ResultLine } from '../../calculators/checks/describe.ts'
import type { WayStep } from '../../calculators/exercise/types.ts'
import { ResultLines } from './ResultLines.tsx'
import type { ExerciseProps, Progress } from './types.ts'
import { counted, inMinutes, titlesOf } from './words.ts'

interface Props {
  exercise: ExerciseProps
  steps: readonly WayStep[]
  tries: Progress['tries']
  /** What the driver saw. */
  report: readonly ResultLine[]
  linesOf: (act: WayStep['act']) => readonly ResultLine[]
}

/** All that was done and found, in its order, with running minutes. */
export function Log({ exercise, steps, tries, report, linesOf }: Props) {
  const { checks, states, faults } = exercise
  const triesAfter = (count: number) =>
    tries
      .filter(({ after }) => after === count)
      .map(({ named }) => (
        <li class="log-try" key={named.join()}>
          <p>
            You named <strong>{titlesOf(named, faults)}</strong>: not it.
          </p>
        </li>
      ))
  return (
    <section class="exercise-log">
      <h3>What you have found</h3>
      {report.length > 0 && (
        <div class="log-report">
          <p>What the driver saw:</p>
          <ResultLines lines={report} />
        </div>
      )}
      {steps.length === 0 && <p class="log-empty">Nothing yet. Choose a check.</p>}
      <ol class="log-steps">
        {triesAfter(0)}
        {steps.map((step, place) => {
          const check = checks.find(({ id }) => id === step.act.check)
          return [
            <li key={step.total}>
              <p class="log-head">
                <span>
                  {states[step.act.state].title}
                  {check && `: ${check.label}`}
                </span>
                <span class="cost">
                  +{inMinutes(step.minutes)} = {inMinutes(step.total)}
                </span>
              </p>
              <ResultLines lines={linesOf(step.act)} />
            </li>,
            ...triesAfter(place + 1),
          ]
        })}
      </ol>
      <p class="log-total">
        {counted(steps.filter(({ act }) => act.check !== undefined).length, 'check')},{' '}
        {inMinutes(steps.at(-1)?.total ?? 0)} in all.
      </p>
    </section>
  )
}
