import { readdirSync, readFileSync } from 'node:fs'
import { parse } from 'yaml'
import type { z } from 'astro/zod'
import type { CheckData, StatesData } from '../../../calculators/checks/types.ts'
import {
  check as checkSchema,
  checkState,
  exercise as schema,
} from '../../../components/content/schema-exercise.ts'

const yaml = (path: string) => parse(readFileSync(`content/${path}`, 'utf8')) as Record<string, unknown>

/** The shipped checks with their ids. */
export const checks: readonly CheckData[] = Object.entries(yaml('checks/checks.yaml')).map(([id, data]) => ({
  id,
  ...checkSchema.parse(data),
}))

/** The shipped states of the plant. */
export const states = Object.fromEntries(
  Object.entries(yaml('checks/states.yaml')).map(([id, data]) => [id, checkState.parse(data)]),
) as unknown as StatesData

export type ExerciseData = z.infer<typeof schema>

/** The shipped exercises by their numbers. */
export const exercises: readonly (ExerciseData & { readonly number: string })[] = readdirSync(
  'content/exercises',
).map((file) => ({ number: file.replace('.yaml', ''), ...schema.parse(yaml(`exercises/${file}`)) }))
