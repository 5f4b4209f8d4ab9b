import type { ExerciseFacts } from './exercise-outcome.ts'
import type { LessonFacts } from './load-lessons.ts'

/** What the record's page hands to the browser. */
export interface RecordData {
  readonly lessons: readonly (LessonFacts & { readonly exercise: string })[]
  readonly exercises: readonly (ExerciseFacts & { readonly title: string; readonly circuit: string })[]
  /** Where the checks of each circuit are told. */
  readonly sources: Readonly<Record<string, string>>
}
