import { z } from 'astro/zod'
import { operatingStates } from '../../calculators/circuit/types.ts'
import { circuitId, faultId, list, oneOf, sentence, text } from './fields.ts'
import { exhaustWords, readingWords } from '../../calculators/diagnosis/in-words.ts'
import { feltWords } from '../../calculators/diagnosis/tellables.ts'
import { idsOfFile, textUnder, valuesOf } from './ids.ts'

const share = z.number().min(0).max(1)
const common = {
  label: text,
  circuits: list(circuitId, 1, 'at least one circuit'),
}
const states = list(z.enum(operatingStates), 1, 'at least one of priming, idle, part, full')
const values = z.record(z.string(), sentence)

const glass = z
  .strictObject({
    from: z.literal('glass'),
    ...common,
    states,
    values,
    /** What is there → what is said instead → share: our estimates. */
    mistaken: z.record(z.string(), z.record(z.string(), share)),
  })
  .superRefine((data, context) => {
    const known = Object.keys(data.values)
    const allowed = known.join(', ')
    for (const [there, said] of Object.entries(data.mistaken)) {
      for (const value of [there, ...Object.keys(said)])
        if (!known.includes(value))
          context.addIssue({
            code: 'custom',
            path: ['mistaken', there],
            message: `«${value}» is no value of this glass; allowed: ${allowed}`,
          })
      if (Object.values(said).reduce((sum, one) => sum + one, 0) >= 0.5)
        context.addIssue({
          code: 'custom',
          path: ['mistaken', there],
          message: 'half or more is told wrongly; allowed: shares that leave more than half right',
        })
    }
  })

const reading = z.strictObject({
  from: z.literal('reading'),
  ...common,
  states,
  /** By how much sound plants differ: one standard deviation, a share of the value. */
  spread: z.number().positive().max(0.5),
  /** Of flows and drops, to which two causes together each bring their factor. */
  together: z.literal('multiply').optional(),
  /** A set point of the plant, above which the engine is not to be run to learn more; plants may do without it. */
  highest: z.string().optional(),
})

/** The exhausts of all cylinders, told in words. */
const exhausts = z.strictObject({ from: z.literal('exhausts'), ...common, states })

const toldObservable = z.strictObject({ from: z.literal('told'), ...common, values })

/** Something that a person sees, reads or tells; the key is its id. */
export const observable = z.union([glass, reading, exhausts, toldObservable])

const shares = z
  .record(z.string(), z.number().gt(0).lt(1))
  .refine((all) => Math.abs(Object.values(all).reduce((sum, one) => sum + one, 0) - 1) < 1e-9, {
    error: 'the shares do not sum to one; allowed: every value above 0, all together 1',
  })

/** How often each value of an observable is told; the key is the observable's id. */
export const told = z
  .strictObject({
    otherwise: shares,
    given: z.array(z.strictObject({ faults: list(faultId, 1, 'at least one fault'), shares, why: sentence })),
  })
  .superRefine(({ otherwise, given }, context) => {
    const known = Object.keys(otherwise).sort().join(', ')
    const seen = new Set<string>()
    given.forEach((one, index) => {
      if (Object.keys(one.shares).sort().join(', ') !== known)
        context.addIssue({
          code: 'custom',
          path: ['given', index, 'shares'],
          message: `other values than otherwise; allowed: ${known}`,
        })
      for (const fault of one.faults) {
        if (seen.has(fault))
          context.addIssue({
            code: 'custom',
            path: ['given', index, 'faults'],
            message: `«${fault}» stands twice; allowed: each fault once`,
          })
        seen.add(fault)
      }
    })
  })

const byFrequency = z.strictObject({
  common: z.number().positive(),
  occasional: z.number().positive(),
  rare: z.number().positive(),
})

/** Causes, and things told, with which something is not to be done. */
const notWith = z.strictObject({
  faults: z.array(faultId),
  found: z.array(faultId),
  told: z.record(z.string(), z.array(text)).superRefine((all, context) => {
    const known = idsOfFile('diagnosis/observations.yaml')
    for (const [id, said] of Object.entries(all)) {
      const values = valuesOf('diagnosis/observations.yaml', id)
      for (const value of said)
        if (!values.includes(value))
          context.addIssue({
            code: 'custom',
            path: [id],
            message: `«${value}» is no value of «${id}»; allowed: ${values.join(', ') || known.join(', ')}`,
          })
    }
  }),
})

/** What weighs causes and checks against one another. */
export const weights = z.strictObject({
  frequency: byFrequency,
  healthy: z.number().positive(),
  unknown: z.number().positive(),
  second: byFrequency,
  misread: z.number().gt(0).max(0.2),
  inspection: z.strictObject({ finds: z.number().gt(0.5).lt(1), falseAlarm: z.number().gt(0).lt(0.5) }),
  effort: z.strictObject({
    glance: z.number().min(1),
    gauge: z.number().min(1),
    hand: z.number().min(1),
    spanner: z.number().min(1),
  }),
  doNotRun: notWith,
  doNotPrime: notWith,
})

const observableIds = [...idsOfFile('diagnosis/observations.yaml'), ...idsOfFile('checks/checks.yaml')]
const asked = z.strictObject({
  id: oneOf('content/diagnosis/observations.yaml or content/checks', observableIds),
  state: z.enum(operatingStates).optional(),
})

const WORDS_FOR: Readonly<Record<string, readonly string[]>> = {
  reading: Object.keys(readingWords),
  exhausts: Object.keys(exhaustWords),
}

/** Values of an observation, of a word for a reading, or of what a hand feels. */
function valuesGiven(id: string): readonly string[] {
  const own = valuesOf('diagnosis/observations.yaml', id)
  if (own.length > 0) return own
  const from = WORDS_FOR[textUnder('diagnosis/observations.yaml', id, 'from')]
  return from ?? Object.keys(feltWords)
}

const given = z.array(
  asked.extend({ value: text }).superRefine(({ id, value }, context) => {
    const known = valuesGiven(id)
    if (!known.includes(value))
      context.addIssue({
        code: 'custom',
        path: ['value'],
        message: `«${value}» is no value of «${id}»; allowed: ${known.join(', ')}`,
      })
  }),
)

/** What a symptom is as something that a person tells; the key is the id of the symptom. */
export const start = z
  .strictObject({
    given: given.default([]),
    either: z
      .array(z.strictObject({ words: text, given: given.min(1) }))
      .min(2)
      .optional(),
    ask: z.array(asked).default([]),
  })
  .refine(({ given: all, either = [] }) => all.length + either.length > 0, {
    error: 'nothing is given; allowed: given, either with at least two ways, or both',
  })
