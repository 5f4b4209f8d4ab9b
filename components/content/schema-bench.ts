import { z } from 'astro/zod'
import { operatingStates } from '../../calculators/circuit/types.ts'
import { circuitId, faultId, figure, fuelId, list, sentence, text } from './fields.ts'

/** What a person can change of the conditions of a bench. */
const movable = ['state', 'fuel', 'tankTemperature', 'ambientTemperature', 'tankLevel', 'height'] as const

/** A small bench that an article sets to its subject. */
export const bench = z.strictObject({
  title: text,
  caption: sentence,
  circuit: circuitId,
  /** What differs from the circuit's usual conditions. */
  conditions: z
    .strictObject({
      state: z.enum(operatingStates),
      fuel: fuelId.optional(),
      tankTemperature: figure('temperature').optional(),
      ambientTemperature: figure('temperature').optional(),
      /** Share of the depth: '30 %'. */
      tankLevel: figure('ratio').optional(),
      /** Of the place over the sea: '1500 m'. */
      height: figure('length').optional(),
    })
    .default({ state: 'part' }),
  /** Severity, 0 to 1, of each fault that is on from the start. */
  faults: z.partialRecord(faultId, z.number().min(0).max(1)).default({}),
  /** Ids of the parts that are glasses, and of readings. */
  show: z.strictObject({ glasses: z.array(text).default([]), readings: z.array(text).default([]) }),
  /** What the person may change: conditions, and faults of the circuit. */
  move: list(
    z.union([z.enum(movable), faultId]),
    1,
    `at least one of ${movable.join(', ')} or the id of a fault`,
  ),
})
