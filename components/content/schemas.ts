import { z } from 'astro/zod'
import type { KindId, QuantityReading } from '../../calculators/quantity/types.ts'
import { kinds, kindOf } from '../../calculators/quantity/kinds.ts'
import { readFigure } from '../../calculators/quantity/figure.ts'
import { circuitProblems } from '../../calculators/circuit/validate.ts'
import { drawingProblems } from '../circuit/layout.ts'
import { portNames, symbolIds } from '../circuit/symbols/geometry.ts'
import { idsOfFile, idsOfFolder, keysIn, pagePaths } from './ids.ts'

/** An id of one of these. A wrong one is named in the build's error together with all that would do. */
function oneOf(what: string, ids: string[]) {
  return z.enum(ids as [string, ...string[]], {
    error: (issue) =>
      `«${String(issue.input)}» is not an id of ${what}; allowed: ${ids.length > 0 ? ids.join(', ') : 'none yet'}`,
  })
}

const sourceId = oneOf('content/sources', idsOfFile('sources/sources.yaml'))
const cautionId = oneOf('content/cautions', idsOfFile('cautions/cautions.yaml'))
const termId = oneOf('content/glossary', idsOfFile('glossary/terms.yaml'))
const faultId = oneOf('content/faults', idsOfFolder('faults'))
const plantId = oneOf('content/plants', idsOfFolder('plants'))
const circuitId = oneOf('content/circuits', idsOfFolder('circuits'))
const procedureId = oneOf('content/procedures', idsOfFolder('procedures'))
const kindId = oneOf('calculators/quantity/kinds.ts', Object.keys(kinds))

const pagePath = oneOf('the pages', pagePaths())
const setPointId = oneOf(
  'the set points of content/plants',
  idsOfFolder('plants').flatMap((plant) => keysIn(`plants/${plant}.yaml`, 'setPoints')),
)

/** A figure is a number and a unit in one text: '450 kPa'. A bare number is refused. */
function checkFigure(text: string, kind: KindId, add: (message: string) => void): void {
  const reading: QuantityReading = readFigure(text, kind)
  if (!reading.ok) add(`«${text}»: ${reading.reason}; allowed: ${reading.accepted}`)
}

function figure(kind: KindId) {
  return z
    .string({
      error: (issue) =>
        `«${String(issue.input)}» is not a figure; allowed: a number and a unit in one text, a ${kindOf(kind).label} in ${kindOf(kind).units.join(', ')}`,
    })
    .superRefine((text, context) => checkFigure(text, kind, (message) => context.addIssue(message)))
}

/** A field that is left out and one of the wrong kind are told what is allowed, and not only that it is required. */
function wanted(allowed: string) {
  return {
    error: ({ input }: { input?: unknown }) =>
      `${input === undefined ? 'this field is missing' : `«${JSON.stringify(input)}» does not fit`}; allowed: ${allowed}`,
  }
}

const text = z.string(wanted('a text')).trim().min(1, { error: 'an empty text; allowed: a text' })
const sentence = z
  .string(wanted('a sentence that ends with a full stop'))
  .trim()
  .regex(/[.?!:]$/, { error: 'a sentence ends with a full stop' })

/** A list that must hold something, with a word on what. */
function list<Item extends z.ZodType>(item: Item, least: number, allowed: string) {
  return z.array(item, wanted(allowed)).min(least, { error: `too few; allowed: ${allowed}` })
}

const cautionIds = list(
  cautionId,
  1,
  `at least one caution of ${idsOfFile('cautions/cautions.yaml').join(', ')}`,
)

/** What every page has. */
const page = {
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
  /** Causes, the likeliest first. */
  causes: list(
    z.strictObject({
      fault: faultId,
      /** How this cause shows in this symptom. */
      shows: sentence,
      /** How to tell it from its neighbours. */
      tellApart: sentence,
      basis: z.enum(['practice', 'editorial estimate']).default('practice'),
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

/** Suction, supply, return and drain carry fuel; a gauge line a pressure or a temperature, a shaft a torque. */
const lineKind = z.enum(['suction', 'supply', 'return', 'drain', 'gauge', 'shaft'])

/** A place on the drawing's grid, in steps from its upper left corner. */
const place = z.tuple([z.number().nonnegative(), z.number().nonnegative()])

export const circuit = z
  .strictObject({
    title: text,
    summary: sentence,
    plant: plantId,
    invented: z.boolean(),
    /** Size of the drawing in grid steps. */
    size: z.strictObject({ width: z.number().positive(), height: z.number().positive() }),
    elements: z
      .array(
        z.strictObject({
          id: z.string().regex(/^[a-z0-9-]+$/),
          /** Place on the way of the fuel from tank to tank; parts off that way have none. */
          number: z.number().int().positive().optional(),
          symbol: oneOf('components/circuit/symbols', symbolIds),
          /** How many like parts the symbol stands for: twelve injectors in a row, a header with twelve branches. */
          count: z.number().int().positive().default(1),
          label: text,
          at: place,
          turn: z.union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)]).default(0),
          /** Middle of the number's circle; the words stand to its right, or to its left where labelAlign is end. */
          labelAt: place,
          labelAlign: z.enum(['start', 'end']).default('start'),
          /** Most letters in one line of the label. */
          labelWrap: z.number().int().positive().default(14),
          /** A few words under the label: how the part looks in health. */
          note: text.max(24).optional(),
          /** What it is for. */
          purpose: sentence,
          /** What its glass or gauge shows in health. */
          inHealth: sentence,
          /** Set points of the plant that say so in figures. */
          setPoints: z.array(text).default([]),
          article: pagePath.optional(),
          procedure: procedureId.optional(),
        }),
      )
      .min(2),
    /** Where three or four lines meet; its ports are left, right, up and down. */
    junctions: z.array(z.strictObject({ id: z.string().regex(/^[a-z0-9-]+$/), at: place })).default([]),
    connections: z
      .array(
        z.strictObject({
          /** 'element.port' or 'junction.side', in the direction of the fuel. */
          from: z.string().regex(/^[a-z0-9-]+\.[a-z0-9-]+$/),
          to: z.string().regex(/^[a-z0-9-]+\.[a-z0-9-]+$/),
          line: lineKind,
          via: z.array(place).default([]),
          /** Words along the line, and where they start. */
          name: z.strictObject({ text, at: place }).optional(),
        }),
      )
      .min(1),
  })
  .superRefine((data, context) => {
    const netProblems = circuitProblems(data, portNames)
    const drawn = netProblems.length > 0 ? [] : drawingProblems(data)
    const setPoints = keysIn(`plants/${data.plant}.yaml`, 'setPoints')
    const unknown = data.elements.flatMap((element, index) =>
      element.setPoints.flatMap((id, place) =>
        setPoints.includes(id)
          ? []
          : [
              {
                path: ['elements', index, 'setPoints', place],
                message: `«${id}» is no set point of content/plants/${data.plant}.yaml; allowed: ${setPoints.join(', ')}`,
              },
            ],
      ),
    )
    for (const problem of [...netProblems, ...drawn, ...unknown]) {
      context.addIssue({ code: 'custom', path: problem.path, message: problem.message })
    }
  })

export const fault = z.strictObject({
  title: text,
  alsoCalled: z.array(text).default([]),
  /** 'circuit.element' that it sits at. */
  circuit: circuitId,
  element: text,
  /** What has happened to the part. */
  description: sentence,
  /** How often it is met: an editorial estimate. */
  frequency: z.enum(['common', 'occasional', 'rare']),
  /** A measurement or a look that proves it. */
  confirm: sentence,
  procedure: procedureId,
  cautions: cautionIds,
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
