import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import type { z } from 'astro/zod'
import { circuit as schema } from '../../../components/content/schemas.ts'

/** The circuit's data as it stands in its file. */
export function rawCircuit(): z.input<typeof schema> {
  return parse(readFileSync('content/circuits/pq-12.yaml', 'utf8')) as z.input<typeof schema>
}

export const circuit = schema.parse(rawCircuit())
