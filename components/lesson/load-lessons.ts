import { getCollection, type CollectionEntry } from 'astro:content'

export type LessonEntry = CollectionEntry<'lessons'>
export type Question = CollectionEntry<'lessonQuestions'>['data']['questions'][number]

export interface Lesson {
  readonly entry: LessonEntry
  readonly questions: readonly Question[]
  /** Reading, bench, questions and exercise. [min] */
  readonly minutes: number
}

/** The course in its order. A lesson without its file of questions, or the other way round, stops the build. */
export async function allLessons(): Promise<Lesson[]> {
  const entries = (await getCollection('lessons')).sort((a, b) => a.data.order - b.data.order)
  const files = await getCollection('lessonQuestions')
  const strays = files.filter(({ id }) => entries.every((entry) => entry.id !== id)).map(({ id }) => id)
  if (strays.length > 0)
    throw new Error(
      `content/lessons/questions: no lesson for ${strays.join(', ')}; allowed: the names of lessons`,
    )
  return entries.map((entry) => {
    const file = files.find(({ id }) => id === entry.id)
    if (!file)
      throw new Error(`content/lessons/questions/${entry.id}.yaml is missing: the lesson has no questions`)
    const { reading, minutes } = entry.data
    const read = reading.reduce((sum, page) => sum + page.minutes, 0)
    return {
      entry,
      questions: file.data.questions,
      minutes: read + minutes.bench + minutes.questions + minutes.exercise,
    }
  })
}

/** Minutes of a lesson that are spent reading. */
export const readingMinutes = ({ data }: LessonEntry): number =>
  data.reading.reduce((sum, page) => sum + page.minutes, 0)

/** What the browser needs to know of a lesson to count what is kept of it. */
export interface LessonFacts {
  readonly id: string
  readonly questions: readonly string[]
}

export const factsOf = ({ entry, questions }: Lesson): LessonFacts => ({
  id: entry.id,
  questions: questions.map(({ id }) => id),
})
