import { z } from 'astro/zod'
import type { KindId } from '../../calculators/quantity/types.ts'
import {
  cautionId,
  cautionIds,
  checkFigure,
  circuitId,
  faultId,
  figure,
  kindId,
  list,
  pagePath,
  procedureId,
  sentence,
  setPointId,
  sourceId,
  termId,
  text,
  wanted,
} from './fields.ts'
import { sign } from './schema-sign.ts'

export { circuit } from './schema-circuit.ts'
export { fault } from './schema-fault.ts'

/** What every page has. */
export const page = {
  title: text,
  /** One sentence: shown under the title, in lists and in search results. */
  summary: sentence,
  /** Shop words and other names by which people look for this page. */
  alsoCalled: z.array(text).default([]),
  /** Day on which somebody last read it against its sources. */
  reviewed: z.coerce.date({ error: 'missing or not a day; allowed: a day such as 2026-11-25' }),
  sources: z.array(sourceId).default([]),
  related: z.array(pagePath).default([]),
}

export const circuitArticle = z.strictObject({
  ...page,
  /** Place in the order of reading. */
  order: z.number(wanted('a whole number from 1 up')).int().positive(),
  cautions: z.array(cautionId).default([]),
})

export const symptom = z.strictObject({
  ...page,
  cautions: cautionIds,
  /** What the person sees, and when, in a few sentences. */
  youSee: sentence,
  /** The first checks, the one worth most for its effort first. */
  firstChecks: list(
    z.strictObject({
      check: sentence,
      /** What the answer means. */
      means: sentence,
      procedure: procedureId.optional(),
    }),
    3,
    'at least three checks, each with check and means and, where there is one, its procedure',
  ),
  /** What it is in the circuit model: any one of these makes it. None where the model does not know it. */
  signs: z.array(sign).default([]),
  /** Causes, the likeliest first. */
  causes: list(
    z.strictObject({
      fault: faultId,
      /** How this cause shows in this symptom. */
      shows: sentence,
      /** How to tell it from its neighbours. */
      tellApart: sentence,
      /** 'model': the circuit model shows one of the signs for this cause. What the model cannot say is practice. */
      basis: z.enum(['model', 'practice', 'editorial estimate']).default('practice'),
    }),
    2,
    'at least two causes, each with fault, shows and tellApart',
  ),
})

export const procedure = z.strictObject({
  ...page,
  cautions: cautionIds,
  purpose: sentence,
  when: sentence,
  who: sentence,
  /** Working time. */
  time: figure('time'),
  tools: list(text, 1, 'at least one tool'),
  consumables: z.array(text).default([]),
  acceptance: list(
    z.strictObject({ what: sentence, setPoints: z.array(setPointId).default([]) }),
    1,
    'at least one test, each with what (a sentence) and, where it has figures, setPoints',
  ),
  ifItFails: sentence,
  record: list(text, 1, 'at least one line to write down'),
  waste: sentence,
})

export const caution = z.strictObject({
  /** Signal word as ISO 3864 and ANSI Z535 use it. */
  signal: z.enum(['DANGER', 'WARNING', 'CAUTION', 'NOTICE']),
  title: text,
  hazard: sentence,
  consequence: sentence,
  avoid: z.array(sentence).min(1),
})

export const term = z.strictObject({
  term: text,
  /** The forms in which it stands in a text, the term itself included. */
  forms: z.array(text).min(1),
  alsoCalled: z.array(text).default([]),
  definition: sentence.max(400),
  seeAlso: z.array(termId).default([]),
})

export const source = z.strictObject({
  title: text,
  publisher: text,
  edition: text,
  kind: z.enum(['standard', 'handbook', 'paper', 'library', 'data', 'regulation']),
  /** What of it was read, and what is from memory. */
  read: text,
  /** What it serves, where no page cites it and no calculator is held against it. */
  usedFor: sentence.optional(),
})

export const plant = z.strictObject({
  title: text,
  owner: text,
  invented: z.boolean(),
  summary: sentence,
  circuit: circuitId,
  setPoints: z.record(
    z.string().regex(/^[a-z0-9-]+$/),
    z
      .strictObject({
        label: text,
        kind: kindId,
        value: z.unknown(),
        tolerance: z.unknown().optional(),
        limit: z.enum(['minimum', 'maximum']).optional(),
        /** How the value was chosen. */
        chosen: sentence,
      })
      .superRefine((point, context) => {
        const kind = point.kind as KindId
        const differenceOf: Partial<Record<KindId, KindId>> = {
          temperature: 'temperatureDifference',
          gaugePressure: 'pressureDifference',
        }
        const check = (field: 'value' | 'tolerance', fieldKind: KindId) =>
          checkFigure(String(point[field]), fieldKind, (message) =>
            context.addIssue({ code: 'custom', path: [field], message }),
          )
        check('value', kind)
        if (point.tolerance !== undefined) check('tolerance', differenceOf[kind] ?? kind)
      })
      .transform((point) => ({
        ...point,
        kind: point.kind as KindId,
        value: String(point.value),
        tolerance: point.tolerance === undefined ? undefined : String(point.tolerance),
      })),
  ),
})

export const fuel = z.strictObject({
  title: text,
  invented: z.boolean(),
  summary: sentence,
  densityAt15: figure('density'),
  viscosities: z
    .array(
      z.strictObject({
        temperature: figure('temperature'),
        kinematicViscosity: figure('kinematicViscosity'),
      }),
    )
    .min(2),
  cloudPoint: figure('temperature'),
  sources: z.array(sourceId).default([]),
})
