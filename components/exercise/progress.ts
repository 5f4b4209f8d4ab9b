import { plantStates } from '../../calculators/checks/types.ts'
import type { Act } from '../../calculators/exercise/types.ts'
import type { ExerciseProps, Progress } from './types.ts'

/** Form of what is kept; another form is not read. */
const VERSION = 1

/** Key under which the progress of an exercise is kept on the device. */
export const exerciseKey = (number: string): string => `clear-return:exercise:${number}`

export const noProgress: Progress = { acts: [], tries: [] }

type Known = Pick<ExerciseProps, 'number' | 'checks' | 'faults' | 'hidden'>

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

function actOf(value: unknown, { checks }: Known): Act | undefined {
  if (!isRecord(value)) return undefined
  const state = plantStates.find((candidate) => candidate === value['state'])
  if (state === undefined) return undefined
  if (value['check'] === undefined) return { state }
  const check = checks.find(({ id }) => id === value['check'])
  return check?.states.includes(state) ? { state, check: check.id } : undefined
}

function triesOf(value: unknown, { faults }: Known, acts: number): Progress['tries'] | undefined {
  if (!Array.isArray(value)) return undefined
  const tries = value.flatMap((entry: unknown) => {
    if (!isRecord(entry) || !Array.isArray(entry['named']) || typeof entry['after'] !== 'number') return []
    const named = entry['named'].filter((id: unknown) => faults.some((fault) => fault.id === id)).map(String)
    return entry['after'] <= acts ? [{ named, after: entry['after'] }] : []
  })
  return tries.length === value.length ? tries : undefined
}

/**
 * What was kept of an exercise. Undefined when there is nothing, or when it does not fit this edition's checks and
 * faults: half a course would be worse than a fresh start.
 */
export function readProgress(text: string | null, known: Known): Progress | undefined {
  if (text === null) return undefined
  let kept: unknown
  try {
    kept = JSON.parse(text)
  } catch {
    return undefined
  }
  if (!isRecord(kept) || kept['version'] !== VERSION || !Array.isArray(kept['acts'])) return undefined
  const acts = kept['acts'].flatMap((act: unknown) => actOf(act, known) ?? [])
  if (acts.length !== kept['acts'].length) return undefined
  const tries = triesOf(kept['tries'], known, acts.length)
  if (tries === undefined) return undefined
  const end = (['right', 'alike', 'given up'] as const).find((candidate) => candidate === kept['end'])
  return { acts, tries, end }
}

export const writeProgress = (progress: Progress): string => JSON.stringify({ version: VERSION, ...progress })

/** Progress on this device; undefined also where the browser keeps nothing. */
export function keptProgress(known: Known): { found: boolean; progress: Progress | undefined } {
  try {
    const text = localStorage.getItem(exerciseKey(known.number))
    return { found: text !== null, progress: readProgress(text, known) }
  } catch {
    return { found: false, progress: undefined }
  }
}

/** Keeps progress on this device. False where the browser does not let it. */
export function keepProgress(number: string, progress: Progress): boolean {
  try {
    if (progress.acts.length + progress.tries.length === 0 && progress.end === undefined)
      localStorage.removeItem(exerciseKey(number))
    else localStorage.setItem(exerciseKey(number), writeProgress(progress))
    return true
  } catch {
    return false
  }
}
