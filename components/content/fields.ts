import { z } from 'astro/zod'
import type { KindId, QuantityReading } from '../../calculators/quantity/types.ts'
import { kinds, kindOf } from '../../calculators/quantity/kinds.ts'
import { readFigure } from '../../calculators/quantity/figure.ts'
import { idsOfFile, idsOfFolder, keysIn, pagePaths } from './ids.ts'

/** An id of one of these. A wrong one is named in the build's error together with all that would do. */
export function oneOf<Id extends string>(what: string, ids: readonly Id[]) {
  return z.enum(ids as readonly [Id, ...Id[]], {
    error: (issue) =>
      `«${String(issue.input)}» is not an id of ${what}; allowed: ${ids.length > 0 ? ids.join(', ') : 'none yet'}`,
  })
}

export const sourceId = oneOf('content/sources', idsOfFile('sources/sources.yaml'))
export const cautionId = oneOf('content/cautions', idsOfFile('cautions/cautions.yaml'))
export const termId = oneOf('content/glossary', idsOfFile('glossary/terms.yaml'))
export const faultId = oneOf('content/faults', idsOfFolder('faults'))
export const plantId = oneOf('content/plants', idsOfFolder('plants'))
export const circuitId = oneOf('content/circuits', idsOfFolder('circuits'))
export const fuelId = oneOf('content/fuels', idsOfFolder('fuels'))
export const procedureId = oneOf('content/procedures', idsOfFolder('procedures'))
export const kindId = oneOf('calculators/quantity/kinds.ts', Object.keys(kinds))

export const pagePath = oneOf('the pages', pagePaths())
export const setPointId = oneOf(
  'the set points of content/plants',
  idsOfFolder('plants').flatMap((plant) => keysIn(`plants/${plant}.yaml`, 'setPoints')),
)

/** A figure is a number and a unit in one text: '450 kPa'. A bare number is refused. */
export function checkFigure(text: string, kind: KindId, add: (message: string) => void): void {
  const reading: QuantityReading = readFigure(text, kind)
  if (!reading.ok) add(`«${text}»: ${reading.reason}; allowed: ${reading.accepted}`)
}

export function figure(kind: KindId) {
  return z
    .string({
      error: (issue) =>
        `«${String(issue.input)}» is not a figure; allowed: a number and a unit in one text, a ${kindOf(kind).label} in ${kindOf(kind).units.join(', ')}`,
    })
    .superRefine((text, context) => checkFigure(text, kind, (message) => context.addIssue(message)))
}

/** A field that is left out and one of the wrong kind are told what is allowed, and not only that it is required. */
export function wanted(allowed: string) {
  return {
    error: ({ input }: { input?: unknown }) =>
      `${input === undefined ? 'this field is missing' : `«${JSON.stringify(input)}» does not fit`}; allowed: ${allowed}`,
  }
}

export const text = z.string(wanted('a text')).trim().min(1, { error: 'an empty text; allowed: a text' })
export const sentence = z
  .string(wanted('a sentence that ends with a full stop'))
  .trim()
  .regex(/[.?!:]$/, { error: 'a sentence ends with a full stop' })

/** A list that must hold something, with a word on what. */
export function list<Item extends z.ZodType>(item: Item, least: number, allowed: string) {
  return z.array(item, wanted(allowed)).min(least, { error: `too few; allowed: ${allowed}` })
}

export const cautionIds = list(
  cautionId,
  1,
  `at least one caution of ${idsOfFile('cautions/cautions.yaml').join(', ')}`,
)
