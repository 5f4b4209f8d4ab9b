import { sameFaults } from '../../calculators/exercise/answers.ts'
import type { WayStep } from '../../calculators/exercise/types.ts'
import type { CourseData } from './course-data.ts'
import type { ExerciseProps, Progress } from './types.ts'
import { WayTable } from './WayTable.tsx'
import { counted, inMinutes, titlesOf } from './words.ts'

interface Props {
  exercise: ExerciseProps
  course: CourseData
  end: NonNullable<Progress['end']>
  own: readonly WayStep[]
  shortest: readonly WayStep[]
  toldBy: (act: WayStep['act']) => string
  /** What it would have told in health. */
  healthOf: (act: WayStep['act']) => string
}

const verdicts = {
  right: 'Right.',
  alike: 'As good as right: nothing that can be checked here tells it from the hidden one.',
  'given up': 'The answer.',
} as const

const total = (steps: readonly WayStep[]): number => steps.at(-1)?.total ?? 0

/** How one's own minutes stand to those of the shortest way. */
function comparison(
  own: readonly WayStep[],
  shortest: readonly WayStep[],
  end: Props['end'],
  left: number,
): string {
  const [mine, least] = [total(own), total(shortest)]
  if (end === 'given up')
    return `You had spent ${inMinutes(mine)} when you gave up; the shortest way takes ${inMinutes(least)}.`
  const both = `You took ${inMinutes(mine)}, the shortest way takes ${inMinutes(least)}.`
  if (left > 0)
    return `${both} Your checks had not settled it yet: ${counted(left, 'other cause')} would have shown the same.`
  return mine <= least ? `${both} Nothing is left to shorten.` : both
}

/** The verdict, the cause, and the shortest way beside one's own. */
export function Outcome({ exercise, course, end, own, shortest, toldBy, healthOf }: Props) {
  const { answers, alike, causes } = course
  const open = own.at(-1)?.open ?? answers.map((_, place) => place)
  const left = open.filter((place) => !alike.includes(place))
  const others = alike.filter(
    (place) =>
      !sameFaults(
        answers[place] ?? [],
        causes.map(({ id }) => id),
      ),
  )
  return (
    <section class="exercise-outcome">
      <h3 tabIndex={-1} data-outcome>
        {verdicts[end]}
      </h3>
      {causes.map(({ id, title, description, confirm, procedure }) => (
        <div key={id} class="cause">
          <h4>{title}</h4>
          <p>{description}</p>
          <p>
            <strong>What proves it:</strong> {confirm}
          </p>
          <p>
            <strong>Procedure:</strong> <a href={procedure.href}>{procedure.title}</a>
          </p>
        </div>
      ))}
      <p>
        <a class="to-bench" href={course.bench}>
          See {causes.length === 1 ? 'this fault' : 'these faults'} on the bench
        </a>
        , with all gauges and glasses, in the same conditions: make {causes.length === 1 ? 'it' : 'them'}{' '}
        better or worse, and look again.
      </p>
      {others.length > 0 && (
        <p>
          <strong>Counts as the same answer,</strong> for no check here tells it apart:{' '}
          {others.map((place) => titlesOf(answers[place] ?? [], exercise.faults)).join('; ')}.
        </p>
      )}
      <p>{comparison(own, shortest, end, left.length)}</p>
      <WayTable
        exercise={exercise}
        caption="The shortest way"
        steps={shortest}
        answers={answers}
        toldBy={toldBy}
        healthOf={healthOf}
      />
      <p class="way-note">
        The complaint leaves{' '}
        {counted(
          answers.length,
          exercise.hidden === 1 ? 'cause' : 'pair',
          exercise.hidden === 1 ? 'causes' : 'pairs of causes',
        )}
        . The circuit model showed each of them to every check, and the way was searched that rules out all
        but the hidden one in the fewest minutes. An inspection that would have been a lucky guess counts for
        more than its minutes, so that gauges and glasses come first.
      </p>
      {own.length > 0 && (
        <WayTable
          exercise={exercise}
          caption="Your way"
          steps={own}
          answers={answers}
          toldBy={toldBy}
          healthOf={healthOf}
        />
      )}
    </section>
  )
}
