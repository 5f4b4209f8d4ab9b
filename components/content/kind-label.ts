import type { PageKind } from './directory.ts'

const labels: Record<PageKind | 'other', string> = {
  symptom: 'Symptom',
  procedure: 'Procedure',
  circuit: 'Circuit',
  bench: 'Bench',
  lesson: 'Lesson',
  calculator: 'Calculator',
  table: 'Table',
  other: 'Handbook',
}

/** The word for a kind of page, as lists and title blocks show it. */
export const kindLabel = (kind: PageKind | 'other') => labels[kind]
