import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import type { SetPoint } from '../circuit/read-figures.ts'
import type { FuelData } from '../circuit/read-model.ts'
import type { CircuitData } from '../circuit/types.ts'
import type { Knowledge, KnownCheck, KnownStates, Weights } from '../diagnosis/types.ts'
import type { FaultData } from '../faults/types.ts'

/** The handbook's data, wherever the command is started. */
const CONTENT = join(import.meta.dirname, '..', '..', 'content')

type WithCount = Omit<CircuitData['elements'][number], 'count'> & { readonly count?: number }

/** What a file of content/circuits holds for the model. */
export interface CircuitFile extends CircuitData {
  readonly plant: string
}

export interface PlantFile {
  readonly title: string
  readonly circuit: string
  readonly setPoints: Readonly<Record<string, SetPoint>>
}

const read = (folder: string, id: string): unknown =>
  parse(readFileSync(join(CONTENT, folder, `${id}.yaml`), 'utf8'))

/** Ids of a folder of the content: its file names. */
export function idsOf(folder: 'plants' | 'circuits' | 'fuels' | 'faults'): string[] {
  return readdirSync(join(CONTENT, folder))
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => name.slice(0, -'.yaml'.length))
    .sort()
}

export function circuitFile(id: string): CircuitFile {
  const file = read('circuits', id) as Omit<CircuitFile, 'elements'> & {
    readonly elements: readonly WithCount[]
  }
  return { ...file, elements: file.elements.map((element) => ({ count: 1, ...element })) }
}

export const plantFile = (id: string): PlantFile => read('plants', id) as PlantFile

export function allFuels(): Readonly<Record<string, FuelData>> {
  return Object.fromEntries(idsOf('fuels').map((id) => [id, read('fuels', id) as FuelData]))
}

/** What of a fault a person needs to know before touching it. */
interface FaultFile {
  readonly title: string
  readonly confirm: string
  readonly procedure: string
  /** By circuit, where it is another one there. */
  readonly procedureIn?: Readonly<Record<string, string>>
  readonly cautions: readonly string[]
}

export const faultFile = (id: string): FaultFile => read('faults', id) as FaultFile

export function allFaults(): readonly FaultData[] {
  return idsOf('faults').map((id) => ({ ...(read('faults', id) as Omit<FaultData, 'id'>), id }))
}

export function allChecks(): readonly KnownCheck[] {
  const all = read('checks', 'checks') as Readonly<Record<string, Omit<KnownCheck, 'id'>>>
  const none = { glasses: [], readings: [], feels: [], finds: [] }
  return Object.entries(all).map(([id, check]) => ({ ...none, ...check, id }))
}

export const checkStates = (): KnownStates => read('checks', 'states') as KnownStates

/** What is told, how likely, and what weighs causes. */
export function diagnosisFile(): Pick<Knowledge, 'observables' | 'told' | 'weights'> {
  return {
    observables: read('diagnosis', 'observations') as Knowledge['observables'],
    told: read('diagnosis', 'told') as Knowledge['told'],
    weights: (read('diagnosis', 'weights') as { readonly causes: Weights }).causes,
  }
}
