import { z } from 'astro/zod'
import { checkKinds, plantStates } from '../../calculators/checks/types.ts'
import {
  cautionId,
  cautionIds,
  circuitId,
  faultId,
  figure,
  fuelId,
  list,
  oneOf,
  procedureId,
  sentence,
  text,
  wanted,
} from './fields.ts'
import { idsOfFile } from './ids.ts'

const checkId = oneOf('content/checks/checks.yaml', idsOfFile('checks/checks.yaml'))
const plantState = oneOf('the states of a plant', plantStates)
const minutes = z.number(wanted('a whole number of minutes')).int().min(0).max(240)

/** A state of the plant; the key is one of `plantStates`. */
export const checkState = z.strictObject({
  title: text,
  /** What runs and what stands in it. */
  words: sentence,
  /** From the state before. */
  up: minutes,
  /** From the state behind it. */
  down: minutes,
  cautions: cautionIds,
})

export const check = z
  .strictObject({
    label: text,
    kind: z.enum(checkKinds),
    /** Working time of a practised person: our estimate. */
    minutes: minutes.min(1),
    /** How it is done so that it tells something. */
    how: sentence,
    states: list(plantState, 1, 'at least one state in which it can be made'),
    circuits: list(circuitId, 1, 'at least one circuit'),
    /** Ids of glasses, of readings ('exhaust-*' for every cylinder) and of parts of the circuits above. */
    glasses: z.array(text).default([]),
    readings: z.array(text).default([]),
    feels: z.array(text).default([]),
    finds: z
      .array(z.strictObject({ faults: list(faultId, 1, 'at least one fault'), says: sentence }))
      .default([]),
    /** What it says where it finds none of these faults. */
    otherwise: sentence.optional(),
    cautions: cautionIds,
    procedure: procedureId.optional(),
  })
  .superRefine((data, context) => {
    const seen = [...data.glasses, ...data.readings, ...data.feels]
    if (seen.length + data.finds.length === 0)
      context.addIssue({
        code: 'custom',
        message: 'it tells nothing; allowed: glasses, readings, feels or finds',
      })
    if (data.finds.length > 0 !== (data.otherwise !== undefined))
      context.addIssue({
        code: 'custom',
        path: ['otherwise'],
        message: 'stands with finds, and only with them; allowed: what it says where it finds nothing',
      })
    if (seen.length > 0 && data.states.includes('stopped'))
      context.addIssue({
        code: 'custom',
        path: ['states'],
        message: 'a stopped plant shows no reading and no glass; allowed: priming, idle, part, full',
      })
    if (data.kind === 'spanner' && !data.states.every((state) => state === 'stopped' || state === 'priming'))
      context.addIssue({
        code: 'custom',
        path: ['states'],
        message: 'a spanner is put to a plant whose engine runs; allowed: stopped, priming',
      })
  })

const hiddenFault = z.strictObject({
  fault: faultId,
  /** How far it has gone; a slighter one would hardly be reported. */
  severity: z.number(wanted('a number from 0.25 to 1')).min(0.25).max(1),
})

export const exercise = z.strictObject({
  title: text,
  /** 1: one plain fault, to 5: two at once. */
  grade: z.number(wanted('a whole number from 1 to 5')).int().min(1).max(5),
  circuit: circuitId,
  /** State in which the plant is handed over. */
  start: plantState,
  conditions: z.strictObject({
    fuel: fuelId,
    tankTemperature: figure('temperature'),
    ambientTemperature: figure('temperature'),
    tankLevel: figure('ratio'),
  }),
  /** What is the matter: one fault, or two. */
  faults: list(hiddenFault, 1, 'one fault or two, each with its severity').max(2),
  /** What the driver reports. */
  complaint: sentence,
  /** Checks of which the complaint already gives the answer. */
  told: z.array(z.strictObject({ state: plantState, check: checkId })).default([]),
  hint: sentence,
  cautions: z.array(cautionId).default([]),
})
