import { z } from 'astro/zod'
import type { KindId } from '../../calculators/quantity/types.ts'
import { checkFigure, figure, kindId, list, oneOf, pagePath, sentence, sourceId, text } from './fields.ts'

/** Tables that are worked out when the page is built: components/table/computed.ts. */
export const computedTables = [
  'cleanliness-codes',
  'units',
  'pressures',
  'fuel-viscosities',
  'fuel-properties',
  'viscosity-scales',
  'gauges',
] as const

const id = z.string().regex(/^[a-z0-9-]+$/)

const row = z
  .strictObject({
    name: text,
    /** Temperature for which the row speaks. */
    at: figure('temperature').optional(),
    limit: z.enum(['at least', 'at most', 'above', 'below']).optional(),
    /** Kind of the cells; without it they are words or bare numbers. */
    kind: kindId.optional(),
    /** One for each column; '' where the standard sets nothing. */
    cells: z.array(z.string()),
    source: sourceId.optional(),
    practice: z.literal(true).optional(),
    /** Not read: beside a source it is that source's figure, from memory. */
    memory: z.literal(true).optional(),
  })
  .superRefine(({ kind, cells, source, practice, memory }, context) => {
    const refuse = (path: (string | number)[], message: string) =>
      context.addIssue({ code: 'custom', path, message })
    if (kind !== undefined)
      for (const [place, cell] of cells.entries())
        if (cell !== '') checkFigure(cell, kind as KindId, (message) => refuse(['cells', place], message))
    const bad = practice ? source !== undefined || memory : source === undefined && !memory
    if (bad)
      refuse(
        [],
        'a row says where its figures come from; allowed: source, source with memory, memory, or practice',
      )
  })
  .transform((read) => ({ ...read, kind: read.kind as KindId | undefined }))

const typed = z
  .strictObject({
    id,
    title: text,
    caption: sentence,
    head: text,
    columns: list(text, 1, 'at least one column'),
    rows: list(row, 1, 'at least one row'),
    notes: z.array(sentence).default([]),
  })
  .superRefine(({ columns, rows }, context) => {
    for (const [place, { cells }] of rows.entries())
      if (cells.length !== columns.length)
        context.addIssue({
          code: 'custom',
          path: ['rows', place, 'cells'],
          message: `${cells.length} cells; allowed: one for each of the ${columns.length} columns`,
        })
  })

/** A page of tables to look things up in. */
export const table = z.strictObject({
  title: text,
  summary: sentence,
  alsoCalled: z.array(text).default([]),
  /** Place in the list of tables. */
  order: z.number().int().positive(),
  reviewed: z.coerce.date({ error: 'missing or not a day; allowed: a day such as 2026-11-25' }),
  sources: z.array(sourceId).default([]),
  related: z.array(pagePath).default([]),
  tables: list(
    z.union([typed, oneOf('the computed tables', computedTables)]),
    1,
    `a table with id, title, caption, head, columns and rows, or one of ${computedTables.join(', ')}`,
  ),
})
