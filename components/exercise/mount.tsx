import { hydrate } from 'preact'
import { unveiled } from './course-data.ts'
import { ExerciseForm } from './ExerciseForm.tsx'
import type { ExerciseProps } from './types.ts'

/** Brings an exercise to life with the course that its page carries. */
export function mount(element: HTMLElement): void {
  const root = element.querySelector('[data-exercise-live]')
  const { exercise, course, name } = element.dataset
  if (root === null || exercise === undefined || course === undefined || name === undefined) return
  hydrate(
    <ExerciseForm htmlId={name} exercise={JSON.parse(exercise) as ExerciseProps} course={unveiled(course)} />,
    root,
  )
  element.dataset['awake'] = ''
}
