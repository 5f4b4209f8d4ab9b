import { exerciseKey } from '../exercise/progress.ts'
import { answersOf, isRecord, writeAnswers, type Answers } from './progress.ts'
import { LESSONS_KEY, textAt, type Shelf } from './store.ts'

/** What marks a file as a record of this course. */
const FILE = 'clear-return lessons'
const VERSION = 1
/** Many times what a course with all its exercises needs. */
const LONGEST = 500_000
const NUMBER = /^\d{3}$/

/** Progress of exercises by number, as the exercises keep it. */
export type ExerciseRecords = Readonly<Record<string, unknown>>

export interface Taken {
  readonly answers: Answers
  readonly exercises: ExerciseRecords
}

/** The record as a file. It holds no name: who took it along knows whose it is. */
export function fileText({ answers, exercises }: Taken, day: string): string {
  return `${JSON.stringify({ file: FILE, version: VERSION, saved: day, answers, exercises }, undefined, 2)}\n`
}

export type FileRead =
  { readonly ok: true; readonly taken: Taken } | { readonly ok: false; readonly reason: string }

/** A file that somebody hands in: all of it fits, or none of it is taken. */
export function readFile(text: string): FileRead {
  const refuse = (reason: string): FileRead => ({ ok: false, reason })
  if (text.length > LONGEST) return refuse(`it has ${text.length} characters; accepted: at most ${LONGEST}`)
  let data: unknown
  try {
    data = JSON.parse(text)
  } catch {
    return refuse('it is no JSON; accepted: a file that ‘Save as a file’ has made')
  }
  if (!isRecord(data) || data['file'] !== FILE)
    return refuse('it is no record of this course; accepted: a file that ‘Save as a file’ has made')
  if (data['version'] !== VERSION)
    return refuse(`version is ${JSON.stringify(data['version']) ?? 'missing'}; accepted: ${VERSION}`)
  const answers = answersOf(data['answers'])
  if (!answers.ok) return answers
  const exercises = data['exercises']
  if (!isRecord(exercises))
    return refuse('exercises is missing or no list; accepted: exercises by their numbers')
  for (const [number, progress] of Object.entries(exercises)) {
    if (!NUMBER.test(number)) return refuse(`exercises has «${number}»; accepted: a number of three digits`)
    if (!isRecord(progress) || !Array.isArray(progress['acts']))
      return refuse(`exercises, ${number} has no acts; accepted: what the exercise keeps`)
  }
  return { ok: true, taken: { answers: answers.value, exercises } }
}

/** What lies on the shelf of these exercises; what is no JSON is left out, since no exercise would read it. */
export function exercisesOn(shelf: Shelf | undefined, numbers: readonly string[]): ExerciseRecords {
  return Object.fromEntries(
    numbers.flatMap((number) => {
      const text = textAt(shelf, exerciseKey(number))
      try {
        return text === null ? [] : [[number, JSON.parse(text) as unknown]]
      } catch {
        return []
      }
    }),
  )
}

/** What is to be written so that the shelf holds this record and nothing else of the course. */
export function entriesFor(taken: Taken | undefined, numbers: readonly string[]): [string, string | null][] {
  const kept = taken?.exercises ?? {}
  const all = [...new Set([...numbers, ...Object.keys(kept)])]
  return [
    [LESSONS_KEY, taken === undefined ? null : writeAnswers(taken.answers)],
    ...all.map((number): [string, string | null] => [
      exerciseKey(number),
      number in kept ? JSON.stringify(kept[number]) : null,
    ]),
  ]
}
