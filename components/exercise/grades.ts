/** The grades of exercises, the easiest first. */
export const grades = [
  {
    grade: 1,
    words: 'one plain fault',
    about: 'One fault that shows itself. A glance and a gauge settle it.',
  },
  {
    grade: 2,
    words: 'one fault, seen from afar',
    about: 'One fault whose mark is seen at another place than its own.',
  },
  {
    grade: 3,
    words: 'one fault with doubles',
    about: 'One fault that others look like: compare states of the engine, and think of temperature.',
  },
  {
    grade: 4,
    words: 'one fault that hides',
    about: 'One fault behind a gauge, a control or a repair that misleads.',
  },
  { grade: 5, words: 'two faults at once', about: 'Two faults at once. Name both.' },
] as const

/** 'two faults at once' */
export const gradeInWords = (grade: number): string =>
  grades.find((candidate) => candidate.grade === grade)?.words ?? ''
