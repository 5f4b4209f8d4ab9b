import { render } from 'preact'
import { unpackCourse } from './course-data.ts'
import { ExerciseForm } from './ExerciseForm.tsx'
import type { CircuitOffer, OwnProps } from './types.ts'

/** Brings an exercise to life: the list of checks that was there from the build gives way to one that answers. */
export async function mount(element: HTMLElement): Promise<void> {
  const { own = '', course = '', source = '', name = '' } = element.dataset
  const root = element.querySelector('[data-exercise-live]')
  if (root === null) return
  const response = await fetch(source)
  if (!response.ok) throw new Error(`${source}: ${response.status}`)
  const offer = (await response.json()) as CircuitOffer
  const exercise = { ...offer, ...(JSON.parse(own) as OwnProps) }
  const known = unpackCourse(course, offer)
  root.replaceChildren()
  render(<ExerciseForm htmlId={name} exercise={exercise} course={known} />, root)
  element.dataset['awake'] = ''
}
