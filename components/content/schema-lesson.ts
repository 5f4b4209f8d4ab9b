import { z } from 'astro/zod'
import { kinds } from '../../calculators/quantity/kinds.ts'
import type { KindId } from '../../calculators/quantity/types.ts'
import { piecesOf } from '../lesson/inline.ts'
import {
  cautionIds,
  checkFigure,
  kindId,
  list,
  oneOf,
  pagePath,
  sentence,
  setPointId,
  text,
  wanted,
} from './fields.ts'
import { idsOfFolder } from './ids.ts'
import { page } from './schemas.ts'

const exerciseId = oneOf('content/exercises', idsOfFolder('exercises'))
const minutes = z.number(wanted('a whole number of minutes from 1 to 120')).int().min(1).max(120)

/** What an answer rests on: a test proves the first three, practice is marked where it is shown. */
const bases = ['model', 'sum', 'data', 'reason', 'practice'] as const

/** A sentence with marks in it, as `piecesOf` reads them; each must lead somewhere. */
const marked = sentence.superRefine((written, context) => {
  const add = (message: string) => context.addIssue({ code: 'custom', message })
  for (const piece of piecesOf(written)) {
    const parsed =
      piece.is === 'set point'
        ? setPointId.safeParse(piece.id)
        : piece.is === 'link'
          ? pagePath.safeParse(piece.to.replace(/#.*$/, ''))
          : undefined
    for (const issue of parsed?.error?.issues ?? []) add(issue.message)
    if (piece.is !== 'figure') continue
    if (piece.kind in kinds) checkFigure(piece.value, piece.kind as KindId, add)
    else add(`«${piece.kind}» is not a kind of quantity; allowed: ${Object.keys(kinds).join(', ')}`)
  }
})

const choice = z.strictObject({
  says: marked,
  right: z.boolean().default(false),
  /** Why it is right, or what is wrong with it. */
  because: marked,
})

const choices = list(choice, 3, 'at least three choices, each with says and because').superRefine(
  (all, context) => {
    const right = all.filter((one) => one.right).length
    if (right === 0 || right === all.length)
      context.addIssue({
        code: 'custom',
        message: `${right} of ${all.length} are right; allowed: at least one right and one wrong`,
      })
  },
)

const differenceOf: Partial<Record<KindId, KindId>> = {
  temperature: 'temperatureDifference',
  gaugePressure: 'pressureDifference',
}

const enteredFigure = z
  .strictObject({
    kind: kindId,
    answer: text,
    /** Half-width about the answer within which a figure counts as right. */
    within: text,
    because: marked,
    /** Figures to which a known slip leads. */
    slips: list(
      z.strictObject({ value: text, because: marked }),
      1,
      'at least one figure to which a slip leads, with its because',
    ),
  })
  .superRefine(({ kind, answer, within, slips }, context) => {
    const check = (path: (string | number)[], written: string, of: KindId) =>
      checkFigure(written, of, (message) => context.addIssue({ code: 'custom', path, message }))
    const known = kind as KindId
    check(['answer'], answer, known)
    check(['within'], within, differenceOf[known] ?? known)
    slips.forEach(({ value }, place) => check(['slips', place, 'value'], value, known))
  })
  .transform((asked) => ({ ...asked, kind: asked.kind as KindId }))

const question = z
  .strictObject({
    /** Kept with what a person answered: a question that changes its meaning gets another id. */
    id: z.string().regex(/^[a-z0-9-]+$/, { error: 'allowed: small letters, digits and hyphens' }),
    ask: marked,
    /** For the instructor: what a wrong answer tells of the one who gives it. */
    finds: sentence,
    basis: z.enum(bases),
    choices: choices.optional(),
    figure: enteredFigure.optional(),
  })
  .superRefine((asked, context) => {
    if ((asked.choices === undefined) === (asked.figure === undefined))
      context.addIssue({
        code: 'custom',
        message: `«${asked.id}» has choices and figure, or neither; allowed: exactly one of the two`,
      })
  })

/** The questions of a lesson; the file has the lesson's name. */
export const questions = z.strictObject({
  questions: list(question, 5, 'at least five questions').superRefine((all, context) => {
    const ids = all.map(({ id }) => id)
    for (const id of ids.filter((one, place) => ids.indexOf(one) !== place))
      context.addIssue({ code: 'custom', message: `«${id}» is the id of two questions; allowed: one` })
  }),
})

export const lesson = z.strictObject({
  ...page,
  /** Place in the course. */
  order: z.number(wanted('a whole number from 1 up')).int().positive(),
  cautions: cautionIds,
  /** What one can do afterwards. */
  aims: list(sentence, 3, 'at least three aims'),
  /** In the order of reading. */
  reading: list(
    z.strictObject({
      page: pagePath,
      minutes,
      /** What to read it for. */
      lookFor: sentence,
    }),
    2,
    'at least two pages, each with page, minutes and lookFor',
  ),
  /** Working times besides the reading: our estimates. */
  minutes: z.strictObject({ bench: minutes, questions: minutes, exercise: minutes }),
  exercise: exerciseId,
  /** For who is quick, or for a class that wants another one. */
  further: z.array(exerciseId).default([]),
  /** For the instructor. */
  instructor: z.strictObject({
    /** How to begin, and what to show on the projector. */
    show: sentence,
    misunderstandings: list(
      z.strictObject({ says: sentence, answer: sentence }),
      2,
      'at least two misunderstandings, each with says and answer',
    ),
  }),
})
