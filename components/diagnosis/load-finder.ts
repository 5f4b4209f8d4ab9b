import { getCollection } from 'astro:content'
import { readCircuit } from '../../calculators/circuit/read-model.ts'
import {
  computeSignatures,
  highestOf,
  packSignatures,
  tellables,
  unpackSignatures,
  type KnownCheck,
  type KnownStates,
  type PackedSignatures,
  type Tellable,
} from '../../calculators/diagnosis/index.ts'
import { benchDataOf } from '../circuit/bench/bench-data.ts'
import { circuitOf } from '../circuit/load-circuit.ts'
import { benchPages } from '../content/directory.ts'
import { entryOf } from '../content/load.ts'
import { cautionLines, checksOn, circuitOffer, faultsOf, procedureLink } from '../exercise/load-exercise.ts'
import { reckonedOnce } from '../exercise/reckoned-once.ts'
import { href } from '../layout/href.ts'
import type { CircuitChoice, FinderOffer, PackedKnowledge } from './types.ts'

/** The circuits whose causes can be found, that of the plant shown first. */
export async function circuitChoices(): Promise<CircuitChoice[]> {
  const ids = (await benchPages()).map(({ path }) => path.split('/')[2] ?? '')
  return Promise.all(
    ids.map(async (id) => ({
      id,
      title: (await entryOf('plants', (await circuitOf(id)).data.plant)).data.title,
      offer: href(`/causes/${id}.json`),
      knowledge: href(`/causes/knowledge/${id}.json`),
    })),
  )
}

async function signaturesOf(circuit: string, checks: readonly KnownCheck[]): Promise<PackedSignatures> {
  const { circuit: data, setPoints, fuels, faults } = await benchDataOf(circuit)
  const reading = readCircuit({
    circuit: data,
    setPoints,
    fuels: Object.fromEntries(fuels.map((fuel) => [fuel.id, fuel])),
  })
  if (!reading.ok) throw new Error(`The data of ${circuit} cannot be read.`)
  const { model } = reading
  const text = reckonedOnce(`signatures-${circuit}`, () =>
    JSON.stringify(packSignatures(computeSignatures({ circuit, model, setPoints, faults, checks }))),
  )
  return JSON.parse(text) as PackedSignatures
}

async function gatherKnowledge(circuit: string): Promise<PackedKnowledge> {
  const checks = (await checksOn(circuit)).map(({ id, data }): KnownCheck => ({ ...data, id }))
  const states = await getCollection('checkStates')
  const [weights] = await getCollection('diagnosisWeights')
  if (weights === undefined) throw new Error('content/diagnosis/weights.yaml has no entry')
  const observables = byId(
    (await getCollection('observations')).filter(({ data }) => data.circuits.includes(circuit)),
  )
  return {
    signatures: await signaturesOf(circuit, checks),
    faults: (await faultsOf(circuit)).map(({ id, data: { title, frequency } }) => ({ id, title, frequency })),
    observables,
    highest: highestOf(circuit, observables, (await benchDataOf(circuit)).setPoints),
    told: byId(await getCollection('told')),
    checks,
    weights: weights.data,
    states: byId(states) as unknown as KnownStates,
  }
}

const byId = <Data>(entries: readonly { id: string; data: Data }[]): Record<string, Data> =>
  Object.fromEntries(entries.map(({ id, data }) => [id, data]))

const known = new Map<string, Promise<PackedKnowledge>>()

/** What the ranking of a circuit's causes rests on, reckoned once a build. */
export function packedKnowledgeOf(circuit: string): Promise<PackedKnowledge> {
  const before = known.get(circuit)
  if (before !== undefined) return before
  const gathering = gatherKnowledge(circuit)
  known.set(circuit, gathering)
  return gathering
}

const asked = new Map<string, Promise<Tellable[]>>()

async function gatherQuestions(circuit: string): Promise<Tellable[]> {
  const { signatures, states: _, ...rest } = await packedKnowledgeOf(circuit)
  return tellables({ ...rest, signatures: unpackSignatures(signatures) })
}

/** Everything that can be told of a circuit. */
export function questionsOf(circuit: string): Promise<Tellable[]> {
  const before = asked.get(circuit)
  if (before !== undefined) return before
  const gathering = gatherQuestions(circuit)
  asked.set(circuit, gathering)
  return gathering
}

/** What the form of a circuit asks and tells, without the symptoms from which one can start. */
export async function formOffer(circuit: string): Promise<Omit<FinderOffer, 'starts'>> {
  const questions = await questionsOf(circuit)
  const made = (await packedKnowledgeOf(circuit)).checks
  const { checks, states, cautionsHref } = await circuitOffer(circuit)
  const { data } = await circuitOf(circuit)
  return {
    circuit,
    title: data.title,
    invented: data.invented,
    questions,
    checks: checks.map((check) => {
      const { glasses = [], readings = [], feels = [] } = made.find(({ id }) => id === check.id) ?? {}
      return { ...check, glasses, readings, feels }
    }),
    states,
    causes: await Promise.all(
      (await faultsOf(circuit)).map(async ({ id, data: fault }) => ({
        id,
        title: fault.title,
        confirm: fault.confirm,
        cautions: await cautionLines(fault.cautions),
        procedure: await procedureLink(fault.procedureIn[circuit] ?? fault.procedure),
      })),
    ),
    cautionsHref,
    benchHref: href(`/bench/${circuit}/`),
  }
}
