import type { PlantState } from '../../calculators/checks/types.ts'
import type { Verdict } from '../../calculators/exercise/judge.ts'
import { noProgress } from './progress.ts'
import type { Progress } from './types.ts'

export type ExerciseAction =
  | { readonly type: 'bring'; readonly state: PlantState }
  | { readonly type: 'check'; readonly state: PlantState; readonly check: string }
  | { readonly type: 'name'; readonly named: readonly string[]; readonly verdict: Verdict }
  | { readonly type: 'give up' }
  | { readonly type: 'restore'; readonly progress: Progress }
  | { readonly type: 'again' }

/** State in which the plant stands after what was done. */
export const standsIn = ({ acts }: Progress, start: PlantState): PlantState => acts.at(-1)?.state ?? start

export function apply(progress: Progress, action: ExerciseAction): Progress {
  if (action.type === 'restore') return action.progress
  if (action.type === 'again') return noProgress
  // What has ended is only looked at.
  if (progress.end !== undefined) return progress
  switch (action.type) {
    case 'bring':
      return { ...progress, acts: [...progress.acts, { state: action.state }] }
    case 'check':
      return { ...progress, acts: [...progress.acts, { state: action.state, check: action.check }] }
    case 'name':
      if (action.verdict === 'right' || action.verdict === 'alike')
        return { ...progress, end: action.verdict }
      return {
        ...progress,
        tries: [...progress.tries, { named: action.named, after: progress.acts.length }],
      }
    case 'give up':
      return { ...progress, end: 'given up' }
  }
}
