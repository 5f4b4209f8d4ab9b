import type { Grade } from '../../calculators/calculator/types.ts'

/** The word that goes with each grade, so that colour is never the only sign. */
export const gradeWords: Readonly<Record<Grade, string>> = {
  good: 'Good',
  information: 'Note',
  caution: 'Caution',
  action: 'Action needed',
}
