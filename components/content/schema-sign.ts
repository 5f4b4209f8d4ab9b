import { z } from 'astro/zod'
import { wanted } from './fields.ts'

const states = ['priming', 'idle', 'part', 'full'] as const

const inStates = z
  .array(z.enum(states))
  .min(1)
  .default([...states])

const some = z.array(z.string().min(1), wanted('a list of texts')).min(1)

/** What a symptom is in the circuit model: one thing of which the model can say that it is there. */
export const sign = z.union([
  z.strictObject({
    /** Ids of readings, one a circuit: off from health in the same state by more than the instrument's accuracy. */
    readings: some,
    are: z.enum(['low', 'high']),
    in: inStates,
  }),
  z.strictObject({
    /** Words of which the return glass's description holds one, and in health does not. */
    returnGlass: some,
    in: inStates,
    /** States in which the glass is as in health all the same: clear while priming, say. */
    asInHealth: z.array(z.enum(states)).default([]),
  }),
  z.strictObject({
    /** Words of which the bypass glass's description holds one, and in health does not. */
    bypassGlass: some,
    in: inStates,
  }),
  z.strictObject({
    /** Words of which a remark of the model holds one, and in health does not. */
    remarks: some,
    in: inStates,
  }),
  z.strictObject({
    /** One exhaust departs from the middle of all by more than the accuracy of the probes. */
    oneCylinder: z.literal(true),
    in: inStates,
  }),
])
