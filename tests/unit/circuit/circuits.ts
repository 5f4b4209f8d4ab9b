import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import type { z } from 'astro/zod'
import { circuit as schema } from '../../../components/content/schemas.ts'

export const circuitIds = ['pq-12', 'ps-6', 'pb-8'] as const
export type CircuitId = (typeof circuitIds)[number]

/** A circuit's data as it stands in its file. */
export function rawCircuit(id: CircuitId): z.input<typeof schema> {
  return parse(readFileSync(`content/circuits/${id}.yaml`, 'utf8')) as z.input<typeof schema>
}

export const circuits = Object.fromEntries(
  circuitIds.map((id) => [id, schema.parse(rawCircuit(id))]),
) as Readonly<Record<CircuitId, z.output<typeof schema>>>

/** The circuit of the PQ-12. */
export const circuit = circuits['pq-12']
