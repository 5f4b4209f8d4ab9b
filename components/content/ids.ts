import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import type { PartKindId } from '../../calculators/circuit/part-kinds.ts'
import type { FuelData } from '../../calculators/circuit/read-model.ts'
import type { SetPoint } from '../../calculators/circuit/read-figures.ts'

const CONTENT = join(process.cwd(), 'content')

/** The plant for whose circuit the articles are written. */
export const ARTICLES_PLANT = 'pq-12'

/** The plant that the build shows: PLANT=my-plant npm run build takes content/plants/my-plant.yaml. */
export const shownPlant = (): string => process.env['PLANT'] ?? ARTICLES_PLANT

/** Ids of a collection that keeps one file an entry: the file names without their ending. */
export function idsOfFolder(collection: string): string[] {
  const folder = join(CONTENT, collection)
  if (!existsSync(folder)) return []
  return readdirSync(folder)
    .filter((name) => /\.(mdx|yaml)$/.test(name))
    .map((name) => name.replace(/\.(mdx|yaml)$/, ''))
    .sort()
}

const parsed = new Map<string, { readonly text: string; readonly data: unknown }>()

/** What a YAML file holds, parsed anew only when its text is another: each claim and each page asks for the same few. */
function yamlOf(path: string): unknown {
  const text = readFileSync(join(CONTENT, path), 'utf8')
  const before = parsed.get(path)
  if (before?.text === text) return before.data
  const data: unknown = parse(text)
  parsed.set(path, { text, data })
  return data
}

/** Ids of a collection that keeps all its entries in one YAML file: the keys at its top. */
export function idsOfFile(path: string): string[] {
  return Object.keys(yamlOf(path) as object).sort()
}

/** Keys under a field at the top of one YAML file: the set points of a plant, say. */
export function keysIn(path: string, field: string): string[] {
  const data = yamlOf(path) as Record<string, unknown>
  return Object.keys((data[field] ?? {}) as object)
}

/** Ids under 'values' of one entry of a YAML file; none where there is no such entry. */
export function valuesOf(path: string, entry: string): string[] {
  const data = yamlOf(path) as Record<string, { readonly values?: object }>
  return Object.keys(data[entry]?.values ?? {})
}

/** A text under one entry of a YAML file; empty where there is none. */
export function textUnder(path: string, entry: string, field: string): string {
  const data = yamlOf(path) as Record<string, Record<string, unknown>>
  return String(data[entry]?.[field] ?? '')
}

/** A text at the top of one YAML file: the circuit of a plant, say. */
export function textIn(path: string, field: string): string {
  const data = yamlOf(path) as Record<string, unknown>
  return String(data[field])
}

export type SetPoints = Readonly<Record<string, SetPoint>>

/** Set points of a plant by id, each with its kind and its value as its file gives them. */
export function setPointsOf(plant: string): SetPoints {
  const { setPoints } = yamlOf(`plants/${plant}.yaml`) as { setPoints: SetPoints }
  return setPoints
}

/** The fuels by id, as their files give them. */
export function fuelsOf(): Readonly<Record<string, FuelData>> {
  const read = (id: string) => yamlOf(`fuels/${id}.yaml`) as FuelData
  return Object.fromEntries(idsOfFolder('fuels').map((id) => [id, read(id)]))
}

/** What a fault's bends and a claim need to know of a circuit, read before its schema has seen it. */
interface RawCircuit {
  readonly plant: string
  readonly fuels: readonly string[]
  readonly ranges: Readonly<Record<'tankTemperature' | 'ambientTemperature', readonly [string, string]>>
  readonly elements: readonly {
    readonly id: string
    readonly count?: number
    readonly model: { readonly kind: PartKindId; readonly [parameter: string]: string }
  }[]
  readonly connections: readonly {
    readonly pipe?: { readonly id: string; readonly [parameter: string]: string }
  }[]
}

/** A circuit as its file gives it. */
export function rawCircuit(id: string): RawCircuit {
  return yamlOf(`circuits/${id}.yaml`) as RawCircuit
}

/** Ids of the calculators: their folders' names. */
export function calculatorIds(): string[] {
  return readdirSync(join(process.cwd(), 'calculators', 'catalogue'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
}

/** Paths of the pages, as front matter and links in articles name them: 'circuit/the-two-valves'. */
export function pagePaths(): string[] {
  return [
    ...['circuit', 'symptoms', 'procedures', 'lessons'].flatMap((collection) =>
      idsOfFolder(collection).map((id) => `${collection}/${id}`),
    ),
    ...idsOfFolder('circuits').map((id) => `bench/${id}`),
    ...[...calculatorIds(), 'unit-converter'].map((id) => `calculators/${id}`),
    ...idsOfFolder('tables').map((id) => `tables/${id}`),
  ]
}
