import { readdirSync, readFileSync } from 'node:fs'
import { parse } from 'yaml'
import type { z } from 'astro/zod'
import { readFigure } from '../../../calculators/quantity/figure.ts'
import { questions as schema } from '../../../components/content/schema-lesson.ts'

export type Question = z.infer<typeof schema>['questions'][number]

const FOLDER = 'content/lessons/questions'

/** The shipped questions of each lesson. */
export const questionsOf: Readonly<Record<string, readonly Question[]>> = Object.fromEntries(
  readdirSync(FOLDER).map((file) => [
    file.replace('.yaml', ''),
    schema.parse(parse(readFileSync(`${FOLDER}/${file}`, 'utf8'))).questions,
  ]),
)

export const allQuestions = Object.entries(questionsOf).flatMap(([lesson, questions]) =>
  questions.map((question) => ({ key: `${lesson}/${question.id}`, lesson, question })),
)

export function question(key: string): Question {
  const found = allQuestions.find((one) => one.key === key)
  if (!found) throw new Error(`no question ${key}`)
  return found.question
}

/** The answer of a question that asks for a figure, the half-width about it, and what slips lead to. [SI] */
export function askedFigure(key: string) {
  const { figure } = question(key)
  if (!figure) throw new Error(`${key} asks for no figure`)
  const si = (written: string, kind = figure.kind) => {
    const reading = readFigure(written, kind)
    if (!reading.ok) throw new Error(`${key}: ${reading.reason}`)
    return reading.si
  }
  const width = figure.kind === 'gaugePressure' ? 'pressureDifference' : figure.kind
  return {
    answer: si(figure.answer),
    within: si(figure.within, width),
    slips: figure.slips.map(({ value }) => si(value)),
  }
}
