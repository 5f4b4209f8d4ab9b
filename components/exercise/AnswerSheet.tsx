import { useState } from 'preact/hooks'
import type { WayStep } from '../../calculators/exercise/types.ts'
import type { CourseData } from './course-data.ts'
import type { ExerciseProps } from './types.ts'
import { WayTable } from './WayTable.tsx'

interface Props {
  htmlId: string
  exercise: ExerciseProps
  course: CourseData
  shortest: readonly WayStep[]
  toldBy: (act: WayStep['act']) => string
  /** What it would have told in health. */
  healthOf: (act: WayStep['act']) => string
}

/** For an instructor: the sheet on paper, and the answer on a page of its own where it is asked for. */
export function AnswerSheet({ htmlId, exercise, course, shortest, toldBy, healthOf }: Props) {
  const [wanted, want] = useState(false)
  return (
    <section class="exercise-sheet">
      <h3 class="screen-only">For an instructor</h3>
      <p class="screen-only">
        Everybody who opens exercise {exercise.number} gets the same fault. On paper it is the complaint, the
        checks with their minutes, and lines to write on.
      </p>
      <label class="sheet-choice screen-only" for={`${htmlId}-answer`}>
        <input
          id={`${htmlId}-answer`}
          type="checkbox"
          checked={wanted}
          onChange={(event) => want(event.currentTarget.checked)}
        />
        Print the answer too, on a page of its own
      </label>
      <div class="exercise-buttons screen-only">
        <button type="button" onClick={() => window.print()}>
          Print the sheet
        </button>
      </div>
      {wanted && (
        <div class="answer-page">
          <h3>Answer to exercise {exercise.number}, for the instructor</h3>
          {course.causes.map(({ id, title, severity, description, confirm, procedure }) => (
            <p key={id}>
              <strong>{title}</strong> (severity {severity} of 1). {description} {confirm} Procedure:{' '}
              {procedure.title}.
            </p>
          ))}
          <WayTable
            exercise={exercise}
            caption="The shortest way"
            steps={shortest}
            answers={course.answers}
            toldBy={toldBy}
            healthOf={healthOf}
          />
        </div>
      )}
    </section>
  )
}
