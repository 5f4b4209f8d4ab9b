import { globSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import type { z } from 'astro/zod'
import { units } from '../../../calculators/quantity/units.ts'
import { lesson as schema, questions as questionSchema } from '../../../components/content/schema-lesson.ts'
import { piecesOf } from '../../../components/lesson/inline.ts'
import { exercises } from '../../unit/checks/content.ts'
import { allQuestions, questionsOf } from '../../unit/lesson/questions.ts'

type Lesson = z.infer<typeof schema> & { readonly id: string; readonly body: string }

const lessons: readonly Lesson[] = globSync('content/lessons/*.mdx')
  .map((path) => {
    const [, front = '', body = ''] =
      /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(readFileSync(path, 'utf8')) ?? []
    return { id: basename(path, '.mdx'), body, ...schema.parse(parse(front)) }
  })
  .sort((a, b) => a.order - b.order)

const gradeOf = (number: string) =>
  exercises.find((exercise) => exercise.number === number)?.grade ?? Number.NaN

describe('the course', () => {
  test('has eight lessons in one order, each with its questions', () => {
    expect(lessons.map(({ order }) => order)).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
    expect(Object.keys(questionsOf).sort()).toEqual(lessons.map(({ id }) => id).sort())
  })

  test('sets another exercise in each lesson, and never an easier one than before', () => {
    const numbers = lessons.map(({ exercise }) => exercise)
    expect(new Set(numbers).size).toBe(numbers.length)
    const grades = numbers.map(gradeOf)
    expect(grades).toEqual([...grades].sort((a, b) => a - b))
    expect(grades.at(0)).toBe(1)
    expect(grades.at(-1)).toBe(5)
  })

  test('names no exercise twice', () => {
    const all = lessons.flatMap(({ exercise, further }) => [exercise, ...further])
    expect(all.filter((number, place) => all.indexOf(number) !== place)).toEqual([])
  })

  test.each(lessons)(
    '$id has a bench, aims of its own, and reads no page twice',
    ({ body, aims, reading }) => {
      expect(body).toMatch(/<CircuitBench preset="[\w-]+" \/>/)
      expect(body).toContain('## What to carry away')
      expect(body).toContain('## On the bench')
      const others = new Set(lessons.flatMap((other) => (other.aims === aims ? [] : other.aims)))
      expect(aims.filter((aim) => others.has(aim))).toEqual([])
      const pages = reading.map(({ page }) => page)
      expect(new Set(pages).size).toBe(pages.length)
    },
  )
})

describe('the questions', () => {
  const asks = allQuestions.map(({ question }) => question.ask)

  test('are asked once', () => {
    expect(new Set(asks).size).toBe(asks.length)
  })

  test('ask for a figure in each lesson but the last', () => {
    const without = lessons.filter(({ id }) => questionsOf[id]?.every(({ figure }) => figure === undefined))
    expect(without.map(({ order }) => order)).toEqual([8])
  })

  test('have their right choice in no place more than in half of the cases', () => {
    const single = allQuestions.flatMap(({ question: { choices = [] } }) =>
      choices.filter(({ right }) => right).length === 1 ? [choices.findIndex(({ right }) => right)] : [],
    )
    expect(single.length).toBeGreaterThan(20)
    for (const place of [0, 1, 2, 3])
      expect(single.filter((at) => at === place).length / single.length).toBeLessThanOrEqual(0.5)
  })

  test.each(allQuestions)(
    '$key has a reason of its own for each answer',
    ({ question: { choices, figure } }) => {
      const reasons = [
        ...(choices ?? []).map(({ because }) => because),
        ...(figure ? [figure.because, ...figure.slips.map(({ because }) => because)] : []),
      ]
      expect(new Set(reasons).size).toBe(reasons.length)
      const says = (choices ?? []).map((choice) => choice.says)
      expect(new Set(says).size).toBe(says.length)
    },
  )

  /** Units that no word of a sentence looks like. */
  const spellings = Object.values(units)
    .map(({ symbol }) => symbol)
    .filter((symbol) => symbol.length > 1 || symbol === '%')
    .map((symbol) => symbol.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&'))
  const FIGURE = new RegExp(`\\d\\s?(?:${spellings.join('|')})(?![\\p{L}\\p{N}])`, 'u')

  test.each([
    ['It stands at 210 kPa.', true],
    ['It is 5 mm²/s.', true],
    ['It is {150 kPa, gaugePressure}, 3 times.', false],
  ])('«%s» has a bare figure: %s', (text, bare) => {
    expect(FIGURE.test(wordsOf(text))).toBe(bare)
  })

  test.each(allQuestions)('$key types no figure that the data could give', ({ question }) => {
    const texts = textsIn(question)
    expect(texts.length).toBeGreaterThan(3)
    expect(texts.filter((text) => FIGURE.test(wordsOf(text)))).toEqual([])
  })
})

const wordsOf = (text: string) =>
  piecesOf(text)
    .map((piece) => ('words' in piece ? piece.words : '·'))
    .join('')

/** Every sentence of a question; the figures that are to be entered and their slips are no sentences. */
function textsIn(question: (typeof allQuestions)[number]['question']): string[] {
  const { choices = [], figure } = question
  return [
    question.ask,
    question.finds,
    ...choices.flatMap(({ says, because }) => [says, because]),
    ...(figure ? [figure.because, ...figure.slips.map(({ because }) => because)] : []),
  ]
}

describe('the schema of questions refuses', () => {
  const good = {
    id: 'one',
    ask: 'What is it?',
    finds: 'Whether it is known.',
    basis: 'reason',
    choices: [
      { says: 'This.', right: true, because: 'So it is.' },
      { says: 'That.', because: 'It is not.' },
      { says: 'Neither.', because: 'It is this.' },
    ],
  }
  const figure = {
    kind: 'gaugePressure',
    answer: '210 kPa',
    within: '2 kPa',
    because: 'So it is.',
    slips: [{ value: '300 kPa', because: 'That is too much.' }],
  }
  const asked = (change: object) => ({
    questions: [{ ...good, ...change }, ...['b', 'c', 'd', 'e'].map((id) => ({ ...good, id }))],
  })
  const problems = (data: unknown) => {
    const parsed = questionSchema.safeParse(data)
    return parsed.success ? '' : parsed.error.issues.map(({ message }) => message).join('; ')
  }

  test('nothing in five good ones', () => {
    expect(problems(asked({}))).toBe('')
    expect(problems(asked({ choices: undefined, figure }))).toBe('')
  })

  test.each([
    ['four questions', { questions: ['a', 'b', 'c', 'd'].map((id) => ({ ...good, id })) }, 'at least five'],
    ['two of one id', asked({ id: 'b' }), '«b» is the id of two questions'],
    ['neither choices nor figure', asked({ choices: undefined }), 'exactly one of the two'],
    ['choices and figure', asked({ figure }), 'exactly one of the two'],
    [
      'no right choice',
      asked({ choices: good.choices.map((one) => ({ ...one, right: false })) }),
      '0 of 3 are right',
    ],
    [
      'right choices only',
      asked({ choices: good.choices.map((one) => ({ ...one, right: true })) }),
      '3 of 3',
    ],
    ['two choices', asked({ choices: good.choices.slice(0, 2) }), 'at least three choices'],
    ['an unknown set point', asked({ ask: 'Is {none} right?' }), '«none» is not an id of the set points'],
    [
      'an unknown page',
      asked({ ask: 'See [it](circuit/none)?' }),
      '«circuit/none» is not an id of the pages',
    ],
    ['an unknown kind', asked({ ask: 'Is {5 kPa, none} right?' }), '«none» is not a kind of quantity'],
    ['a figure of another kind', asked({ ask: 'Is {5 kPa, length} right?' }), 'allowed:'],
    [
      'an answer without a unit',
      asked({ choices: undefined, figure: { ...figure, answer: '210' } }),
      'has no unit',
    ],
    ['no slip', asked({ choices: undefined, figure: { ...figure, slips: [] } }), 'to which a slip leads'],
    [
      'a reason that is no sentence',
      asked({ choices: good.choices.map((one) => ({ ...one, because: 'so' })) }),
      'full stop',
    ],
  ])('%s', (_, data, reason) => {
    expect(problems(data)).toContain(reason)
  })
})
