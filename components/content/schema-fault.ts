import { z } from 'astro/zod'
import type { Bend } from '../../calculators/faults/types.ts'
import { bendProblems, conditionKinds, type RawBend } from './fault-bends.ts'
import { cautionIds, circuitId, procedureId, sentence, text, wanted } from './fields.ts'

const conditionIds = [...(Object.keys(conditionKinds) as (keyof typeof conditionKinds)[]), 'fuel'] as const

/** One place at which the fault acts, and how far; which fields go together is checked with the circuit's data. */
const bend = z.strictObject({
  /** Id of an element or pipe of the circuit. */
  part: text.optional(),
  /** One of the figures of a part of its kind. */
  parameter: text.optional(),
  /** Which cylinders, for a figure of which each has its own. */
  cylinders: z.union([z.literal('all'), z.array(z.number().int().positive()).min(1)]).optional(),
  /** Instead of part and parameter: what of the fuel and the tank it changes. */
  condition: z.enum(conditionIds).optional(),
  /** Figure at full severity; of the condition 'fuel' the id of the fuel that was delivered instead. */
  to: text.optional(),
  /** Or how many times the figure in health. */
  times: z.number().positive().optional(),
})

export const fault = z
  .strictObject({
    title: text,
    alsoCalled: z.array(text).default([]),
    /** What it does in each circuit in which it can happen. Its place there is the part of the first bend. */
    bends: z.partialRecord(
      circuitId,
      z.array(bend).min(1, { error: 'too few; allowed: at least one bend' }),
      wanted('the id of a circuit with a list of bends'),
    ),
    /** What has happened to the part. */
    description: sentence,
    /** How often it is met: an editorial estimate. */
    frequency: z.enum(['common', 'occasional', 'rare']),
    /** A measurement or a look that proves it. */
    confirm: sentence,
    procedure: procedureId,
    /** Another procedure in a circuit whose part is built otherwise. */
    procedureIn: z.partialRecord(circuitId, procedureId).default({}),
    cautions: cautionIds,
  })
  .superRefine(({ bends }, context) => {
    const circuits = Object.entries(bends) as [string, RawBend[]][]
    if (circuits.length === 0) {
      context.addIssue({
        code: 'custom',
        path: ['bends'],
        message: 'no circuit stands here; allowed: the id of a circuit with a list of bends',
      })
    }
    for (const [id, list] of circuits) {
      list.forEach((one, index) => {
        for (const { path, message } of bendProblems(id, one)) {
          context.addIssue({ code: 'custom', path: ['bends', id, index, ...path], message })
        }
      })
    }
  })
  // Which fields stand together was checked above.
  .transform((data) => ({ ...data, bends: data.bends as Readonly<Record<string, readonly Bend[]>> }))
